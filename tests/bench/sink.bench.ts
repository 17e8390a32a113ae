import { bench, describe } from "vitest";
import { chainOfRig } from "../../src/core/sink/chain-of-rig.ts";
import { landings, pieceMm, sinkOfRig } from "../../src/core/sink/sink-of-rig.ts";
import { elasticFall } from "../core/sink/elastic-line.ts";
import { rigWith, strungOut } from "../core/sink/rigs.ts";

// Six shot and the bait in 2 m, at the accuracy at which half the step and twice the pieces move no time by 2 %.
describe("a rig of seven weights sinks in 2 m", () => {
  const rig = rigWith(strungOut);

  bench("both landings, as a rig page asks for them", () => {
    for (const landing of landings) sinkOfRig(rig, landing);
  });

  // The same pieces as an elastic line, by the ODEX library; its explicit steps must follow every twang of the line.
  bench(
    "both landings, an elastic line by an ODE library",
    () => {
      const { chain } = chainOfRig(rig, pieceMm);
      const tenths = Array.from({ length: 10 }, (_, i) => (i < 9 ? 200 * (i + 1) : 1960));
      for (const drawnOut of [1, 0]) elasticFall(chain, tenths, drawnOut, 1e-3);
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
