import { baitMark } from "./bait-mark.ts";
import { bed } from "./bed.ts";
import { bracket } from "./bracket.ts";
import { dimension } from "./dimension.ts";
import { floatBody } from "./float-body.ts";
import { flowArrow } from "./flow-arrow.ts";
import { hook } from "./hook.ts";
import { lineBreak } from "./line-break.ts";
import { loopJoin } from "./loop-join.ts";
import { plummet } from "./plummet.ts";
import { ripples } from "./ripples.ts";
import { rubber } from "./rubber.ts";
import { shot } from "./shot.ts";
import { stopKnot } from "./stop-knot.ts";
import { waterSurface } from "./water-surface.ts";

/** Every part that drawings are put together from. A new one is a file here and a line in this table. */
export const parts = {
  baitMark,
  bed,
  bracket,
  dimension,
  floatBody,
  flowArrow,
  hook,
  lineBreak,
  loopJoin,
  plummet,
  ripples,
  rubber,
  shot,
  stopKnot,
  waterSurface,
};
