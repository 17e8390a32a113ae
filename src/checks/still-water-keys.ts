import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

/** Keys of a rig for still water, or of a swim in it, that say something of a current: nothing is made of them. */
export const stillWaterKeys: ContentCheck = ({ library: { rigs, swims } }) => [
  ...swims.flatMap(({ water, paceMs, placeOf }) =>
    water === "still" && paceMs !== undefined
      ? [message("still-water-key", placeOf(["pace"]), { key: "pace", of: "swim" })]
      : [],
  ),
  ...rigs.flatMap(({ rig, placeOf }) => {
    if (rig.water === "flowing") return [];
    const keys = [
      ...(rig.pacesMs.length > 0 ? ["paces"] : []),
      ...(rig.heldBackShare === undefined ? [] : ["held-back"]),
    ];
    return keys.map((key) => message("still-water-key", placeOf([key]), { key, of: "rig" }));
  }),
];
