import { isAtWater } from "../../core/course/course.ts";
import { withId } from "../../core/lists.ts";
import { type FishedSpan, spanInParts, spreadOver } from "../../core/session/places.ts";
import type { RunSheet } from "../../core/session/run-sheet.ts";
import { bedOf, depthToFishMm } from "../../core/swim/bed.ts";
import type { Mm } from "../../core/units.ts";
import type { LessonPlan, Library, RigEntry } from "../../model/library.ts";
import type { Session } from "../../model/session.ts";
import type { RigAtSpot, SessionSpot } from "../../model/solved-session.ts";
import type { Spot } from "../../model/swim.ts";

/** A spot before its rigs are made up. */
export interface SpotToFish extends Omit<SessionSpot, "rigs"> {
  readonly rigs: readonly RigEntry[];
}

/** How deep it is at a spot, as a rig is made up for it. */
function depthAt({ line, fromBankMm }: Spot): Mm {
  const depthMm = depthToFishMm(bedOf(line.soundings), fromBankMm);
  if (depthMm === undefined) throw new RangeError("a spot lies beyond the soundings of its line");
  return depthMm;
}

/** The spots of a session, with the learners shared out over them and the rigs that are fished at each. */
export function spotsOf(
  { swims, learners, rigIds }: Session,
  library: Pick<Library, "swims" | "rigs">,
): readonly SpotToFish[] {
  const heads = spreadOver(learners.count, swims.length);
  return swims.map(({ swimId, spot: title, rigIds: wanted }, at) => {
    const swim = withId(library.swims, swimId);
    const spot = swim.spots.find((one) => one.title === title);
    if (!spot) throw new RangeError(`no spot ${title}`);
    const named = wanted.length > 0 ? wanted : rigIds;
    const rigs = named.map((id) => withId(library.rigs, id)).filter(({ rig }) => rig.water === swim.water);
    return { swim, spot, depthMm: depthAt(spot), learners: heads[at] ?? 0, rigs };
  });
}

/** Learners fish in the drills of lessons at the water that ask for bait, with their first rig. */
const fishesIn = ({ place, kit }: LessonPlan): boolean =>
  isAtWater(place) && Object.values(kit).some(({ baits }) => baits.length > 0);

/** When a rig is fished: the first of a spot in the drills, too, and all of them one after the other at the end. */
export function spansOf(
  plans: readonly LessonPlan[],
  { blocks }: RunSheet,
  rigCount: number,
): readonly RigAtSpot["spans"][] {
  const fishing = blocks.find(({ what }) => what === "fishing");
  const parts = fishing ? spanInParts(fishing, rigCount) : [];
  const drills = blocks.flatMap(({ id, fromMin }): FishedSpan[] => {
    const plan = plans.find((one) => one.id === id);
    return plan && fishesIn(plan) ? [drillOf(plan, fromMin)] : [];
  });
  return Array.from({ length: rigCount }, (_, at) => [
    ...(at === 0 ? drills : []),
    ...(parts[at] ? [parts[at]] : []),
  ]);
}

/** The part of a lesson in which the learners do something themselves. */
function drillOf({ parts }: LessonPlan, lessonFromMin: number): FishedSpan {
  let fromMin = lessonFromMin;
  for (const { part, minutes } of parts) {
    if (part === "drills") return { fromMin, toMin: fromMin + minutes };
    fromMin += minutes;
  }
  return { fromMin, toMin: fromMin };
}
