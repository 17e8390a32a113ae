import { describe, expect, it } from "vitest";
import type { Item } from "../../src/drawing/model.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { extentOf } from "../../src/print/extent.ts";

const fonts = nodeFonts();
const stroke = { widthMm: 2, ink: "ink" } as const;
const line: Item = {
  kind: "path",
  steps: [
    ["M", 10, 20],
    ["L", 40, 25],
  ],
  stroke,
};
const disc: Item = { kind: "circle", cxMm: 10, cyMm: 20, radiusMm: 5, fill: "ink" };

describe("the room that marks take", () => {
  it("has half of a stroke on every side", () => {
    expect(extentOf([line], fonts)).toEqual({ left: 9, top: 19, right: 41, bottom: 26 });
    const ring: Item = { kind: "circle", cxMm: 10, cyMm: 20, radiusMm: 5, stroke };
    expect(extentOf([ring], fonts)).toEqual({ left: 4, top: 14, right: 16, bottom: 26 });
  });

  it("is that of all together, moved with their group; of none it is none", () => {
    const group: Item = { kind: "group", xMm: 100, yMm: 200, items: [line, disc] };
    expect(extentOf([group], fonts)).toEqual({ left: 105, top: 215, right: 141, bottom: 226 });
    expect(extentOf([], fonts)).toBeUndefined();
  });
});
