import { describe, expect, it } from "vitest";
import type { PatternSpec } from "../../../src/core/patterns/pattern.ts";
import { sizesOf, withSizes } from "../../../src/core/patterns/sizes.ts";

const telltale = { size: "No 8", fromHookMm: 200 };
const specs: readonly PatternSpec[] = [
  { kind: "strung out", size: "No 6", gapMm: 250, alsoSizes: ["No 4"], telltale },
  { kind: "bulk", sizes: ["BB", "No 4"], share: 0.6, fromHookMm: 500, droppers: ["No 6"], telltale },
  {
    kind: "spread bulk",
    sizes: ["BB"],
    share: 0.6,
    fromHookMm: 500,
    overMm: 200,
    droppers: ["No 6"],
    telltale,
  },
  { kind: "shirt button", sizes: ["No 6"], telltale },
  { kind: "tapered shirt button", sizes: ["No 6", "No 4"], telltale },
  { kind: "lift", anchor: "SSG", fromHookMm: 50 },
  { kind: "all at the float" },
];

describe.each(specs)("the sizes that $kind asks for", (spec) => {
  it("are every size written in it, and nothing else", () => {
    const { named, group } = sizesOf(spec);
    const written = JSON.stringify(spec).match(/"(SSG|BB|No \d+)"/g) ?? [];
    expect([...named, ...group].sort()).toEqual(written.map((size) => size.slice(1, -1)).sort());
  });

  it("are put in anew and leave the rest of it as it is", () => {
    const { named, group } = sizesOf(spec);
    const other = withSizes(spec, (size) => `other ${size}`, ["AAA"]);
    expect(sizesOf(other)).toEqual({
      named: named.map((size) => `other ${size}`),
      group: group.length > 0 ? ["AAA"] : [],
    });
    const standIns = new Map(named.map((size) => [`other ${size}`, size]));
    expect(withSizes(other, (size) => standIns.get(size)!, group)).toEqual(spec);
  });
});
