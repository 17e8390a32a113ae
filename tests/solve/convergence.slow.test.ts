import { describe, expect, it } from "vitest";
import { disk } from "../../src/cli/disk.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { readSources } from "../../src/content/world.ts";
import { floatDragAreaCm2 } from "../../src/core/float-drag.ts";
import { landings, type SinkFineness, sinkOfRig } from "../../src/core/sink/sink-of-rig.ts";
import { hangingRig } from "../../src/solve/in-water.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";

const library = readLibrary(await readSources(disk, ["content"])).value!;

/** Our own bound: half the step and twice the pieces of line move no reported time by as much. */
const convergedWithin = 0.02;

describe.each(library.rigs.map(({ rig }) => [rig.id, rig] as const))("%s", (_, rig) => {
  it("sinks in the same times with half the step and twice the pieces of line", () => {
    const solved = solveRig(rig);
    if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
    for (const depth of solved.value.depths) {
      const dragAreaCm2 = floatDragAreaCm2(rig.float.profile, depth.draughtMm);
      const sinking = { ...hangingRig(rig, depth), float: { massG: solved.value.floatMassG, dragAreaCm2 } };
      for (const landing of landings) {
        const times = (fineness?: SinkFineness) => {
          const sink = sinkOfRig(sinking, landing, fineness);
          if (!sink.ok) throw new Error(JSON.stringify(sink.findings));
          return sink.value.tenthsS;
        };
        const finer = times({ pieceShare: 0.5, stepShare: 0.5 });
        times().forEach((time, tenth) => {
          expect(Math.abs(time / finer[tenth]! - 1), `${landing}, tenth ${tenth + 1}`).toBeLessThan(
            convergedWithin,
          );
        });
      }
    }
  });
});
