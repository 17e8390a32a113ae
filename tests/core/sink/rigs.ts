import type { Answer } from "../../../src/core/finding.ts";
import type { HangingShot } from "../../../src/core/flow/hanging-rig.ts";
import type { SinkingRig } from "../../../src/core/sink/chain-of-rig.ts";
import type { Landing, Sink, SinkFineness } from "../../../src/core/sink/sink-of-rig.ts";
import { sinkOfRig } from "../../../src/core/sink/sink-of-rig.ts";
import type { Metal } from "../../../src/core/tackle/shot.ts";

/** Shot at these distances from the hook, `[mass in g, distance in mm]`. */
export function shotAt(places: readonly (readonly [number, number])[], metal: Metal = "lead"): HangingShot[] {
  return places.map(([massG, fromHookMm]) => ({ massG, metal, fromHookMm }));
}

/** The rig of the trial in the model's text: 2 m, 0.15 mm nylon, 15 °C, a 6 g float of 10 cm² of drag area. */
export function rigWith(shot: readonly HangingShot[], changes: Partial<SinkingRig> = {}): SinkingRig {
  return {
    shot,
    floatToHookMm: 2000,
    draughtMm: 0,
    depthMm: 2000,
    mainLineDiameterMm: 0.15,
    hookLineDiameterMm: 0.15,
    hookLengthMm: 300,
    bait: { massG: 0.15, densityKgM3: 1200 },
    hookMassG: 0,
    float: { massG: 6, dragAreaCm2: 10 },
    water: { tempC: 15, salinity: 0 },
    ...changes,
  };
}

/** Five No 4 at 30 cm gaps from 60 cm up and a No 8 at 30 cm. */
export const strungOut = shotAt([
  [0.06, 300],
  [0.2, 600],
  [0.2, 900],
  [0.2, 1200],
  [0.2, 1500],
  [0.2, 1800],
]);

/** The same load as one body at 50 cm and a No 8 at 20 cm. */
export const bulked = shotAt([
  [0.06, 200],
  [1, 500],
]);

export function valueIn<T>(found: Answer<T>): T {
  if (!found.ok) throw new Error(found.findings.map((finding) => finding.code).join());
  return found.value;
}

export function sinks(rig: SinkingRig, landing: Landing, fineness?: SinkFineness): Sink {
  return valueIn(sinkOfRig(rig, landing, fineness));
}
