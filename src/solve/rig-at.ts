import type { Mm, Ms } from "../core/units.ts";
import type { Rig } from "../model/rig.ts";

/** A rig as it is made up for one depth, and for the pace of the water where that runs. */
export function rigAt(rig: Rig, depthMm: Mm, paceMs: Ms | undefined): Rig {
  const flows = rig.water === "flowing" && paceMs !== undefined;
  return { ...rig, depthsMm: [depthMm], ...(flows && { pacesMs: [paceMs] }) };
}
