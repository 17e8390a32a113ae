import { describe, expect, it } from "vitest";
import { basisInWords } from "../../src/checks/basis-in-words.ts";
import { missingBasis } from "../../src/checks/missing-basis.ts";
import { typedFigures } from "../../src/checks/typed-figures.ts";
import { checkedOf, lesson, toldBy } from "./checked.ts";

describe("typed figures", () => {
  const told = (body: string) => toldBy(typedFigures, lesson(body));
  const typed = (column: number, figure: string, directive: string) => [
    { at: `content/lessons/first.md:8:${column}`, code: "typed-figure", figure, directive },
  ];

  it("warns of a weight beside the shot that has it", () => {
    expect(told("A BB weighs 0.4 g here.")).toEqual(typed(13, "0.4 g", ':weight[]{load="1 BB"}'));
    expect(told("So 3 No 4 are 0.6 g.")).toEqual(typed(15, "0.6 g", ':weight[]{load="3 No 4"}'));
  });

  it.each([
    ["another weight", "A BB weighs more than 0.3 g."],
    ["the weight in another sentence", "A BB is big. The bait weighs 0.4 g."],
    ["a live weight", 'A BB weighs :weight[]{load="1 BB"}.'],
  ])("lets %s pass", (_, body) => {
    expect(told(body)).toEqual([]);
  });

  it("warns of a float's marking in a sentence about the float", () => {
    expect(told("The test waggler takes 4 BB in all.")).toEqual(
      typed(24, "4 BB", ":marking[]{float=waggler}"),
    );
    expect(told("The test waggler takes 3 BB in all.")).toEqual([]);
    expect(told("Put 4 BB on the line.")).toEqual([]);
  });

  it("warns of the draught and the line of a rig that the text leads to", () => {
    const link = "See the [plain rig](../rigs/plain.md).";
    const { rigs, figures } = checkedOf({});
    const { draughtMm, floatToHookMm } = rigs[0]!.depths[1]!;
    const draught = figures.gap(draughtMm).split(" (")[0]!;
    const line = figures.gap(floatToHookMm).split(" (")[0]!;
    // Depths of 1 m and 1.5 m have the same draught, and the first is named.
    expect(told(`The draught is ${draught} there. ${link}`)).toMatchObject([
      { figure: draught, directive: expect.stringContaining("of=draught") },
    ]);
    expect(told(`Float to hook is ${line} there. ${link}`)).toMatchObject([
      {
        figure: line,
        directive: `:figure[]{rig=plain depth="${figures.shortDepth(1500)}" of=float-to-hook}`,
      },
    ]);
    expect(told(`Float to hook is ${line} there.`)).toEqual([]);
    expect(told(`The rod is ${line} long. ${link}`)).toEqual([]);
    expect(told(`Float to hook is 999 cm there. ${link}`)).toEqual([]);
  });

  it("warns of the strength of a line of such a rig, in a sentence about that line", () => {
    const link = "See the [plain rig](../rigs/plain.md).";
    expect(told(`It has a main line of 4 lb. ${link}`)).toMatchObject([
      { figure: "4 lb", directive: ":figure[]{rig=plain of=main-line}" },
    ]);
    expect(told(`The hook length of 3 lb is weaker. ${link}`)).toMatchObject([
      { figure: "3 lb", directive: ":figure[]{rig=plain of=hook-line}" },
    ]);
    expect(told(`Other charts give 4 lb for it. ${link}`)).toEqual([]);
    expect(told(`A main line of 9 lb is too much. ${link}`)).toEqual([]);
    expect(told("It has a main line of 4 lb.")).toEqual([]);
  });
});

describe("missing basis", () => {
  const told = (body: string) => toldBy(missingBasis, lesson(body));

  it.each([
    ["a band of lengths", "Lay on 5 cm to 30 cm.", "5 cm to 30 cm"],
    ["a band with one unit", "Lay on 5 to 30 cm.", "5 to 30 cm"],
    ["one or the other", "Wait two or three seconds.", "two or three seconds"],
    ["a band of shares", "Lock half to three quarters of it.", "half to three quarters"],
    ["a share", "Lock 80 % of it.", "80 %"],
    ["a rate", "Feed every 45 s.", "every 45 s"],
  ])("warns of %s that nothing is said of", (_, body, figure) => {
    const column = body.indexOf(figure) + 1;
    expect(told(body)).toEqual([{ at: `content/lessons/first.md:8:${column}`, code: "no-basis", figure }]);
  });

  it.each([
    ["has a sign", "Lay on 5 cm to 30 cm:basis[]{of=practice}."],
    ["has another sign", "Lock 80 %:basis[]{of=memory} of it."],
    ["says published", "Lay on 5 cm to 30 cm.\n\nThat is\npublished."],
    ["says measured", "As measured, lock 80 % of it."],
    ["leads to a source", "Lock 80 % of it, as [a table](https://example.org/table) says."],
    ["has no rule of thumb", "The rod is 3 m long. Two or three of us went."],
  ])("lets a section pass that %s", (_, body) => {
    expect(told(body)).toEqual([]);
  });

  it("takes a basis for its own section alone, and warns once in each", () => {
    const sections = (basis: string) =>
      `## One\n\nThat is ${basis}.\n\n## Two\n\nLock 80 % of it, every 45 s.`;
    expect(told(sections("measured"))).toMatchObject([{ figure: "80 %" }]);
    expect(told(sections("3 m:basis[]{of=practice}"))).toMatchObject([{ figure: "80 %" }]);
    expect(told("See [the rig](../rigs/plain.md): lock 80 % of it.")).toHaveLength(1);
  });
});

describe("basis in words", () => {
  const told = (body: string) => toldBy(basisInWords, lesson(body));

  it.each([
    ["Lay on 5 cm, as is common\npractice.", 20, "common practice", ":basis[]{of=practice}"],
    ["From memory, lock 80 % of it.", 1, "From memory", ":basis[]{of=memory}"],
  ])("warns of %j, and names the sign for it", (body, column, found, directive) => {
    expect(told(body)).toEqual([
      { at: `content/lessons/first.md:8:${column}`, code: "basis-in-words", found, directive },
    ]);
  });

  it("lets a sign pass, a figure that is published, and the page that explains the signs", () => {
    expect(told("Lay on 5 cm:basis[]{of=practice}. A published figure is 6 cm.")).toEqual([]);
    const page = (name: string) => ({
      [`pages/${name}.md`]: "---\ntitle: Figures\nsummary: S.\n---\n\nThat is common practice.\n",
    });
    expect(toldBy(basisInWords, page("about-figures"))).toEqual([]);
    expect(toldBy(basisInWords, page("safety"))).toHaveLength(1);
  });
});
