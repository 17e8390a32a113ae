import { entry, first } from "../../core/lists.ts";
import type { KnotArrow, KnotLabel, KnotPicture, KnotStep } from "../../model/knot-picture.ts";
import { curveThrough, marksOf, placeAt, slice, withoutRepeats } from "../curve.ts";
import { arrowHead, point, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { crossingsOf } from "./crossings.ts";
import { behind, type Fit, hookShank, inFront, onPicture, rings, wire } from "./objects.ts";
import { paintStrands, type Strand } from "./strand-paint.ts";
import { place, strandPath } from "./strand-path.ts";
import { isCounted, labelSizeMm, numbersOf, turnNumber } from "./turn-numbers.ts";

/** Thickness of a strand in units of the frame; thick enough that its pattern shows. */
export const strandUnits = 2.2;
/** Two edges and a core, none of which may drop out in print. */
const strandLeastMm = 1.15;
export const wireShare = 1.15;

const marginMm = 1;

/** How the frame of a knot fits into a box: as large as it can be, in the middle. */
export function fitFrame([width, height]: KnotPicture["frame"], box: Box): Fit {
  const scale = Math.min((box.widthMm - 2 * marginMm) / width, (box.heightMm - 2 * marginMm) / height);
  return {
    scale,
    xMm: (box.widthMm - width * scale) / 2,
    yMm: (box.heightMm - height * scale) / 2,
  };
}

/** The strands of a step and the wire that they are tied to, in millimetres on the picture. */
export function stepStrands(
  step: KnotStep,
  fit: Fit,
): { strands: Strand[]; eyes: Strand[]; shanks: Strand[] } {
  const widthMm = Math.max(strandLeastMm, strandUnits * fit.scale);
  const strands = step.strands.map((strand): Strand => {
    const { points, rounds, tagFrom } = strandPath(strand.path);
    const shown = points.map((p) => onPicture(fit, p));
    const curve = curveThrough(shown);
    const marks = marksOf(curve);
    // In a frame so large that two points come out at one place, the curve has a mark less.
    const alongMm = (point: number) => marks[withoutRepeats(shown.slice(0, point + 1)).length - 1] ?? 0;
    const tagFromMm = tagFrom === undefined ? curve.length : alongMm(tagFrom);
    const turns = rounds.filter(isCounted(fit, widthMm)).map((round) => ({
      atMm: alongMm(round.point),
      number: turnNumber(round, entry(shown, round.point), widthMm, fit),
    }));
    return { name: strand.name, pattern: strand.pattern, curve, widthMm, tagFromMm, turns };
  });
  const wireMm = wireShare * widthMm;
  const eyes = rings(step.objects).map(({ name, points }) =>
    wire(
      name,
      curveThrough(
        points.map((p) => onPicture(fit, p)),
        true,
      ),
      wireMm,
    ),
  );
  const shanks = step.objects.flatMap((object) =>
    object.kind === "hook"
      ? [wire("hook", curveThrough(hookShank(object).map((p) => onPicture(fit, p))), wireMm)]
      : [],
  );
  return { strands, eyes, shanks };
}

/**
 * One step of a knot as a picture that fills the box. Where strands cross, the one below is broken; the tag end is
 * beaded.
 *
 * @throws RangeError where the knot has no such step.
 */
export function drawKnotStep(knot: KnotPicture, stepIndex: number, box: Box, kit: DrawingKit): Drawing {
  const step = knot.steps[stepIndex];
  if (!step) throw new RangeError(`knot "${knot.id}" has no step ${stepIndex}`);
  const fit = fitFrame(knot.frame, box);
  const { strands, eyes, shanks } = stepStrands(step, fit);
  const crossing = [...strands, ...eyes];
  return {
    ...box,
    title: kit.words("drawing.knots.title", {
      knot: knot.title,
      step: stepIndex + 1,
      steps: knot.steps.length,
    }),
    description: describe(knot, step, strands.flatMap(numbersOf).length, kit),
    items: [
      ...step.objects.flatMap((object) => behind(object, fit)),
      ...paintStrands(shanks, []),
      ...paintStrands(crossing, crossingsOf(crossing)),
      ...strands.flatMap(numbersOf),
      ...step.objects.flatMap((object) => inFront(object, fit, wireShare * first(strands).widthMm)),
      ...step.arrows.flatMap((arrow) => drawArrow(arrow, fit)),
      ...step.labels.map((label) => drawLabel(label, fit)),
    ],
  };
}

/** Every step of a knot, each filling the box, all to the same scale. */
export function drawKnot(knot: KnotPicture, box: Box, kit: DrawingKit): Drawing[] {
  return knot.steps.map((_, stepIndex) => drawKnotStep(knot, stepIndex, box, kit));
}

/** What the picture shows; what to do at the step is its caption, which stands beside it. */
function describe(knot: KnotPicture, step: KnotStep, turns: number, { words }: DrawingKit): string {
  const parts = [words("drawing.knots.joins", { joins: knot.joins })];
  const labels = step.labels.map((label) => label.text);
  if (labels.length > 0) parts.push(words("drawing.knots.labelled", { labels: labels.join(", ") }));
  if (turns > 0) parts.push(words("drawing.knots.counted", { turns }));
  return parts.join(" ");
}

/** A force is a bold arrow, a way to go a dashed one. */
export function drawArrow({ kind, path }: KnotArrow, fit: Fit): Item[] {
  const curve = curveThrough(path.map((p) => onPicture(fit, place(p))));
  const widthMm = kind === "pull" ? 0.9 : 0.5;
  const headMm = kind === "pull" ? 2.6 : 2;
  const end = Math.max(0, curve.length - 0.8 * headMm);
  const tip = placeAt(curve, curve.length);
  const back = placeAt(curve, end);
  return [
    {
      kind: "path",
      steps: slice(curve, 0, end),
      stroke: { ink: "accent", widthMm, ...(kind === "way" && { dashMm: [1.2, 0.7] }) },
    },
    arrowHead(point(back.x, back.y), point(tip.x, tip.y), headMm, "accent"),
  ];
}

export function drawLabel({ at, text: words, anchor }: KnotLabel, fit: Fit): Item {
  const on = onPicture(fit, place(at));
  return text(point(on.x, on.y), words, labelSizeMm(fit), { ink: "soft", anchor });
}
