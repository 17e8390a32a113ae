import type { Root } from "mdast";
import { describe, expect, it } from "vitest";
import { makeFigures } from "../../src/words/figures.ts";
import { inMarkdown, typedLengths } from "../../src/words/typed-lengths.ts";
import { makeWords } from "../../src/words/words.ts";

const words = makeWords({
  figures: { teaspoons: "{amount}{spoons, plural, one { teaspoon} other { teaspoons}}" },
});
const inUnits = (units: "metric" | "imperial" | "us") =>
  typedLengths(units, makeFigures(units, words, "en"))!;

describe("lengths typed in a text", () => {
  it("stand as they are typed where a guide shows both systems", () => {
    expect(typedLengths("metric first", makeFigures("metric first", words, "en"))).toBeUndefined();
  });

  it.each([
    ["Go 5 cm deeper, then 5 cm more.", "Go 2 in deeper, then 2 in more."],
    ["Show 10 mm to 20 mm of tip.", "Show 0.4 in to 0.8 in of tip."],
    ["Soft hook pellet, 6 mm", "Soft hook pellet, 0.24 in"],
    ["Bread of 12 mm to 15 mm.", "Bread of 0.47 in to 0.6 in."],
    ["Pinch it on 10–15 cm up.", "Pinch it on 4 in–6 in up."],
    ["For 2 cm to 8\ncm of it.", "For 0.75 in to 3.25 in of it."],
    ["A line of 0.20 mm.", "A line of 0.0079 in."],
    ["In 1.2 m of water.", "In 3 ft 11 in of water."],
    ["Cast about 15 m out.", "Cast about 49 ft out."],
    // A distance to keep is told to the inch, and not as about.
    ["Stay 30 m from wires.", "Stay 98 ft 5 in from wires."],
    ["Throw 4 ml each minute.", "Throw 1 teaspoon each minute."],
  ])("are told in feet and inches: %s", (typed, told) => {
    expect(inUnits("imperial")(typed)).toBe(told);
  });

  it.each(["2 AAA", "5 months", "1.2 g of lead", "At 9:30 m", "0.4 m/s", "1,000 maggots"])(
    "are no more than that: %s",
    (text) => {
      expect(inUnits("us")(text)).toBe(text);
    },
  );

  it("are told in metres where a guide shows nothing else", () => {
    expect(inUnits("metric")("A rod of 12 ft, or 4 ft 6 in.")).toBe("A rod of 3.66 m, or 1.37 m.");
    expect(inUnits("metric")("One in each hand, 3 in all.")).toBe("One in each hand, 3 in all.");
  });
});

describe("a text of which lengths are told", () => {
  const text = (value: string): Root => ({
    type: "root",
    children: [{ type: "paragraph", children: [{ type: "text", value }] }],
  });

  it("is itself where none is typed in it", () => {
    const none = text("Wait, and watch.");
    expect(inMarkdown(none, inUnits("imperial"))).toBe(none);
  });

  it("is made once for the same units, and stays as it is typed", () => {
    const typed = text("In 1.2 m of water.");
    const feet = inMarkdown(typed, inUnits("imperial"));
    expect(feet).toEqual(text("In 3 ft 11 in of water."));
    expect(inMarkdown(typed, inUnits("imperial"))).toBe(feet);
    expect(inMarkdown(typed, (told) => told.replace("1.2 m", "deep"))).toEqual(text("In deep of water."));
    expect(typed).toEqual(text("In 1.2 m of water."));
  });
});
