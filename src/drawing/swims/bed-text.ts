import { type Bed, bedDepth, gapsOf, ledgesOf } from "../../core/swim/bed.ts";
import type { SoundedLine, Spot, SwimEntry } from "../../model/swim.ts";
import type { DrawingKit } from "../kit.ts";

/** Where a swim is cut through: one of its lines, and the spots on it with their numbers. */
export interface CutSwim {
  readonly swim: SwimEntry;
  readonly line: SoundedLine;
  readonly spots: readonly (readonly [number: number, spot: Spot])[];
}

/** What a cut through a swim shows, for who cannot see it: soundings, ledges, what lies there, spots, and what nobody knows. */
export function describeBed(
  { swim, line, spots }: CutSwim,
  bed: Bed,
  { words, figures }: DrawingKit,
): string {
  const depth = figures.shortDepth;
  const soundings = bed.soundings.map(({ fromBankMm, depthMm }) =>
    words("drawing.bed.spoken-sounding", { distance: depth(fromBankMm), depth: depth(depthMm) }),
  );
  return [
    words("drawing.bed.spoken", { swim: swim.title, line: line.title, soundings: soundings.join(", ") }),
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
    ...spots.map(([number, { title, fromBankMm }]) =>
      words("drawing.bed.spoken-spot", {
        number,
        spot: title,
        distance: depth(fromBankMm),
        depth: depth(bedDepth(bed, fromBankMm)?.depthMm ?? 0),
      }),
    ),
    ...gapsOf(bed).map(({ fromMm, toMm }) =>
      words("drawing.bed.spoken-gap", { from: depth(fromMm), to: depth(toMm) }),
    ),
  ].join(" ");
}
