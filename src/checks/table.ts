import type { Message } from "../model/message.ts";
import { baitInNote } from "./bait-in-note.ts";
import { basisInWords } from "./basis-in-words.ts";
import type { Checked, ContentCheck } from "./check.ts";
import { copiedRigs } from "./copied-rigs.ts";
import { farDates } from "./far-dates.ts";
import { hookForBait } from "./hook-for-bait.ts";
import { kitForRig } from "./kit-for-rig.ts";
import { knownFeed } from "./known-feed.ts";
import { lineForFish } from "./line-for-fish.ts";
import { missingBasis } from "./missing-basis.ts";
import { plansOfCoaches } from "./plans.ts";
import { readingAge } from "./reading-age.ts";
import { rigsForFish } from "./rigs-for-fish.ts";
import { settingInNote } from "./setting-in-note.ts";
import { sizeInTub } from "./size-in-tub.ts";
import { stillWaterKeys } from "./still-water-keys.ts";
import { swimsAsFound } from "./swims.ts";
import { thickHookLengths } from "./thick-hook-lengths.ts";
import { typedFigures } from "./typed-figures.ts";
import { unexplainedTerms } from "./unexplained-terms.ts";
import { unlinkedLessons } from "./unlinked-lessons.ts";
import { untaughtRigs } from "./untaught-rigs.ts";
import { unusedTerms } from "./unused-terms.ts";

/** All checks of content that is otherwise right. */
export const contentChecks = {
  "reading age": readingAge,
  "unexplained terms": unexplainedTerms,
  "unused terms": unusedTerms,
  "unlinked lessons": unlinkedLessons,
  "untaught rigs": untaughtRigs,
  "copied rigs": copiedRigs,
  "thick hook lengths": thickHookLengths,
  "far dates": farDates,
  "coaches' plans": plansOfCoaches,
  "swims as found": swimsAsFound,
  "typed figures": typedFigures,
  "line for fish": lineForFish,
  "bait in note": baitInNote,
  "hook for bait": hookForBait,
  "kit for rig": kitForRig,
  "size in tub": sizeInTub,
  "setting in note": settingInNote,
  "rigs for fish": rigsForFish,
  "known feed": knownFeed,
  "still water keys": stillWaterKeys,
  "missing basis": missingBasis,
  "basis in words": basisInWords,
} satisfies Readonly<Record<string, ContentCheck>>;

export function checkContent(checked: Checked): readonly Message[] {
  return Object.values(contentChecks).flatMap((check: ContentCheck) => check(checked));
}
