import { bench, describe } from "vitest";
import { landings, sinkOfRig } from "../../src/core/sink/sink-of-rig.ts";
import { rigWith, strungOut } from "../core/sink/rigs.ts";

describe("a rig of seven weights sinks in 2 m", () => {
  bench("both landings, as the rig page asks for them", () => {
    for (const landing of landings) sinkOfRig(rigWith(strungOut), landing);
  });
});
