import type { KnotPicture } from "../../content/knot-picture.ts";
import { type Finding, noAnswer } from "../../core/finding.ts";
import { crossingsOf } from "./crossings.ts";
import { stepStrands } from "./draw-knot.ts";

/** Strands may run off the frame by no more than this share of a unit, which rounding needs. */
const frameSlackUnits = 0.01;

/**
 * What is wrong with a knot's steps, step numbers counted from 1 and places in units of its frame:
 * `knot-crossing-undeclared` where strands cross and their heights do not say which is on top, and
 * `knot-outside-frame` where a strand leaves the frame. Both are errors.
 */
export function checkKnot(knot: KnotPicture): Finding[] {
  const [width, height] = knot.frame;
  return knot.steps.flatMap((step, index) => {
    const at = (code: string, strand: string, place: { x: number; y: number }): Finding[] =>
      noAnswer(code, { knot: knot.id, step: index + 1, strand, x: round(place.x), y: round(place.y) })
        .findings;
    const { strands, eyes, shanks } = stepStrands(step, { scale: 1, xMm: 0, yMm: 0 });
    const crossing = [...strands, ...eyes];
    const undeclared = crossingsOf(crossing).filter(({ declared }) => !declared);
    const outside = [...crossing, ...shanks].flatMap(({ name, curve }) => {
      const place = curve.samples.find(
        ({ x, y }) => Math.max(-x, x - width, -y, y - height) > frameSlackUnits,
      );
      return place ? [{ name, place }] : [];
    });
    return [
      ...undeclared.flatMap((c) => at("knot-crossing-undeclared", crossing[c.over.strand]!.name, c)),
      ...outside.flatMap(({ name, place }) => at("knot-outside-frame", name, place)),
    ];
  });
}

const round = (units: number) => Math.round(units * 10) / 10;
