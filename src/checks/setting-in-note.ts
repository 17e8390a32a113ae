import type { Setting } from "../core/depth/setting.ts";
import type { RigEntry } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import { sentencesOf } from "./blocks.ts";
import type { ContentCheck } from "./check.ts";
import { ownTexts } from "./own-texts.ts";

/** How texts name where a hook is set. */
const named: Readonly<Record<Setting, RegExp>> = {
  "dead depth": /\bdead\sdepth\b/gi,
  "over depth": /\bover\s?depth\b|\blaid\son\b/gi,
  "off bottom": /\boff\s(?:the\s)?(?:bottom|bed)\b/gi,
  "up in the water": /\bup\sin\sthe\swater\b/gi,
};

/** In running water a bait rides where the current holds it, whatever its setting. */
const settingsAlone: readonly Setting[] = ["dead depth", "over depth"];

/** How far over depth or off the bottom a sentence says. */
const typedGap = /(\d+(?:\.\d+)?)\s(cm|m)\s(over\s?depth|off\s(?:the\s)?(?:bottom|bed))\b/gi;

/**
 * What a rig's own file says of another setting than the rig's, or of another length for it: the card says one thing
 * and the page another. What to change when no bites come stands in the list for it, which is not looked at.
 */
export const settingInNote: ContentCheck = ({ library }) => library.rigs.flatMap(ofRig);

function ofRig(entry: RigEntry): readonly Message[] {
  const { rig } = entry;
  const settings = rig.water === "still" ? (Object.keys(named) as Setting[]) : settingsAlone;
  const others = settings.filter((setting) => setting !== rig.setting);
  return ownTexts(entry).flatMap((block) =>
    sentencesOf(block).flatMap(({ at, text }) => {
      const otherSetting = others.flatMap((setting) => [...text.matchAll(named[setting])]);
      const otherGap = [...text.matchAll(typedGap)].filter(
        ({ 1: gap, 2: unit, 3: way }) =>
          (rig.water === "still" || /^over/i.test(way!)) &&
          Number(gap) * (unit === "m" ? 1000 : 10) !== Math.abs(rig.overdepthMm),
      );
      const found = otherSetting[0] ?? otherGap[0];
      const place = found && block.placeAt(at + found.index);
      return place ? [message("setting-in-note", place, { found: found[0], setting: rig.setting })] : [];
    }),
  );
}
