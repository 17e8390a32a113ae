import { packedFace } from "../layout/glyph-table.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import type { Library } from "../model/library.ts";

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
  { words, guide, rigs, scales, font }: Library,
): ReadonlyMap<string, string | Uint8Array> {
  const script = assets.get(cardScript);
  if (script === undefined) return assets;
  const signs = new Set(JSON.stringify([words, guide, rigs.map(({ rig }) => rig), scales]));
  for (const [first, last] of usualSigns) {
    for (let code = first; code <= last; code++) signs.add(String.fromCodePoint(code));
  }
  const { regular, bold, italic } = nodeFonts(font?.bytes).faces;
  const packed = {
    regular: packedFace(regular.source, signs),
    bold: packedFace(bold.source, signs),
    italic: packedFace(italic.source, signs),
  };
  return new Map([...assets, [cardScript, `var dotdownFaces=${JSON.stringify(packed)};\n${script}`]]);
}
