import { bench, describe } from "vitest";
import { sampleWaggler } from "../support/sample-rig.ts";
import { bundled } from "./bundled.ts";

const { solveRig } = await bundled<typeof import("../../src/solve/solve-rig.ts")>("src/solve/solve-rig.ts");
const { solveInWater } = await bundled<typeof import("../../src/solve/in-water.ts")>("src/solve/in-water.ts");
const rig = { ...sampleWaggler.rig, depthsMm: [2000] };

function solved() {
  const made = solveRig(rig);
  if (!made.ok) throw new Error("the sample rig does not solve");
  return made.value;
}

// What a page does after each key: under 16 ms, one frame, for the figures and under 100 ms with the way it sinks.
describe("a rig fitted to one depth in the browser", () => {
  bench("its figures", () => {
    solved();
  });

  bench("its figures and how it sinks", () => {
    const made = solved();
    solveInWater(made, made.depths[0]!);
  });
});
