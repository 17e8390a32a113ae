import { digestOnce } from "../model/digest.ts";
import { fishWithoutLine } from "../model/fish-without-line.ts";
import { type Keep, makeAnew, once } from "../model/kept.ts";
import type { RigEntry } from "../model/library.ts";
import {
  type LineForFish,
  type LineTable,
  lineOfFish,
  type StrengthBand,
  strengthRoundingG,
} from "../model/line-table.ts";
import { type Message, message } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import type { ContentCheck } from "./check.ts";

/**
 * Lines of a rig that are too light or too heavy for a fish it is said to catch. A hook length with a shot on it must
 * be so much stronger that what is left under the shot will do.
 */
export const lineForFish: ContentCheck = ({
  library: { rigs, lines },
  rigs: solved,
  figures,
  keep = makeAnew,
}) => {
  if (!lines) return [];
  const withSums = new Map(solved.map((one) => [one.rig.id, one]));
  return rigs.flatMap((entry) => {
    const one = withSums.get(entry.id);
    const hasShot = once(() => one !== undefined && shotOnHookLength(one, keep));
    return fishOf(entry, lines).flatMap((found) =>
      "code" in found ? [found] : lineAgainst(found, entry, lines, hasShot, figures),
    );
  });
};

/** What the table says of each fish of a rig, or that it says nothing. */
function fishOf({ catches, placeOf }: RigEntry, lines: LineTable): readonly (LineForFish | Message)[] {
  return catches.map(
    (fish, at) => lineOfFish(lines, fish) ?? fishWithoutLine(lines, fish, placeOf(["catches", at])),
  );
}

function lineAgainst(
  { fish, mainLine, hookLine }: LineForFish,
  { rig, placeOf }: RigEntry,
  { leftUnderShot }: LineTable,
  hasShot: () => boolean,
  figures: Figures,
): readonly Message[] {
  const parts = [
    { line: "main line", key: "main-line", strengthG: rig.mainLine.strengthG, band: mainLine, left: 1 },
    {
      line: "hook length",
      key: "hook-length",
      strengthG: rig.hookLine.strengthG,
      band: hookLine,
      left: hasShot() ? leftUnderShot : 1,
    },
  ] as const;
  return parts.flatMap(({ line, key, strengthG, band, left }) => {
    const place = placeOf([key, "strength"]);
    const told = { line, found: figures.strength(strengthG), fish, allowed: bandText(band, figures) };
    if (strengthG * left < band.leastG - strengthRoundingG) {
      const underShot =
        left < 1 ? `: under the shot on it the line keeps ${figures.share(left)} of its strength` : "";
      return [message("line-too-light", place, { ...told, underShot })];
    }
    return strengthG > band.mostG + strengthRoundingG ? [message("line-too-heavy", place, told)] : [];
  });
}

/** In the language of the messages, whatever the guide's own. */
const bandText = ({ leastG, mostG }: StrengthBand, figures: Figures) =>
  `${figures.strength(leastG)} to ${figures.strength(mostG)}`;

/** Whether a rig has a shot below the loop of its hook length, at any of its depths; it follows from the rig. */
function shotOnHookLength(solved: SolvedRig, keep: Keep): boolean {
  const { rig } = solved;
  const isOnIt = ({ fromHookMm }: { readonly fromHookMm: number }) => fromHookMm < rig.hookLengthMm;
  return keep("shot on hook length", digestOnce(rig), () =>
    solved.depths.some(({ lineShot }) => lineShot.some(isOnIt)),
  );
}
