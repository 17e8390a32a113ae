import { describe } from "vitest";
import { drawKnotStep } from "../../../src/drawing/knots/draw-knot.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { drawingText } from "../../support/drawing-text.ts";
import { holdAgainstGoldens } from "../../support/golden.ts";
import { knotText } from "../../support/knot-text.ts";
import { knots, readKnot } from "../../support/knots.ts";

const card = { widthMm: 48, heightMm: 34 };

/** Small steps that hold how strands are painted: two patterns, a tag end, an eye, shot and rubbers. */
const painted = [
  ["loop-to-loop", 1],
  ["half-blood", 1],
  ["locking-shot", 3],
  ["float-rubbers", 3],
] as const;

describe("golden knots", () => {
  const steps = knots.flatMap((knot) =>
    knot.steps.map((_, i) => [`${knot.id}-${i + 1}`, () => knotText(knot, i, card)] as const),
  );
  const marks = painted.map(
    ([id, step]) =>
      [
        `${id}-${step}-painted`,
        () => drawingText(drawKnotStep(readKnot(id), step - 1, card, drawingKit)),
      ] as const,
  );
  holdAgainstGoldens("drawing/knots", Object.fromEntries([...steps, ...marks]));
});
