import { entry, known, last, paired } from "../../core/lists.ts";
import type { KnotPicture, KnotStep } from "../../model/knot-picture.ts";
import { type Curve, curveThrough, type Place, placeAt } from "../curve.ts";
import type { Box } from "../kit.ts";
import type { Item } from "../model.ts";
import { type Crossing, crossingsOf } from "./crossings.ts";
import { drawArrow, drawLabel, fitFrame, stepStrands, wireShare } from "./draw-knot.ts";
import { behind, inFront } from "./objects.ts";
import { keepingBrush, paintStrands, type Strand } from "./strand-paint.ts";
import { numbersOf } from "./turn-numbers.ts";

/** A step of a knot made ready to be drawn with its strands laid so far. */
interface TyingStep {
  readonly step: KnotStep;
  readonly strands: readonly Strand[];
  /** Along each strand, from where on it lies otherwise than in the step before [mm]. */
  readonly fromMm: readonly number[];
  /** Where a doubled strand that goes its way as one turns back on itself; none where its end goes alone. */
  readonly turnMm: readonly (number | undefined)[];
  readonly eyes: readonly Strand[];
  readonly crossings: readonly Crossing[];
  /** What stays: below its strands, above them, and what is named once all is done. */
  readonly below: readonly Item[];
  readonly above: readonly Item[];
  readonly named: readonly Item[];
  readonly brush: ReturnType<typeof keepingBrush>;
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
    const turnMm = paired(strands, fromMm).map(([strand, from]) =>
      before.some(({ name }) => name === strand.name) ? turnOf(strand, from) : undefined,
    );
    return {
      step,
      strands,
      fromMm,
      turnMm,
      eyes,
      crossings: crossingsOf([...strands, ...eyes]),
      below: [...step.objects.flatMap((object) => behind(object, fit)), ...paintStrands(shanks, [])],
      above: [
        ...step.objects.flatMap((object) => inFront(object, fit, wireShare * (strands[0]?.widthMm ?? 0))),
        ...step.arrows.flatMap((arrow) => drawArrow(arrow, fit)),
      ],
      named: step.labels.map((label) => drawLabel(label, fit)),
      brush: keepingBrush(),
    };
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

/** Two halves of a strand that lie this close all the way are one doubled line [widths of it]. */
const doubledWidths = 3;
/** A doubled line that goes its way as one lies anew from so early on, as a share of its length. */
const earlyShare = 0.2;
/** Within so little of a turn both halves are as long [mm]. */
const nearTurnMm = [8, 14, 20];

/** Where a strand turns back that lies doubled from its turn as far as it is new. */
function turnOf({ curve, widthMm }: Strand, fromMm: number): number | undefined {
  const { length } = curve;
  const [leastMm, mostMm] = [fromMm + last(nearTurnMm), length - last(nearTurnMm)];
  if (fromMm > earlyShare * length || mostMm <= leastMm) return undefined;
  const apart = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);
  const openMm = (turn: number) =>
    nearTurnMm.reduce((sum, d) => sum + apart(placeAt(curve, turn - d), placeAt(curve, turn + d)), 0);
  const along = (fromMm: number, toMm: number) =>
    Array.from({ length: Math.ceil(toMm - fromMm) }, (_, i) => fromMm + i);
  const turn = along(leastMm, mostMm).reduce((best, s) => (openMm(s) < openMm(best) ? s : best));
  const behind = along(turn, length).map((s) => placeAt(curve, s));
  const isBeside = (share: number) => {
    const place = placeAt(curve, turn - share * (turn - fromMm));
    return Math.min(...behind.map((one) => apart(one, place))) < doubledWidths * widthMm;
  };
  return [0.25, 0.4, 0.55, 0.7, 0.85].every(isBeside) ? turn : undefined;
}

/** A strand as far as a share of what is new of it is laid: its end goes its way, or its turn where it is doubled. */
export function laidSoFar(strand: Strand, fromMm: number, turnMm: number | undefined, share: number): Strand {
  const { curve } = strand;
  const left = 1 - share;
  if (turnMm === undefined)
    return { ...strand, curve: { ...curve, length: curve.length - left * (curve.length - fromMm) } };
  if (left <= 0) return strand;
  const from = turnMm - left * (turnMm - fromMm);
  return { ...strand, unlaid: { from, to: besideMm(curve, from, turnMm, left) } };
}

/** How far from where it would be by lengths alone the other half of a doubled strand is looked for, as a share of it. */
const besideShare = 0.16;

/** Where behind its turn a doubled strand lies beside a place before it, of which such a share of the way is left. */
function besideMm(curve: Curve, fromMm: number, turnMm: number, left: number): number {
  const byLengthMm = turnMm + left * (curve.length - turnMm);
  const { x, y } = placeAt(curve, fromMm);
  const reach = besideShare * curve.length;
  let best = byLengthMm;
  let bestApart = Number.POSITIVE_INFINITY;
  for (const sample of curve.samples) {
    if (sample.s < turnMm || Math.abs(sample.s - byLengthMm) > reach) continue;
    const apart = Math.hypot(sample.x - x, sample.y - y);
    if (apart < bestApart) [best, bestApart] = [sample.s, apart];
  }
  return best;
}

/** The end of a doubled strand that is under way: where its two halves are one. */
function endUnderWay(strand: Strand): Strand[] {
  const { unlaid, ...whole } = strand;
  const { curve } = whole;
  if (!unlaid || unlaid.from < 1) return [];
  const [before, a, b] = [unlaid.from - 1, unlaid.from, unlaid.to].map((s) => placeAt(curve, s)) as [
    Place,
    Place,
    Place,
  ];
  const reach = 0.6 * Math.hypot(b.x - a.x, b.y - a.y);
  const ahead = (place: Place): Place => ({
    ...place,
    x: place.x + reach * (a.x - before.x),
    y: place.y + reach * (a.y - before.y),
  });
  const end = curveThrough([a, ahead(a), ahead(b), b]);
  return [{ ...whole, curve: end, tagFromMm: end.length }];
}

/** How the last of some steps ends, with nothing that points or is named. */
export function paintEnd(knot: Pick<KnotPicture, "frame" | "steps">, box: Box): Item[] {
  const bare = knot.steps.map((step) => ({
    ...step,
    arrows: [],
    labels: [],
    objects: step.objects.filter(isTackle),
  }));
  return paintTying(last(tying({ ...knot, steps: bare }, box)), 1);
}

/** What a knot is tied to, and not a sign of what to do. */
const isTackle = ({ kind }: KnotStep["objects"][number]) => !/^(?:cut|span|cross|drop)$/.test(kind);

/** A step with a share of what is new in it done. What points and names stands there once it is all done. */
export function paintTying(tied: TyingStep, share: number): Item[] {
  const { eyes, fromMm, below, above, named, brush } = tied;
  const strands = paired(tied.strands, fromMm).map(([strand, from], i) =>
    laidSoFar(strand, from, tied.turnMm[i], share),
  );
  const crossing = [...strands, ...eyes];
  const isLaid = ({ strand, s }: Crossing["over"]) => {
    const { curve, unlaid } = entry(crossing, strand);
    return s < curve.length && !(unlaid && s > unlaid.from && s < unlaid.to);
  };
  const shown = crossing.filter(({ curve }) => curve.length > 0);
  const place = new Map(crossing.map((one, i) => [i, shown.indexOf(one)]));
  const crossings = tied.crossings
    .filter(({ over, under }) => isLaid(over) && isLaid(under))
    .map(({ over, under, ...rest }) => ({
      ...rest,
      over: { ...over, strand: known(place, over.strand) },
      under: { ...under, strand: known(place, under.strand) },
    }));
  return [
    ...below,
    ...paintStrands([...shown, ...strands.flatMap(endUnderWay)], crossings, brush),
    ...strands.flatMap(numbersOf),
    ...above,
    ...(share >= 1 ? named : []),
  ];
}
