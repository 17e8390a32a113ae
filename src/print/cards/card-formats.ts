import type { CardFaces } from "../../../templates/cards/card-faces.ts";
import { pocketFaces } from "../../../templates/cards/pocket-card.tsx";
import { readerFaces } from "../../../templates/cards/reader-card.tsx";
import type { QuarterTurn } from "../../layout/paper.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { CardFormatName } from "../../model/addresses.ts";
import type { BackExtra, BackPart } from "../../model/card-content.ts";
import type { Printable } from "../../model/printable.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
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
  readonly faces: CardFaces;
  /** Size of the labels of the front's drawing [mm]. */
  readonly labelMm: number;
  /** Smallest module of a code [mm]. */
  readonly moduleMinMm: number;
  /** What every back of the format has beyond what every card must say. */
  readonly always: readonly BackExtra[];
  /** What a back takes besides: each in turn that fits. The rest is left to the next larger format. */
  readonly ifItFits: readonly BackPart[];
  /** On paper of its own size, and on a sheet. */
  readonly turns: { readonly alone: Turns; readonly onSheet: Turns };
  readonly cutting: Cutting;
  readonly listedAs: Extract<Printable["kind"], "card" | "larger-card">;
  readonly previewDpi: number;
}

/** Size of a pocket card. Source: ISO/IEC 7810:2019, ID-1. */
const id1 = { widthMm: 85.6, heightMm: 53.98 };
const pocketLook = { marginMm: 2.6, figurePt: 9, wordPt: 8 };

/** What a card to read takes, the most needed first. */
const ifItFits: readonly BackPart[] = [
  "drawn-depth",
  "two-depths",
  "box",
  "three-depths",
  "tip-says",
  "feed",
  "publisher",
  "set-depth",
  "record-depth",
  "every-depth",
];

const upright: Turns = { front: 0, back: 0 };

/** What cards to read have in common. */
const reader = {
  moduleMinMm: 0.4, // for telephones; from memory
  always: [],
  ifItFits,
  listedAs: "larger-card",
  previewDpi: 150,
} as const;

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
    faces: pocketFaces(pocketLook),
    labelMm: pocketLook.figurePt * mmPerPoint,
    moduleMinMm: 0.34, // 4 dots of a 300 dpi printer
    always: ["box"],
    ifItFits: ["drawn-depth", "two-depths", "three-depths", "publisher"],
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
    faces: readerFaces({
      marginMm: 3.5,
      typePt: clearPt,
      lineHeight: 1.1,
      nameWidthMm: 19,
      names: "short",
      depths: "stacked",
      tackle: "in one",
      gapMm: 1,
      boxHeightMm: 14,
    }),
    labelMm: clearPt * mmPerPoint,
    turns: { alone: upright, onSheet: upright },
    cutting: "apart",
  },
  A6: {
    name: "A6",
    ...reader,
    front: paperSizes.A6,
    back: paperSizes.A6,
    faces: readerFaces({
      marginMm: 8,
      typePt: clearPt,
      lineHeight: 1.15,
      nameWidthMm: 19,
      names: "short",
      depths: "side by side",
      tackle: "in two",
      gapMm: 1.5,
      boxHeightMm: 16,
    }),
    labelMm: clearPt * mmPerPoint,
    turns: { alone: upright, onSheet: upright },
    cutting: "halving",
  },
  A5: {
    name: "A5",
    ...reader,
    front: paperSizes.A5,
    back: paperSizes.A5,
    faces: readerFaces({
      marginMm: 8,
      typePt: largePt,
      lineHeight: 1.15,
      nameWidthMm: 41,
      names: "long",
      depths: "side by side",
      tackle: "in two",
      gapMm: 1.5,
      boxHeightMm: 16,
    }),
    labelMm: largePt * mmPerPoint,
    // To halve the paper it lies with its head to the left.
    turns: { alone: upright, onSheet: { front: 270, back: 90 } },
    cutting: "halving",
  },
};

export const allCardFormats: readonly CardFormat[] = Object.values(cardFormats);
