import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { point } from "../../src/drawing/items.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import type { Part } from "../../src/drawing/parts/part.ts";
import { parts } from "../../src/drawing/parts/parts.ts";
import { outOfFrame, thinnestStrokeMm } from "../support/drawing-checks.ts";

const table: readonly [string, Part<unknown>][] = Object.entries(parts);

test("every file of a part has its line in the table", () => {
  const files = readdirSync("src/drawing/parts")
    .filter((file) => file !== "part.ts" && file !== "parts.ts")
    .map((file) => file.replace(".ts", "").replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase()));
  expect(files.sort()).toEqual(Object.keys(parts).sort());
});

test.each(table)(
  "%s draws its sample in the sample's box, with no stroke too thin to print",
  (name, part) => {
    const drawing: Drawing = {
      widthMm: part.sampleWidthMm ?? 30,
      heightMm: 20,
      title: name,
      description: name,
      items: part.draw(part.sample),
    };
    expect(drawing.items).not.toHaveLength(0);
    expect(outOfFrame(drawing)).toEqual([]);
    expect(thinnestStrokeMm(drawing)).toBeGreaterThanOrEqual(0.35);
  },
);

test("a rubber keeps paper free round itself, as it lies on a tip and a stem that are as dark", () => {
  const [edge, sleeve] = parts.rubber.draw(parts.rubber.sample).map((item) => {
    if (item.kind !== "path") throw new Error("a sleeve is a path");
    const places = item.steps.flatMap((step) =>
      step[0] === "Z" ? [] : [step.slice(-2) as [number, number]],
    );
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
    return {
      fill: item.fill,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      foot: Math.max(...ys),
    };
  });
  expect([edge?.fill, sleeve?.fill]).toEqual(["paper", "ink"]);
  // As much as the thinnest stroke that prints. Common practice, no source.
  const freeMm = 0.35;
  expect(sleeve!.left - edge!.left).toBeGreaterThanOrEqual(freeMm);
  expect(edge!.right - sleeve!.right).toBeGreaterThanOrEqual(freeMm);
  expect(sleeve!.top - edge!.top).toBeGreaterThanOrEqual(freeMm);
  expect(edge!.foot - sleeve!.foot).toBeGreaterThanOrEqual(freeMm);
});

test("a bait is told from a shot without a colour: there is paper between its middle and its edge", () => {
  const [ring, dot] = parts.baitMark.draw({ at: point(0, 0), radiusMm: 1.3 });
  if (ring?.kind !== "circle" || dot?.kind !== "circle") throw new Error("a bait is drawn in circles");
  expect(ring.fill).toBe("paper");
  // Seen on a phone, where 0.3 mm of a picture is a dot: common practice, no source.
  expect(ring.radiusMm - ring.stroke!.widthMm / 2 - dot.radiusMm).toBeGreaterThan(0.3);
  expect(parts.shot.draw({ at: point(0, 0), radiusMm: 1.1 })).toMatchObject([{ fill: "ink" }]);
});
