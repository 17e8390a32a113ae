import type { CardLook } from "../../../templates/cards/card-look.ts";
import type { QuarterTurn } from "../../layout/paper.ts";
import type { CardFormatName } from "../../model/addresses.ts";
import { type CardPart, depthParts } from "../../model/card-content.ts";
import type { Printable } from "../../model/printable.ts";
import { paperSizes, unprintableMm } from "../sheets/paper-sizes.ts";
import type { Cutting } from "../sheets/sheet.ts";

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** How each side is turned to lie on the card. */
interface Turns {
  readonly front: QuarterTurn;
  readonly back: QuarterTurn;
}

/** Everything that tells one format of card from another. */
export interface CardFormat {
  readonly name: CardFormatName;
  readonly front: Size;
  readonly back: Size;
  /** Sizes of type, the largest first: a card has the first in which all that must stand on it fits. */
  readonly looks: readonly [CardLook, ...CardLook[]];
  /** What a card of this format has, in smaller type if need be, besides all that the next smaller one has. */
  readonly least: readonly CardPart[];
  /** Smallest module of a code [mm]. */
  readonly moduleMinMm: number;
  /** On paper of its own size, and on a sheet. */
  readonly turns: { readonly alone: Turns; readonly onSheet: Turns };
  readonly cutting: Cutting;
  readonly listedAs: Extract<Printable["kind"], "card" | "larger-card">;
  readonly previewDpi: number;
}

/** Size of a pocket card. Source: ISO/IEC 7810:2019, ID-1. */
const id1 = { widthMm: 85.6, heightMm: 53.98 };

/** No word is smaller, at arm's length. */
const leastPt = 8;

const pocketLook = (figurePt: number, tackleOn: CardLook["tackleOn"]): CardLook => ({
  tackleOn,
  whiteMm: 0,
  marginMm: 2.6,
  wordPt: leastPt,
  figurePt,
  settingPt: 15,
  rowSettingPt: 12,
  lineHeight: 1.06,
  nameWidthMm: 21,
  gapMm: 0.6,
  boxHeightMm: 7,
  backPunch: "right",
});

const upright: Turns = { front: 0, back: 0 };

/** What cards to read have in common. */
const reader = {
  moduleMinMm: 0.4, // for telephones; from memory
  listedAs: "larger-card",
  previewDpi: 150,
} as const;

/** Cards to read have one size of type for words and figures, labels of the drawing included. */
function readerLooks(
  sizesPt: readonly [number, ...number[]],
  room: Pick<CardLook, "marginMm" | "whiteMm" | "gapMm" | "boxHeightMm">,
): readonly [CardLook, ...CardLook[]] {
  const look = (typePt: number): CardLook => ({
    ...room,
    wordPt: typePt,
    figurePt: typePt,
    settingPt: Math.max(16, typePt + 4),
    rowSettingPt: typePt + 2,
    lineHeight: 1.12,
    nameWidthMm: 1.95 * typePt,
    backPunch: "left",
    tackleOn: "front",
  });
  const [first, ...others] = sizesPt;
  return [look(first), ...others.map(look)];
}

/**
 * Clear print is at least 14 pt, large print at least 16 pt, labels of drawings included.
 * Source: UKAAF G003, Creating clear print and large print documents, 2019.
 */
const clearPt = 14;
const largePt = 16;

/** Every format of card, smallest first; one that `addresses.ts` names and that is missing here does not compile. */
export const cardFormats: { readonly [Name in CardFormatName]: CardFormat & { readonly name: Name } } = {
  "ID-1": {
    name: "ID-1",
    front: { widthMm: id1.heightMm, heightMm: id1.widthMm },
    back: id1,
    least: [],
    looks: [pocketLook(9, "front"), pocketLook(9, "back"), pocketLook(leastPt, "back")],
    moduleMinMm: 0.34, // 4 dots of a 300 dpi printer
    // The upright front lies with its head to the left: its top right corner and the back's are the same corner of the
    // card, which is kept clear for a punch.
    turns: { alone: { front: 270, back: 0 }, onSheet: { front: 270, back: 0 } },
    cutting: "apart",
    listedAs: "card",
    previewDpi: 300,
  },
  A7: {
    name: "A7",
    ...reader,
    front: paperSizes.A7,
    back: paperSizes.A7,
    least: ["two-depths"],
    looks: readerLooks([12, 11, 10, 9, leastPt], { marginMm: 3.5, whiteMm: 0, gapMm: 0.8, boxHeightMm: 10 }),
    turns: { alone: upright, onSheet: upright },
    cutting: "apart",
  },
  A6: {
    name: "A6",
    ...reader,
    front: paperSizes.A6,
    back: paperSizes.A6,
    least: ["two-depths", "three-depths", "float-says", "change-first"],
    looks: readerLooks([clearPt, 13, 12, 11, 10], {
      marginMm: 7,
      whiteMm: unprintableMm,
      gapMm: 1.2,
      boxHeightMm: 12,
    }),
    turns: { alone: upright, onSheet: upright },
    cutting: "halving",
  },
  A5: {
    name: "A5",
    ...reader,
    front: paperSizes.A5,
    back: paperSizes.A5,
    least: [...depthParts, "true-tip", "float-says", "change-first", "box", "code"],
    looks: readerLooks([largePt, 15, clearPt, 13, 12], {
      marginMm: 8,
      whiteMm: unprintableMm,
      gapMm: 1.5,
      boxHeightMm: 14,
    }),
    // To halve the paper it lies with its head to the left.
    turns: { alone: upright, onSheet: { front: 270, back: 90 } },
    cutting: "halving",
  },
};

export const allCardFormats: readonly CardFormat[] = Object.values(cardFormats);
