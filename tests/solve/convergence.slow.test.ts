import { describe, expect, it } from "vitest";
import { floatDragAreaCm2 } from "../../src/core/float/float-drag.ts";
import { landingsOf, type SinkFineness, sinkOfRig } from "../../src/core/sink/sink-of-rig.ts";
import { allShot } from "../../src/model/solved.ts";
import { hangingRig } from "../../src/solve/hanging-rig.ts";
import { sisterOf } from "../../src/solve/same-shot.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { shippedLibrary as library } from "../support/shipped-library.ts";

/** Our own bound: half the step and twice the pieces of line move no reported time by as much, the sister's included. */
const convergedWithin = 0.02;
/**
 * Times that hang on a jerk, as a bulk stops and draws its hook length straight, are no better than this at any fineness:
 * of the whip's bulk in 1 m of water the fourth scatters over 0.05 s, with steps and pieces from a third to all of the
 * usual. Times are told to the second.
 */
const jerkWithinS = 0.03;

describe.each(library.rigs.map(({ rig }) => [rig.id, rig] as const))("%s", (_, rig) => {
  const solved = solveRig(rig);
  if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
  const { floatMassG, depths } = solved.value;
  const hung = depths.flatMap((depth) => {
    const sister = sisterOf(rig, depth);
    const locks = depth.lockShot;
    return [
      { depth, shot: allShot(depth) },
      ...(sister ? [{ depth, shot: [...sister.shot, ...locks] }] : []),
    ];
  });

  it.each(landingsOf(rig.float))(
    "sinks, landed %s, in the same times with half the step and twice the pieces",
    (landing) => {
      for (const { depth, shot } of hung) {
        const dragAreaCm2 = floatDragAreaCm2(rig.float.profile, depth.draughtMm);
        const float = { massG: floatMassG, dragAreaCm2 };
        const times = (fineness?: SinkFineness) => {
          const sink = sinkOfRig({ ...hangingRig(rig, depth), shot, float }, landing, fineness);
          if (!sink.ok) throw new Error(JSON.stringify(sink.findings));
          return [...sink.value.tenthsS, ...sink.value.thirdsS];
        };
        const finer = times({ pieceShare: 0.5, stepShare: 0.5 });
        times().forEach((time, i) => {
          expect(Math.abs(time - finer[i]!), `${depth.depthMm} mm, time ${i + 1}`).toBeLessThan(
            Math.max(jerkWithinS, convergedWithin * finer[i]!),
          );
        });
      }
    },
  );
});
