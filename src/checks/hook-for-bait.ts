import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

/** Hooks of rigs that are too large or too small for the rig's bait. */
export const hookForBait: ContentCheck = ({ library: { rigs, baits } }) =>
  rigs.flatMap(({ rig, placeOf }) => {
    const hooks = baits.find(({ bait }) => bait.id === rig.bait.id)?.hooks;
    const { size } = rig.hook;
    if (!hooks || (size >= hooks.largest && size <= hooks.smallest)) return [];
    const allowed = `${hooks.largest} to ${hooks.smallest}`;
    return [message("hook-against-bait", placeOf(["hook"]), { hook: size, bait: rig.bait.title, allowed })];
  });
