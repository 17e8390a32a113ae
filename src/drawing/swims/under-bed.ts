import { paired } from "../../core/lists.ts";
import { type Bed, ledgesOf, shelfOf } from "../../core/swim/bed.ts";
import type { SoundedLine } from "../../model/swim.ts";
import { bold, type Point, point, polyline, text, thin, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { placeInOrder } from "../labels/label-placement.ts";
import type { Item, Stroke } from "../model.ts";
import { groundDepthMm } from "../scenes/ground.ts";
import { smooth } from "../smooth.ts";

/** Names below the bed before its depths have a scale. */
interface UnderBed {
  readonly across: (fromBankMm: number) => number;
  readonly widthMm: number;
  readonly textMm: number;
  readonly kit: DrawingKit;
}

/** What lies on the bed, and its name. */
interface NamedThing {
  readonly what: SoundedLine["features"][number]["what"] | "shelf";
  readonly fromBankMm: number;
  /** Half of how far it reaches along the bed. */
  readonly halfMm: number;
  readonly name: string;
  readonly xMm: number;
  readonly row: number;
}

/** Least room between two names in a row. */
const besideMm = 1.2;

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

/**
 * Names of what lies on the bed, shelves among it, in a row below it, each as near to its place as the others leave room; where one row has none, in
 * two, of which every other name has the lower.
 */
export function namedUnderBed(
  { features }: SoundedLine,
  bed: Bed,
  { across, widthMm, textMm, kit: { words, measure } }: UnderBed,
): readonly NamedThing[] {
  const ledges = ledgesOf(bed);
  const others = features.filter(
    ({ what, fromBankMm }) =>
      what !== "ledge" || !ledges.some(({ fromMm, toMm }) => fromBankMm >= fromMm && fromBankMm <= toMm),
  );
  const named = [
    ...ledges.map((ledge) => {
      const shelf = shelfOf(bed, ledge);
      const { fromMm, toMm } = shelf ?? ledge;
      const what = shelf ? ("shelf" as const) : ("ledge" as const);
      return { what, fromBankMm: (fromMm + toMm) / 2, halfMm: (toMm - fromMm) / 2 };
    }),
    ...others.map((one) => ({ ...one, halfMm: 0 })),
  ]
    .sort((a, b) => a.fromBankMm - b.fromBankMm)
    .map(({ what, fromBankMm, halfMm }) => {
      const name = words(`drawing.bed.${what}`);
      return {
        ...{ what, fromBankMm, halfMm, name },
        wanted: { atMm: across(fromBankMm), sizeMm: measure(name, textMm, "regular") },
      };
    });
  const rowOf = (some: typeof named, row: number) => {
    const places = placeInOrder(
      some.map(({ wanted }) => wanted),
      0.5,
      widthMm - 0.5,
      besideMm,
    );
    return places && paired(some, places).map(([{ wanted: _, ...one }, xMm]) => ({ ...one, xMm, row }));
  };
  const inRows = [0, 1].flatMap((row) => {
    const some = named.filter((_, i) => i % 2 === row);
    return rowOf(some, row) ?? some.map(({ wanted, ...one }) => ({ ...one, xMm: wanted.atMm, row }));
  });
  return rowOf(named, 0) ?? inRows;
}

/** What lies on the bed, a shelf with a bracket below all of it, each with a line up to it from its name. */
export function underBed(
  named: readonly NamedThing[],
  at: (fromBankMm: number) => Point,
  footMm: number,
  textMm: number,
): Item[] {
  return named.flatMap(({ what, fromBankMm, halfMm, name, xMm, row }): Item[] => {
    const bed = at(fromBankMm);
    const low = (place: number, belowMm = groundDepthMm) => {
      const { xMm: x, yMm: y } = at(place);
      return point(x, y + belowMm);
    };
    const [from, to] = [fromBankMm - halfMm, fromBankMm + halfMm];
    const baseMm = footMm + groundDepthMm + textMm * (1 + nameRowEms * row);
    return [
      ...(what === "shelf"
        ? [polyline([low(from, 0.8), low(from), low(fromBankMm), low(to), low(to, 0.8)], thin)]
        : what === "ledge"
          ? []
          : onBed[what](bed)),
      polyline([point(bed.xMm, bed.yMm + groundDepthMm), point(xMm, baseMm - 0.85 * textMm)], thinSoft),
      text(point(xMm, baseMm), name, textMm, { anchor: "middle", ink: "soft" }),
    ];
  });
}

const nameRowEms = 1.1;

/** How far names reach below all of the bed. */
export function underBedMm(named: readonly NamedThing[], textMm: number): number {
  const rows = Math.max(0, ...named.map(({ row }) => row + 1));
  return groundDepthMm + (rows === 0 ? 0 : (0.3 + nameRowEms * rows) * textMm);
}
