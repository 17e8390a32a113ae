import { describe, expect, it } from "vitest";
import { boxText, metalIn, parseBox } from "../../../src/core/tackle/box-notation.ts";
import { tradeScale } from "../trade-scale.ts";

const tin = () => "tin" as const;

function read(text: string) {
  const box = parseBox(text, tradeScale, tin);
  if (!box.ok) throw new Error(JSON.stringify(box.findings));
  return box.value.map(({ size, metal, count }) => [size, metal, count]);
}

describe("what is in a box", () => {
  it("is read as sizes, with counts and metals where they are said, heaviest first", () => {
    expect(read("no 8, 12 BB, lead No10; 3 x No. 4")).toEqual([
      ["BB", "tin", 12],
      ["No 4", "tin", 3],
      ["No 8", "tin", Number.POSITIVE_INFINITY],
      ["No 10", "lead", Number.POSITIVE_INFINITY],
    ]);
  });

  it("keeps two metals of a size apart and adds up what is named twice", () => {
    expect(read("5 No 8, No 8 lead, 2 No 8")).toEqual([
      ["No 8", "tin", 7],
      ["No 8", "lead", Number.POSITIVE_INFINITY],
    ]);
  });

  it.each(["", "none", "BB,", "-3 BB", "0 BB", "1.5 BB", "BB 3 x", "12", "SA", "gold BB"])(
    "is not guessed at where it says “%s”",
    (text) => {
      const box = parseBox(text, tradeScale, tin);
      expect(box.findings.map(({ code, severity }) => [code, severity])).toEqual([
        ["box.not-understood", "error"],
      ]);
    },
  );

  it.each(["BB, 12 No 4, lead No 8", "SSG", "3 tungsten AAA, 40 No 10"])(
    "is written as it was read: %s",
    (text) => {
      const box = parseBox(text, tradeScale, tin);
      expect(box.ok && boxText(box.value, tin)).toBe(text);
    },
  );

  it("takes the guide's own metal for a size, that of its largest for one it does not have, and tin without any", () => {
    const tub = [
      { size: "AAA", massG: 0.8, metal: "tungsten", count: 1 },
      { size: "No 8", massG: 0.06, metal: "lead", count: 1 },
    ] as const;
    expect(["No 8", "AAA", "BB"].map(metalIn(tub))).toEqual(["lead", "tungsten", "tungsten"]);
    expect(metalIn([])("BB")).toBe("tin");
  });
});
