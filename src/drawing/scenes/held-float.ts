import { topMm } from "../../core/float/profile.ts";
import type { Rig } from "../../model/rig.ts";
import { rubbersOn } from "../float/rubbers-on.ts";
import type { Point } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";

/** The marked tip is at least this much of the length, and a stem this much of the thickest part: less would not be seen. */
const leastTipShare = 0.12;
const leastStemShare = 0.36;

/** How large a float is drawn [mm of paper]. */
interface Drawn {
  readonly foot: Point;
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** A float that is held at both ends, as long and thick as is said, and the line that runs down its side, to its rubbers. */
export function heldFloat(
  { float: real }: Rig,
  { foot, lengthMm, widthMm }: Drawn,
): { readonly line: readonly Point[]; readonly items: readonly Item[]; readonly rubbers: readonly Item[] } {
  const top = topMm(real.profile);
  const widest = Math.max(...real.profile.map(({ diameterMm }) => diameterMm));
  const float = {
    ...real,
    tipShowingMm: Math.max(real.tipShowingMm, top * leastTipShare),
    profile: real.profile.map(({ atMm, diameterMm }) => ({
      atMm,
      diameterMm: Math.max(diameterMm, widest * leastStemShare),
    })),
  };
  const scales = { lengthScale: lengthMm / top, widthScale: widthMm / widest };
  const look = { profile: float.profile, tipMm: float.tipShowingMm, loadMm: 0, eye: false, at: foot };
  return { items: parts.floatBody.draw({ ...look, ...scales }), ...rubbersOn({ float, foot, ...scales }) };
}
