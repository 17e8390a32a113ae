import { first } from "../../core/lists.ts";
import { type Bed, bedDepth, gapsOf, ledgesOf } from "../../core/swim/bed.ts";
import type { SoundedLine, Spot, SwimEntry } from "../../model/swim.ts";
import type { DrawingKit } from "../kit.ts";

/** Where a swim is cut through: one of its lines, and the spots on it with their numbers. */
export interface CutSwim {
  readonly swim: SwimEntry;
  readonly line: SoundedLine;
  readonly spots: readonly (readonly [number: number, spot: Spot])[];
}

/**
 * What a cut through a swim shows, for who cannot see it: how deep it is, ledges, what lies there, spots, and what nobody
 * knows. Its title says where, and the table beside it has each sounding.
 */
export function describeBed({ line, spots }: CutSwim, bed: Bed, { words, figures }: DrawingKit): string {
  const depth = figures.shortDepth;
  const deepest = bed.soundings.reduce((a, b) => (b.depthMm > a.depthMm ? b : a));
  const nearest = first(bed.soundings);
  const places = spots.map(([number, { fromBankMm }]) =>
    words("drawing.bed.spoken-spot", {
      number,
      distance: depth(fromBankMm),
      depth: depth(bedDepth(bed, fromBankMm)?.depthMm ?? 0),
    }),
  );
  return [
    words("drawing.bed.spoken", {
      first: depth(nearest.depthMm),
      from: depth(nearest.fromBankMm),
      most: depth(deepest.depthMm),
      out: depth(deepest.fromBankMm),
    }),
    ...ledgesOf(bed).map(({ fromMm, toMm, shallowMm, deepMm, isDrop }) =>
      words(isDrop ? "drawing.bed.spoken-drop" : "drawing.bed.spoken-rise", {
        from: depth(fromMm),
        to: depth(toMm),
        shallow: depth(shallowMm),
        deep: depth(deepMm),
      }),
    ),
    ...line.features
      .filter(({ what }) => what !== "ledge")
      .map(({ what, fromBankMm }) =>
        words("drawing.bed.spoken-feature", {
          what: words(`drawing.bed.${what}`),
          distance: depth(fromBankMm),
        }),
      ),
    ...(places.length > 0 ? [words("drawing.bed.spoken-spots", { spots: places.join("; ") })] : []),
    ...gapsOf(bed).map(({ fromMm, toMm }) =>
      words("drawing.bed.spoken-gap", { from: depth(fromMm), to: depth(toMm) }),
    ),
  ].join(" ");
}
