import { entry } from "../../core/lists.ts";
import type { KnotPicture } from "../../model/knot-picture.ts";
import type { Words } from "../../words/words.ts";
import { crossingsOf } from "./crossings.ts";
import { stepStrands } from "./draw-knot.ts";

/** An error in a knot's steps; the step counts from 1, the place is in units of the knot's frame. */
interface KnotFault {
  /**
   * Strands cross and their heights do not say which is on top; a strand leaves the frame; a strand has not two
   * places that differ.
   */
  readonly kind: "crossing" | "outside" | "short";
  readonly step: number;
  readonly strand: string;
  readonly x: number;
  readonly y: number;
}

/** Room for rounding at the edge of the frame. */
const frameSlackUnits = 0.01;

/** What is wrong with a knot's steps; nothing for one that can be drawn. */
export function checkKnot(knot: KnotPicture): KnotFault[] {
  const [width, height] = knot.frame;
  return knot.steps.flatMap((step, index) => {
    const { strands, eyes, shanks } = stepStrands(step, { scale: 1, xMm: 0, yMm: 0 });
    const crossing = [...strands, ...eyes];
    const wrong = (kind: KnotFault["kind"], strand: string, at: { x: number; y: number }): KnotFault => ({
      kind,
      step: index + 1,
      strand,
      x: tenths(at.x),
      y: tenths(at.y),
    });
    const undeclared = crossingsOf(crossing)
      .filter(({ declared }) => !declared)
      .map((at) => wrong("crossing", entry(crossing, at.over.strand).name, at));
    const outside = [...crossing, ...shanks].flatMap(({ name, curve }) => {
      const at = curve.samples.find(({ x, y }) => Math.max(-x, x - width, -y, y - height) > frameSlackUnits);
      return at ? [wrong("outside", name, at)] : [];
    });
    const short = strands
      .filter(({ curve }) => curve.length === 0)
      .map(({ name }) => wrong("short", name, { x: 0, y: 0 }));
    return [...undeclared, ...outside, ...short];
  });
}

/** A fault as a sentence that says where it is and what to do. */
export function knotFaultWords({ kind, ...values }: KnotFault, words: Words): string {
  return words(`drawing.knots.${kind}`, values);
}

const tenths = (units: number) => Math.round(units * 10) / 10;
