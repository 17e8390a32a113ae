import type { Ledge } from "../../core/swim/bed.ts";
import type { SoundedLine } from "../../model/swim.ts";
import { bold, type Point, point, polyline, text, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { groundDepthMm } from "../scenes/ground.ts";
import { smooth } from "../smooth.ts";

interface UnderBed {
  readonly at: (fromBankMm: number) => Point;
  readonly textMm: number;
  readonly kit: DrawingKit;
  readonly rightMm: number;
  /** Below all of the bed; the names stand there in one line or two. */
  readonly footMm: number;
}

/** A way up from the bed, in millimetres aside and up. */
const upFrom = ({ xMm, yMm }: Point, places: readonly (readonly [number, number])[], stroke: Stroke): Item =>
  polyline(smooth(places.map(([aside, up]) => point(xMm + aside, yMm - up))), stroke);

/** What stands on the bed: fronds of weed, or a branch with its twigs; signs, not to scale. */
const onBed: Readonly<Record<"weed" | "snag", (at: Point) => Item[]>> = {
  weed: (at) =>
    [-1.3, 0, 1.3].map((aside, i) =>
      upFrom(
        at,
        [
          [0.6 * aside, 0.2],
          [aside - 0.6, 1.6],
          [aside + 0.5, 3],
          [aside - 0.2, i === 1 ? 4.8 : 4],
        ],
        { ...bold, ink: "soft" },
      ),
    ),
  snag: (at) => [
    upFrom(
      at,
      [
        [-1.6, 0.2],
        [-0.4, 1.6],
        [0.2, 3.2],
        [1.6, 4.6],
      ],
      { ink: "ink", widthMm: 0.9 },
    ),
    upFrom(
      at,
      [
        [-0.3, 1.8],
        [1.2, 2.2],
        [2.2, 1.9],
      ],
      bold,
    ),
    upFrom(
      at,
      [
        [0.1, 2.9],
        [-0.9, 3.8],
        [-1.2, 4.8],
      ],
      bold,
    ),
  ],
};

/** Names of what lies on the bed, each under its place with a line up to it; one that would run into another stands a line lower. */
export function underBed(
  { features }: SoundedLine,
  ledges: readonly Ledge[],
  { at, textMm, kit: { words, measure }, rightMm, footMm }: UnderBed,
): Item[] {
  const others = features.filter(
    ({ what, fromBankMm }) =>
      what !== "ledge" || !ledges.some(({ fromMm, toMm }) => fromBankMm >= fromMm && fromBankMm <= toMm),
  );
  const named = [
    ...ledges.map(({ fromMm, toMm }) => ({ what: "ledge" as const, fromBankMm: (fromMm + toMm) / 2 })),
    ...others,
  ].sort((a, b) => a.fromBankMm - b.fromBankMm);
  let [endMm, lower] = [Number.NEGATIVE_INFINITY, 0];
  return named.flatMap(({ what, fromBankMm }): Item[] => {
    const name = words(`drawing.bed.${what}`);
    const widthMm = measure(name, textMm, "regular");
    const bed = at(fromBankMm);
    const x = Math.min(bed.xMm, rightMm - widthMm / 2 - 0.5);
    lower = x - widthMm / 2 < endMm + 1 ? (lower + 1) % 2 : 0;
    endMm = x + widthMm / 2;
    const baseMm = footMm + groundDepthMm + textMm * (1 + 1.1 * lower);
    return [
      ...(what === "ledge" ? [] : onBed[what](bed)),
      polyline([point(bed.xMm, bed.yMm + groundDepthMm), point(bed.xMm, baseMm - 0.85 * textMm)], thinSoft),
      text(point(x, baseMm), name, textMm, { anchor: "middle", ink: "soft" }),
    ];
  });
}
