import { describe, expect, it } from "vitest";
import { entry, first, withId } from "../../../src/core/lists.ts";
import { bedDepth, bedOf } from "../../../src/core/swim/bed.ts";
import type { Item } from "../../../src/drawing/model.ts";
import { NoRoomError } from "../../../src/drawing/no-room.ts";
import { drawBed } from "../../../src/drawing/swims/bed-drawing.ts";
import type { CutSwim } from "../../../src/drawing/swims/bed-text.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { shippedLibrary } from "../../support/shipped-library.ts";

const box = { widthMm: 80, heightMm: 60 };
const room = { textMm: 3.5 };

function cutOf(id: string, at: number): CutSwim {
  const swim = withId(shippedLibrary.swims, id);
  const line = entry(swim.lines, at);
  const spots = swim.spots.flatMap((spot, i) => (spot.line === line ? [[i + 1, spot] as const] : []));
  return { swim, line, spots };
}

const every = shippedLibrary.swims.flatMap((swim) => swim.lines.map((_, at) => [swim.id, at] as const));
const texts = (items: readonly Item[]) => items.flatMap((item) => (item.kind === "text" ? [item] : []));

describe.each(every)("the bed of %s, line %i", (id, at) => {
  const cut = cutOf(id, at);
  const { items, description } = drawBed(cut, box, drawingKit, room);
  const dots = items.flatMap((item) => (item.kind === "circle" ? [item] : []));

  it("has a dot at each sounding, depths and distances each to the scale that its ticks give", () => {
    const { soundings } = bedOf(cut.line.soundings);
    expect(dots).toHaveLength(soundings.length);
    const [a, b] = [entry(dots, 0), entry(dots, dots.length - 1)];
    const [from, to] = [first(soundings), entry(soundings, soundings.length - 1)];
    const across = (b.cxMm - a.cxMm) / (to.fromBankMm - from.fromBankMm);
    const zero = texts(items).find(({ text, anchor }) => text === "0 m" && anchor === "start")!;
    const down = (b.cyMm - (zero.yMm - 0.35 * room.textMm)) / to.depthMm;
    for (const [i, { fromBankMm, depthMm }] of soundings.entries()) {
      const dot = entry(dots, i);
      expect(dot.cxMm).toBeCloseTo(a.cxMm + across * (fromBankMm - from.fromBankMm), 6);
      expect(dot.cyMm).toBeCloseTo(b.cyMm + down * (depthMm - to.depthMm), 6);
    }
    // The scale that it names is the one that it is drawn to.
    const named = texts(items).find(({ text }) => text.includes("depths"))!.text;
    expect(Number(/drawn ([\d.]+)/.exec(named)![1])).toBeCloseTo(down / across, 0.5);
  });

  it("has a question mark in the water before the first sounding, where that is away from the bank", () => {
    const { fromBankMm } = first(bedOf(cut.line.soundings).soundings);
    expect(texts(items).some(({ text }) => text === "?")).toBe(fromBankMm > 0);
    expect(texts(items).some(({ text }) => text.includes("?: not plumbed"))).toBe(fromBankMm > 0);
  });

  it("tells the first and the deepest sounding, and where the rest stand", () => {
    const { soundings } = bedOf(cut.line.soundings);
    const deepest = Math.max(...soundings.map(({ depthMm }) => depthMm));
    const { shortDepth } = drawingKit.figures;
    expect(description).toContain(`${shortDepth(first(soundings).depthMm)} deep`);
    expect(description).toContain(`${shortDepth(deepest)} at most`);
    expect(description).toContain("the table has each sounding");
  });

  it("names the datum, stays in its box, and tells each spot with its depth to who cannot see it", () => {
    expect(texts(items).map(({ text }) => text)).toContain(
      `0 is the level of ${drawingKit.figures.date(cut.swim.sounded)}`,
    );
    for (const { xMm, yMm, text, sizeMm, anchor, face } of texts(items)) {
      const width = drawingKit.measure(text, sizeMm, face);
      const left = anchor === "middle" ? xMm - width / 2 : anchor === "end" ? xMm - width : xMm;
      expect([text, left >= -0.01, left + width <= box.widthMm + 0.01]).toEqual([text, true, true]);
      expect(yMm).toBeLessThanOrEqual(box.heightMm);
    }
    for (const [number, { fromBankMm, line }] of cut.spots) {
      const depth = drawingKit.figures.shortDepth(bedDepth(bedOf(line.soundings), fromBankMm)!.depthMm);
      const out = drawingKit.figures.shortDepth(fromBankMm);
      expect(description).toContain(`${number}, ${depth} deep, ${out} out`);
    }
  });
});

it("has a bracket below the flat of each shelf, from where to where it was plumbed level", () => {
  const cut = cutOf("makebelieve-canal-wide", 0);
  const { items, description } = drawBed(cut, box, drawingKit, room);
  expect(texts(items).filter(({ text }) => text === "shelf")).toHaveLength(2);
  expect(texts(items).filter(({ text }) => text === "ledge")).toEqual([]);
  // By hand: 60 cm at 1 m and 75 cm at 2 m, then it drops; on the far side 60 cm at 10 m and 50 cm at 11 m.
  const dots = items.flatMap((item) => (item.kind === "circle" ? [item.cxMm] : []));
  const [from, to] = [entry(dots, 0), entry(dots, dots.length - 1)];
  const ends = items.flatMap((item) => {
    if (item.kind !== "path" || item.steps.length !== 5 || item.fill || item.stroke?.ink !== "ink") return [];
    const [a, b] = [entry(item.steps, 0), entry(item.steps, 4)].map((step) => Number(step[1]));
    return [[a!, b!].map((x) => Number(((11 * (x - from)) / (to - from)).toFixed(2)))];
  });
  expect(ends).toContainEqual([1, 2]);
  expect(ends).toContainEqual([10, 11]);
  expect(description).toContain("Off a shelf: 0.75 m to 1.2 m, 2 m to 3 m out.");
  expect(description).toContain("On to a shelf: 1.1 m to 0.6 m, 9 m to 10 m out.");
});

it("dashes the bed where nobody has plumbed nearby, and says so", () => {
  const cut = cutOf("makebelieve-pool-willow", 0);
  const line = { ...cut.line, features: [], soundings: cut.line.soundings.filter((_, i) => i % 7 === 0) };
  const { items, description } = drawBed({ ...cut, line, spots: [] }, box, drawingKit, room);
  expect(items.filter((item) => item.kind === "path" && item.stroke?.dashMm?.[0] === 1.6)).toHaveLength(1);
  expect(description).toContain("From 1.5 m to 12.5 m out nobody has plumbed nearby");
});

it("has the bank at the left, and names in one row, none over another or past the edge", () => {
  for (const [id, line] of every) {
    const { items } = drawBed(cutOf(id, line), box, drawingKit, room);
    expect(texts(items).find(({ text }) => text === "bank")!.xMm).toBe(0);
    const names = texts(items)
      .filter(({ text }) => ["shelf", "weed", "snag"].includes(text))
      .map(({ text, xMm, yMm, sizeMm }) => {
        const half = drawingKit.measure(text, sizeMm, "regular") / 2;
        return { left: xMm - half, right: xMm + half, yMm };
      });
    expect(new Set(names.map(({ yMm }) => yMm)).size).toBeLessThan(2);
    for (const [i, one] of names.entries()) {
      expect(one.right).toBeLessThan(box.widthMm);
      for (const next of names.slice(i + 1)) expect(next.left).toBeGreaterThan(one.right + 1);
    }
    // Distances stand close below the names, and their 0 is the bank.
    const far = texts(items).filter(({ text, anchor }) => /^[\d.]+.m$/.test(text) && anchor === "middle");
    expect(far.some(({ text }) => text === "0 m")).toBe(false);
    if (names.length > 0) expect(far[0]!.yMm - names[0]!.yMm).toBeLessThan(8);
  }
});

it("is refused where it has no room", () => {
  const cut = cutOf("makebelieve-pool-willow", 0);
  expect(() => drawBed(cut, { widthMm: 30, heightMm: 20 }, drawingKit, room)).toThrow(NoRoomError);
});
