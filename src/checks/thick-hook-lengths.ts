import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

/** Hook lengths thicker than the line that they are tied to: a fish sees them first, and a snag costs the whole rig. */
export const thickHookLengths: ContentCheck = ({ library: { rigs } }) =>
  rigs.flatMap(({ rig: { mainLine, hookLine }, placeOf }) =>
    hookLine.diameterMm > mainLine.diameterMm
      ? [message("thick-hook-length", placeOf(["hook-length", "diameter"]), {})]
      : [],
  );
