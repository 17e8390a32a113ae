import { shownHyphen } from "../layout/fonts.ts";
import { packedFace } from "../layout/glyph-table.ts";
import { hyphensOf } from "../layout/hyphens.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import { digestOf } from "../model/digest.ts";
import type { Keep } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import type { OwnFont } from "../model/own-font.ts";

/** The script that makes cards in the browser. */
export const cardScript = "card.js";

/** Signs of every text in English, and of most others of Western Europe; the marks of feet and inches. */
const usualSigns = [
  [0x20, 0x7e],
  [0xa0, 0xff],
  [0x2032, 0x2033],
] as const;

/**
 * The site's assets with the faces that cards are set in written in front of the script that makes them: cut down to the
 * signs that a card of this guide can hold.
 */
export function withCardFaces(
  assets: ReadonlyMap<string, string | Uint8Array>,
  library: Library,
  keep: Keep,
): ReadonlyMap<string, string | Uint8Array> {
  const script = assets.get(cardScript);
  if (script === undefined) return assets;
  const { words, guide, rigs, scales, font } = library;
  const told = JSON.stringify([words, guide, rigs.map(({ rig }) => rig), scales]);
  const data = `${facesFor(told, font, keep)}${hyphensFor(told, guide.language)}`;
  return new Map([...assets, [cardScript, `${data}${script}`]]);
}

/** The faces follow from the signs, which seldom change: most edits write with those that are there. */
function facesFor(told: string, font: OwnFont | undefined, keep: Keep): string {
  const signs = new Set(told).add(String.fromCodePoint(shownHyphen));
  for (const [first, last] of usualSigns) {
    for (let code = first; code <= last; code++) signs.add(String.fromCodePoint(code));
  }
  const fontFrom = font && Buffer.from(font.bytes).toString("base64");
  return keep("faces of cards", digestOf([...signs].sort().join(""), fontFrom), () => {
    const { regular, bold, italic } = nodeFonts(font?.bytes).faces;
    const packed = {
      regular: packedFace(regular.source, signs),
      bold: packedFace(bold.source, signs),
      italic: packedFace(italic.source, signs),
    };
    return `var dotdownFaces=${JSON.stringify(packed)};\n`;
  });
}

/** The words of a guide that its language parts, so that no page needs the language's patterns. */
function hyphensFor(told: string, language: string): string {
  const hyphenate = hyphensOf(language);
  if (!hyphenate) return "";
  const parted = [...new Set(told.match(/\p{L}+/gu))]
    .map((word) => [word, hyphenate(word)] as const)
    .filter(([, parts]) => parts.length > 1);
  return `var dotdownHyphens=${JSON.stringify(Object.fromEntries(parted))};\n`;
}
