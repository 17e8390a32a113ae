import { describe, expect, test } from "vitest";
import { drawFloat } from "../../../src/drawing/float/float-drawing.ts";
import type { Drawing, PathItem } from "../../../src/drawing/model.ts";
import { flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const floats = shippedGuide.library.floats.map(({ float }) => float);
const box = { widthMm: 80, heightMm: 260 };

const pathsOf = ({ items }: Drawing): PathItem[] =>
  flatItems(items).flatMap((item) => (item.kind === "path" ? [item] : []));

const textOf = ({ items }: Drawing) =>
  flatItems(items)
    .flatMap((item) => (item.kind === "text" ? [item.text] : []))
    .join(" ")
    .replaceAll("\u00A0", " ");

/** Half-way between the ends of a path's two sides: how wide it is there. */
function widthHalfWay({ steps }: PathItem): number {
  const places = steps.flatMap((step) =>
    step[0] === "Z" ? [] : [{ x: step.at(-2) as number, y: step.at(-1) as number }],
  );
  const ys = places.map(({ y }) => y);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  const crossings = places.flatMap((a, i) => {
    const b = places[(i + 1) % places.length]!;
    if (a.y < middle === b.y < middle) return [];
    return [a.x + ((middle - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  return Math.max(...crossings) - Math.min(...crossings);
}

describe.each(floats)("$id at true size", (float) => {
  const drawing = drawFloat(float, box, drawingKit);

  test("has a tip as thick as it says, and as long as shows", () => {
    const tip = pathsOf(drawing).find(({ fill }) => fill === "accent")!;
    const [, thick] = /tip (\d+(?:\.\d+)?) mm thick/.exec(textOf(drawing))!;
    expect(Math.abs(widthHalfWay(tip) - Number(thick))).toBeLessThan(0.3);
    const ys = tip.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.at(-1) as number]));
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(float.tipShowingMm, 6);
  });

  test("is rounded, and never thicker than it is anywhere", () => {
    const outlines = pathsOf(drawing).filter(
      ({ fill, steps }) => fill && steps.some(([kind]) => kind === "C"),
    );
    expect(outlines.length).toBeGreaterThan(1);
    const xs = outlines.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.slice(1) as number[]).filter((_, i) => i % 2 === 0)),
    );
    const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(widest, 6);
  });

  test("has the line run through its rubbers, where it has rubbers", () => {
    const rubbers = pathsOf(drawing).filter(({ fill, stroke }) => fill === "ink" && !stroke);
    const line = pathsOf(drawing).find(
      ({ fill, steps }) => !fill && steps.length > 3 && steps.every(([kind]) => kind !== "C"),
    );
    expect(rubbers).toHaveLength(float.attachment === "top and bottom" ? 2 : 0);
    for (const { steps } of rubbers) {
      const corners = steps.flatMap((step) => (step[0] === "Z" ? [] : [[step[1], step[2]] as const]));
      const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      const inside = line!.steps.filter(
        (step) =>
          step[0] !== "Z" &&
          step[1] > Math.min(...xs) &&
          step[1] < Math.max(...xs) &&
          step[2] > Math.min(...ys) &&
          step[2] < Math.max(...ys),
      );
      expect(inside).toHaveLength(1);
    }
  });
});
