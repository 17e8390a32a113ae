import { type Point, thin } from "../items.ts";
import type { Item, PathItem } from "../model.ts";

/** The outline of a small fish from the side, its nose to the left. */
export function fish(nose: Point, lengthMm: number): Item[] {
  const at = (x: number, y: number) => [nose.xMm + x * lengthMm, nose.yMm + y * lengthMm] as const;
  const curve = (a: readonly number[], b: readonly number[], c: readonly number[]) =>
    ["C", ...a, ...b, ...c] as unknown as PathItem["steps"][number];
  const body: PathItem = {
    kind: "path",
    steps: [
      ["M", ...at(0, 0)],
      curve(at(0.15, -0.2), at(0.5, -0.2), at(0.8, -0.04)),
      ["L", ...at(1, -0.14)],
      ["L", ...at(0.95, 0)],
      ["L", ...at(1, 0.14)],
      ["L", ...at(0.8, 0.04)],
      curve(at(0.5, 0.2), at(0.15, 0.2), at(0, 0)),
      ["Z"],
    ],
    fill: "paper",
    stroke: thin,
  };
  const [eyeX, eyeY] = at(0.13, -0.03);
  return [
    body,
    { kind: "circle", cxMm: eyeX, cyMm: eyeY, radiusMm: Math.max(0.35, 0.018 * lengthMm), fill: "ink" },
  ];
}
