import { entry, known, paired } from "../../core/lists.ts";
import type { KnotPicture, KnotStep } from "../../model/knot-picture.ts";
import { type Curve, placeAt } from "../curve.ts";
import type { Box } from "../kit.ts";
import type { Item } from "../model.ts";
import { type Crossing, crossingsOf } from "./crossings.ts";
import { drawArrow, drawLabel, fitFrame, stepStrands, wireShare } from "./draw-knot.ts";
import { behind, type Fit, inFront } from "./objects.ts";
import { paintStrands, type Strand } from "./strand-paint.ts";

/** A step of a knot made ready to be drawn with its strands laid so far. */
interface TyingStep {
  readonly step: KnotStep;
  readonly fit: Fit;
  readonly strands: readonly Strand[];
  /** Along each strand, from where on it lies otherwise than in the step before [mm]. */
  readonly fromMm: readonly number[];
  readonly eyes: readonly Strand[];
  readonly shanks: readonly Strand[];
  readonly crossings: readonly Crossing[];
}

/** A strand that has moved by less than this lies where it lay, as a share of the picture's width. */
const sameShare = 0.06;
/** How closely two strands are compared [mm]. */
const stepMm = 1;

/** Every step of a knot, ready to be drawn as its ends go their way. What is pulled tight or wrong is drawn as it ends. */
export function tying(
  { frame, steps }: Pick<KnotPicture, "frame" | "steps">,
  box: Box,
): readonly TyingStep[] {
  const fit = fitFrame(frame, box);
  const laid = steps.map((step) => {
    const { strands, ...rest } = stepStrands(step, fit);
    return { ...rest, strands: coloured(strands) };
  });
  return steps.map((step, i): TyingStep => {
    const { strands, eyes, shanks } = entry(laid, i);
    const before = laid[i - 1]?.strands ?? [];
    const isPulled = step.arrows.some(({ kind }) => kind === "pull");
    const isShown = isPulled || step.objects.some(({ kind }) => kind === "cross");
    const fromMm = strands.map(({ name, curve, tagFromMm }) => {
      const old = before.find((one) => one.name === name);
      // A strand without an end of its own lies where it is all the while.
      if (isShown || tagFromMm >= curve.length) return curve.length;
      return old ? sameUntilMm(old.curve, curve, sameShare * box.widthMm) : 0;
    });
    return { step, fit, strands, fromMm, eyes, shanks, crossings: crossingsOf([...strands, ...eyes]) };
  });
}

/** Two cords are of two colours, besides their patterns: the first dark, the second in the accent. */
function coloured(strands: readonly Strand[]): readonly Strand[] {
  return strands.map((strand, i) => (i > 0 || strands.length === 1 ? { ...strand, edge: "accent" } : strand));
}

function sameUntilMm(old: Curve, now: Curve, withinMm: number): number {
  const most = Math.min(old.length, now.length);
  for (let s = 0; s < most; s += stepMm) {
    const [a, b] = [placeAt(old, s), placeAt(now, s)];
    if (Math.hypot(a.x - b.x, a.y - b.y) > withinMm) return Math.max(0, s - stepMm);
  }
  return most;
}

/** A step with a share of what is new in it done. What points and names stands there once it is all done. */
export function paintTying(tied: TyingStep, share: number): Item[] {
  const { step, fit, eyes, shanks, fromMm } = tied;
  const strands = paired(tied.strands, fromMm).map(([strand, from]) => ({
    ...strand,
    curve: { ...strand.curve, length: from + share * (strand.curve.length - from) },
  }));
  const crossing = [...strands, ...eyes];
  const isLaid = ({ strand, s }: Crossing["over"]) => s < (crossing[strand]?.curve.length ?? 0);
  const shown = crossing.filter(({ curve }) => curve.length > 0);
  const place = new Map(crossing.map((one, i) => [i, shown.indexOf(one)]));
  const crossings = tied.crossings
    .filter(({ over, under }) => isLaid(over) && isLaid(under))
    .map(({ over, under, ...rest }) => ({
      ...rest,
      over: { ...over, strand: known(place, over.strand) },
      under: { ...under, strand: known(place, under.strand) },
    }));
  const isDone = share >= 1;
  return [
    ...step.objects.flatMap((object) => behind(object, fit)),
    ...paintStrands(shanks, []),
    ...paintStrands(shown, crossings),
    ...step.objects.flatMap((object) => inFront(object, fit, wireShare * (tied.strands[0]?.widthMm ?? 0))),
    ...step.arrows.flatMap((arrow) => drawArrow(arrow, fit)),
    ...(isDone ? step.labels.map((label) => drawLabel(label, fit)) : []),
  ];
}
