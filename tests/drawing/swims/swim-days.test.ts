import { expect, it } from "vitest";
import { withId } from "../../../src/core/lists.ts";
import { NoRoomError } from "../../../src/drawing/no-room.ts";
import { drawSwimDays } from "../../../src/drawing/swims/swim-days.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { plotDots } from "../../support/plot-dots.ts";
import { shippedLibrary } from "../../support/shipped-library.ts";

const box = { widthMm: 80, heightMm: 60 };
const drawn = (of: "depth" | "pace", id: string, room = box) =>
  drawSwimDays(
    of,
    withId(shippedLibrary.swims, id),
    shippedLibrary.notes.filter(({ swim }) => swim === id),
    room,
    drawingKit,
    3.5,
  );
const dots = plotDots;

it("has a dot for each depth that was found, days apart as in the calendar and deeper ones lower", () => {
  const found = dots(drawn("depth", "makebelieve-pool-willow"));
  // Three places on two days, and two of them on a third.
  expect(found).toHaveLength(8);
  const [may, july, october] = found;
  // 9 May to 18 July are 70 days, to 3 October 147.
  const share = (july!.cxMm - may!.cxMm) / (october!.cxMm - may!.cxMm);
  expect(share).toBeCloseTo(70 / 147, 6);
  // On the shelf: 1 m, 0.87 m, 1.1 m.
  const down = (july!.cyMm - may!.cyMm) / (october!.cyMm - may!.cyMm);
  expect(down).toBeCloseTo((0.87 - 1) / (1.1 - 1), 6);
  expect(october!.cyMm).toBeGreaterThan(may!.cyMm);
});

it("begins with the pace of the day of the soundings, and draws a faster one higher", () => {
  const drawing = drawn("pace", "makebelieve-river-glide");
  const [first, slower, faster] = dots(drawing);
  expect(dots(drawing)).toHaveLength(3);
  // 10 m in 40 s, in 48 s, in 31 s.
  expect(slower!.cyMm).toBeGreaterThan(first!.cyMm);
  expect(faster!.cyMm).toBeLessThan(first!.cyMm);
  expect((faster!.cyMm - first!.cyMm) / (slower!.cyMm - first!.cyMm)).toBeCloseTo(
    (10 / 31 - 0.25) / (10 / 48 - 0.25),
    6,
  );
  expect(drawing.description).toContain("0.25 m/s on 4 July 2026; 0.21 m/s on 15 August 2026");
});

it("names each day below its axis, the year once, and a single curve not at all", () => {
  const said = ({ items }: ReturnType<typeof drawn>) =>
    items.flatMap((item) => (item.kind === "text" ? [item.text] : []));
  const depths = said(drawn("depth", "makebelieve-pool-willow"));
  expect(depths).toEqual(expect.arrayContaining(["9 May", "18 July", "3 October", "2026", "On the shelf"]));
  expect(said(drawn("pace", "makebelieve-river-glide"))).not.toContain("Surface");
});

it("stays in its box, and is refused where it has no room", () => {
  for (const item of drawn("depth", "makebelieve-pool-willow").items) {
    if (item.kind !== "text") continue;
    const width = drawingKit.measure(item.text, item.sizeMm, item.face);
    const left = item.xMm - width * { start: 0, middle: 0.5, end: 1 }[item.anchor];
    expect([item.text, left >= -0.01, left + width <= box.widthMm + 0.01]).toEqual([item.text, true, true]);
  }
  expect(() => drawn("pace", "makebelieve-river-glide", { widthMm: 30, heightMm: 25 })).toThrow(NoRoomError);
});

it("says of each day the shallowest over its dot and the deepest under it, and names every day, on paper as on a phone", () => {
  for (const textMm of [3.5, 3.88]) {
    const drawing = drawSwimDays(
      "depth",
      withId(shippedLibrary.swims, "makebelieve-pool-willow"),
      shippedLibrary.notes.filter(({ swim }) => swim === "makebelieve-pool-willow"),
      box,
      drawingKit,
      textMm,
    );
    expect(drawingFaults(drawing)).toEqual([]);
    const texts = flatItems(drawing.items).flatMap((item) => (item.kind === "text" ? [item] : []));
    const words = texts.flatMap(({ text }) => text.split(" "));
    for (const word of ["9", "May", "18", "July", "3", "October", "2026"]) expect(words).toContain(word);
    const scaleX = texts.find(({ text }) => text === "0.5 m")!.xMm;
    const figures = texts.filter(({ text, xMm }) => /^[\d.]+.m$/.test(text) && xMm !== scaleX);
    // On 9 May, 18 July and 3 October; what lies between those of a day is told in the day's own line below.
    const wanted = [
      ["1 m", "2 m"],
      ["0.87 m", "1.86 m"],
      ["1.1 m", "1.98 m"],
    ];
    expect(figures.map(({ text }) => text).sort()).toEqual(wanted.flat().sort());
    const days = dots(drawing)
      .slice(0, 3)
      .map(({ cxMm }) => cxMm);
    for (const [i, values] of wanted.entries()) {
      const heights = dots(drawing).flatMap(({ cxMm, cyMm }) =>
        Math.abs(cxMm - days[i]!) < 0.1 ? [cyMm] : [],
      );
      const [over, under] = values.map((value) => figures.find(({ text }) => text === value)!);
      expect(over!.yMm).toBeLessThan(Math.min(...heights));
      expect(under!.yMm - textMm * 0.7).toBeGreaterThan(Math.max(...heights));
      for (const { text, xMm } of [over!, under!])
        expect(Math.abs(xMm + drawingKit.measure(text, textMm, "regular") / 2 - days[i]!)).toBeLessThan(6);
    }
  }
});

it("has a dot of its own look for each line, and none that is not a reading", () => {
  const looks = dots(drawn("depth", "makebelieve-pool-willow")).map(({ look }) => look);
  expect(looks).toHaveLength(8);
  expect(new Set(looks.slice(0, 3)).size).toBe(1);
  expect(new Set(looks.slice(3, 6)).size).toBe(1);
  expect(new Set(looks).size).toBe(3);
});
