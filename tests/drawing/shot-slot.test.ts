import { expect, test } from "vitest";
import type { PathItem, TextItem } from "../../src/drawing/model.ts";
import { drawShotSlot, forSlot, hardToTell } from "../../src/drawing/shot-slot.ts";
import { sampleWaggler } from "../support/sample-rig.ts";

const tub = sampleWaggler.rig.tub.filter(({ metal }) => metal === "tin");
const lengthMm = 150;
const shot = forSlot(tub);
const { items, heightMm } = drawShotSlot(shot, { lengthMm, textMm: 3, measure: (text) => 1.5 * text.length });
const [upper, lower, ...marks] = items.filter((item): item is PathItem => item.kind === "path");
const names = items.filter((item): item is TextItem => item.kind === "text");

/** The ends of a line, and half of what it is thick. */
function ends({ steps, stroke }: PathItem) {
  const [[, x1, y1], [, x2, y2]] = steps as unknown as [[string, number, number], [string, number, number]];
  return { x1, y1, x2, y2, half: stroke!.widthMm / 2 };
}

/** White between the two lines at a place along them. */
function clearMm(xMm: number): number {
  const [a, b] = [ends(upper!), ends(lower!)];
  const at = ({ x1, y1, x2, y2 }: typeof a) => y1 + ((y2 - y1) * (xMm - x1)) / (x2 - x1);
  return at(b) - b.half - (at(a) + a.half);
}

// Source of the density: handbook value, tin 7.287 g/cm³; d = ∛(6m/πρ).
test("is as wide at each mark as the ball of that weight is thick, and the mark has its name", () => {
  expect(marks).toHaveLength(tub.length);
  const across = new Map(
    tub.map(({ size, massG }) => [size, Math.cbrt((6 * massG) / (Math.PI * 7.287e-3))] as const),
  );
  expect(names.map(({ text }) => text).sort()).toEqual([...across.keys()].sort());
  for (const [i, mark] of marks.entries()) {
    expect(clearMm(ends(mark).x1)).toBeCloseTo(across.get(names[i]!.text)!, 6);
    expect(mark.steps.at(-1)![1]).toBeCloseTo(names[i]!.xMm, 9);
  }
});

test("sets sizes apart by more than twenty times what their discs differ", () => {
  const at = marks.map((mark) => ends(mark).x1);
  for (const [i, x] of at.slice(1).entries()) {
    const differ = shot[i]!.diameterMm - shot[i + 1]!.diameterMm;
    expect(x - at[i]!).toBeGreaterThan(20 * differ);
  }
});

test("no name runs into another, and all stand within its height", () => {
  for (const [i, one] of names.entries()) {
    expect(one.yMm).toBeLessThanOrEqual(heightMm);
    for (const other of names.slice(i + 1)) {
      const apart = Math.abs(one.xMm - other.xMm) - 0.75 * (one.text.length + other.text.length);
      expect(apart > 0 || Math.abs(one.yMm - other.yMm) >= 3, `${one.text}, ${other.text}`).toBe(true);
    }
  }
});

/** Whether a stretch of line enters a box, looked at in steps finer than any sign. */
function enters(
  from: readonly number[],
  to: readonly number[],
  box: { x: number; y: number; w: number; h: number },
) {
  return Array.from({ length: 101 }, (_, i) => i / 100).some((share) => {
    const [x, y] = [0, 1].map((k) => from[k]! + share * (to[k]! - from[k]!)) as [number, number];
    return x > box.x && x < box.x + box.w && y > box.y && y < box.y + box.h;
  });
}

test.each([
  ["a page's width", 170],
  ["a card's", 115],
  // So short that names in one row would stand nearer to the marks of others.
  ["a short one", 55],
])("no line leads into a name, and none has one below it that is another's, %s", (_, slotMm) => {
  const slot = drawShotSlot(shot, { lengthMm: slotMm, textMm: 4.2, measure: (text) => 1.6 * text.length });
  const lines = slot.items.filter((item): item is PathItem => item.kind === "path");
  const named = slot.items.filter((item): item is TextItem => item.kind === "text");
  expect(named).toHaveLength(shot.length);
  const ofMark = lines.slice(2);
  for (const [i, { xMm, yMm, text }] of named.entries()) {
    const box = { x: xMm - 0.8 * text.length, w: 1.6 * text.length, y: yMm - 0.7 * 4.2, h: 0.7 * 4.2 };
    for (const { steps } of lines) {
      const points = steps.map(([, x, y]) => [x!, y!]);
      for (const [k, to] of points.slice(1).entries()) expect(enters(points[k]!, to, box), text).toBe(false);
    }
    // Names of one row; the last stretch of a mark's line goes to its name.
    const row = named.flatMap((other, k) => (other.yMm === yMm ? [ends(ofMark[k]!).x1] : []));
    const own = Math.abs(xMm - ends(ofMark[i]!).x1);
    expect(own, text).toBeLessThanOrEqual(Math.min(...row.map((mark) => Math.abs(xMm - mark))) + 1e-9);
  }
  expect(Math.max(...named.map(({ yMm }) => yMm))).toBeLessThan(slot.heightMm);
  expect(Math.min(...named.map(({ yMm }) => yMm))).toBeGreaterThan(0.7 * 4.2);
});

test("names the sizes that no printed gauge tells apart", () => {
  const sizes = [
    ["A", 5],
    ["B", 4.85],
    ["C", 4.7],
    ["D", 4],
    ["E", 3],
    ["F", 2.9],
  ].map(([size, diameterMm]) => ({ size, diameterMm }) as { size: string; diameterMm: number });
  expect(hardToTell(sizes, 0.2)).toEqual([
    ["A", "B", "C"],
    ["E", "F"],
  ]);
  expect(hardToTell(sizes.slice(3, 5), 0.2)).toEqual([]);
});
