import {
  ReaderBack,
  type ReaderBackParts,
  type ReaderFormat,
  ReaderFront,
} from "../../../templates/cards/reader-card.tsx";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type LaidOutPage, layOut } from "../../layout/lay-out.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { CardContent, CardDepth } from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import type { Card } from "../sheets/sheet.ts";
import { cardContent, threeDepths } from "./card-content.ts";
import { qrCode } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";

/**
 * Cards to read. Clear print is at least 14 pt, large print at least 16 pt, labels of drawings included.
 * Source: UKAAF G003, Creating clear print and large print documents, 2019.
 */
export const readerFormats: readonly ReaderFormat[] = [
  {
    name: "A7",
    ...paperSizes.A7,
    marginMm: 4,
    typePt: 14,
    nameWidthMm: 19,
    shortNames: true,
    stacked: true,
    boxHeightMm: 14,
  },
  {
    name: "A6",
    ...paperSizes.A6,
    marginMm: 8,
    typePt: 14,
    nameWidthMm: 19,
    shortNames: true,
    stacked: false,
    boxHeightMm: 16,
  },
  {
    name: "A5",
    ...paperSizes.A5,
    marginMm: 8,
    typePt: 16,
    nameWidthMm: 41,
    shortNames: false,
    stacked: false,
    boxHeightMm: 16,
  },
];

/** Smallest module of a code on these cards [mm] (for telephones; from memory). */
export const readerModuleMinMm = 0.4;

interface ReaderFaces {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** How many of the `additions` the back has room for. */
  readonly additions: number;
}

type Depths = (depths: readonly CardDepth[]) => readonly CardDepth[];

const ends: Depths = (depths) => (depths.length < 3 ? depths : [depths[0]!, depths[depths.length - 1]!]);

const barest: ReaderBackParts = {
  depths: [],
  line: false,
  box: false,
  setDepth: false,
  recordDepth: false,
  tipSays: false,
  feed: false,
  publisher: false,
};

/**
 * What a back takes on top of the name, the shot for one depth, scale and metal, and the caution: each in turn for as
 * long as all before it fit too. The rest is left to the next larger format.
 */
export const additions: readonly ((parts: ReaderBackParts, card: CardContent) => ReaderBackParts)[] = [
  (parts) => ({ ...parts, line: true }),
  (parts, card) => ({ ...parts, depths: ends(card.depths) }),
  (parts) => ({ ...parts, box: true }),
  (parts, card) => ({ ...parts, depths: card.depths }),
  (parts) => ({ ...parts, tipSays: true }),
  (parts) => ({ ...parts, feed: true }),
  (parts) => ({ ...parts, publisher: true }),
  (parts) => ({ ...parts, setDepth: true }),
  (parts) => ({ ...parts, recordDepth: true }),
];

export async function layOutReader(
  solved: SolvedRig,
  format: ReaderFormat,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<ReaderFaces> {
  const depths = threeDepths(solved.depths);
  const drawnAt = Math.floor((depths.length - 1) / 2);
  const card = cardContent({ ...solved, depths }, guide, kit);
  const picture = rigPicture(solved, depths[drawnAt]!, kit, format.typePt * mmPerPoint);
  return {
    front: picture.checked(await layOut(ReaderFront({ card, format, picture }), format, fonts)),
    ...(await fullestBack(card, card.depths[drawnAt]!, format, kit, fonts)),
  };
}

/** The back with the most additions that fit; with none of them where even the barest does not. */
async function fullestBack(
  card: CardContent,
  drawn: CardDepth,
  format: ReaderFormat,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<{ back: LaidOutPage; additions: number }> {
  const code = codeOf(card, kit);
  const layOutWith = (count: number) => {
    const parts = additions
      .slice(0, count)
      .reduce<ReaderBackParts>((sum, add) => add(sum, card), { ...barest, depths: [drawn] });
    const tree = ReaderBack({ card, format, parts, words: kit.words, ...(code && { code }) });
    return layOut(tree, format, fonts);
  };
  const fits = ({ overflows }: LaidOutPage) => overflows.length === 0;
  let count = usualAdditions[format.name];
  let back = await layOutWith(count);
  while (!fits(back) && count > 0) {
    count -= 1;
    back = await layOutWith(count);
    if (fits(back)) return { back, additions: count };
  }
  while (fits(back) && count < additions.length) {
    const fuller = await layOutWith(count + 1);
    if (!fits(fuller)) break;
    back = fuller;
    count += 1;
  }
  return { back, additions: count };
}

/** Where the search for the fullest back begins; the answer does not depend on it. */
const usualAdditions: Readonly<Record<ReaderFormat["name"], number>> = { A7: 2, A6: 6, A5: 9 };

function codeOf(card: CardContent, { words }: DrawingKit) {
  if (card.address === undefined) return undefined;
  const code = qrCode(card.address);
  return {
    alt: words("card.code-alt", { address: card.address }),
    sizeMm: code.modules * readerModuleMinMm,
    draw: code.draw,
  };
}

/** The card as it lies on a sheet, upright or, to halve the paper, with its head to the left. */
export function readerCard(id: string, { front, back }: ReaderFaces, lying: boolean): Card {
  const { widthMm, heightMm } = front;
  return lying
    ? {
        id,
        widthMm: heightMm,
        heightMm: widthMm,
        front: { ...front, turn: 270 },
        back: { ...back, turn: 90 },
      }
    : { id, widthMm, heightMm, front: { ...front, turn: 0 }, back: { ...back, turn: 0 } };
}
