import { bench, describe } from "vitest";
import { chainOfRig } from "../../src/core/sink/chain-of-rig.ts";
import { elasticFall } from "../core/sink/elastic-line.ts";
import { rigWith, strungOut } from "../core/sink/rigs.ts";
import { bundled } from "./bundled.ts";

const core = await bundled<typeof import("../../src/core/sink/sink-of-rig.ts")>(
  "src/core/sink/sink-of-rig.ts",
);
const rig = rigWith(strungOut);

// Six shot and the bait in 2 m, at the accuracy at which half the step and twice the pieces move no time by 2 %.
describe("a rig of seven weights sinks in 2 m, both landings", () => {
  bench("as a rig page asks for it", () => {
    for (const landing of core.landings) core.sinkOfRig(rig, landing);
  });
});

// An explicit solver must follow every twang of the line, so the pieces are longer here for both.
describe("the same rig in pieces of 15 cm", () => {
  const pieceMm = 150;
  const usualMm = { straight: 27, heap: 72 };

  bench("the chain", () => {
    for (const landing of core.landings)
      core.sinkOfRig(rig, landing, { pieceShare: pieceMm / usualMm[landing], stepShare: 1 });
  });

  bench(
    "an elastic line by an ODE library",
    () => {
      const { chain } = chainOfRig(rig, () => pieceMm);
      const tenths = Array.from({ length: 10 }, (_, i) => (i < 9 ? 200 * (i + 1) : 1960));
      for (const drawnOut of [1, 0]) elasticFall(chain, tenths, drawnOut, 1e-3);
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
