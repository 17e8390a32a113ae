import * as fontkit from "fontkit";
import { expect, it } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { simpleOutline } from "../../src/layout/simple-outline.ts";
import { lentFont } from "../support/lent-font.ts";

/** Points of a simple glyph. Source: ISO/IEC 14496-22, `glyf`; here with two bytes for each coordinate. */
function pointsOf(outline: Uint8Array) {
  const view = new DataView(outline.buffer, outline.byteOffset, outline.byteLength);
  const contours = view.getInt16(0);
  const ends = Array.from({ length: contours }, (_, i) => view.getUint16(10 + 2 * i));
  const count = (ends.at(-1) ?? -1) + 1;
  const flags = 12 + 2 * contours;
  const coordinates = (from: number) => {
    let sum = 0;
    return Array.from({ length: count }, (_, i) => {
      sum += view.getInt16(from + 2 * i);
      return sum;
    });
  };
  const xs = coordinates(flags + count);
  const ys = coordinates(flags + 3 * count);
  const box = [2, 4, 6, 8].map((at) => view.getInt16(at));
  return { ends, box, points: xs.map((x, i) => ({ x, y: ys[i]!, isOn: view.getUint8(flags + i) === 1 })) };
}

it("a circle of cubic curves stays one to a unit of its thousand", () => {
  // Source of the share: the usual cubic approximation of a quarter circle, 4/3 (√2 − 1).
  const k = 500 * (4 / 3) * (Math.SQRT2 - 1);
  const { points, ends, box } = pointsOf(
    simpleOutline([
      { command: "moveTo", args: [500, 0] },
      { command: "bezierCurveTo", args: [500, k, k, 500, 0, 500] },
      { command: "bezierCurveTo", args: [-k, 500, -500, k, -500, 0] },
      { command: "bezierCurveTo", args: [-500, -k, -k, -500, 0, -500] },
      { command: "bezierCurveTo", args: [k, -500, 500, -k, 500, 0] },
      { command: "closePath", args: [] },
    ]),
  );
  expect(ends).toEqual([31]);
  expect(box).toEqual([-500, -500, 500, 500]);
  const at = (i: number) => points[i % points.length]!;
  for (let i = 0; i < points.length; i += 2) {
    const [from, control, to] = [at(i), at(i + 1), at(i + 2)];
    expect([from.isOn, control.isOn]).toEqual([true, false]);
    const middle = [from.x + 2 * control.x + to.x, from.y + 2 * control.y + to.y].map((sum) => sum / 4);
    for (const radius of [Math.hypot(from.x, from.y), Math.hypot(...middle)])
      expect(Math.abs(radius - 500)).toBeLessThan(1.5);
  }
});

it("nothing is drawn of a path without steps", () => {
  expect(simpleOutline([])).toEqual(new Uint8Array());
});

it("a lent sign is as wide and as high as in its own font, in the units of ours; signs that are ours stay", () => {
  const lent = fontkit.create(lentFont) as fontkit.Font;
  const [own, both] = [nodeFonts().faces.bold, nodeFonts(new Uint8Array(lentFont)).faces.bold];
  const note = lent.glyphForCodePoint("♪".codePointAt(0)!);
  const run = both.layout("♪");
  const scale = both.source.unitsPerEm / lent.unitsPerEm;
  expect(run.width).toBe(Math.round(note.advanceWidth * scale));
  const { minX, minY, maxX, maxY } = note.bbox;
  const { box } = pointsOf(both.source.outline(run.glyphs[0]!.id));
  for (const [i, edge] of [minX, minY, maxX, maxY].entries())
    expect(Math.abs(box[i]! - edge * scale)).toBeLessThan(2);
  expect(both.width("AVAT ♪")).toBe(own.width("AVAT ") + run.width);
  expect(() => own.layout("♪")).toThrow('no sign for "♪"');
});
