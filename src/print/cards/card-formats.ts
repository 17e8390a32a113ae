import type { BackLook, FrontLook, SideLook } from "../../../templates/cards/card-look.ts";
import type { QuarterTurn } from "../../layout/paper.ts";
import type { CardFormatName } from "../../model/addresses.ts";
import { adviceParts, type CardPart, depthParts, makersParts } from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
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
  /** How either side may be set, the best first: a card has the first in which all that must stand on it fits. */
  readonly fronts: readonly [FrontLook, ...FrontLook[]];
  readonly backs: readonly [BackLook, ...BackLook[]];
  /** What a card of this format has, in smaller type if need be, besides all that the next smaller one has. */
  readonly least: readonly CardPart[];
  /** What it has besides, in smaller type if need be, where there is room: the most needed first. */
  readonly wished: readonly CardPart[];
  /** Smallest module of a code [mm]. */
  readonly moduleMinMm: number;
  /** On paper of its own size, and on a sheet. */
  readonly turns: { readonly alone: Turns; readonly onSheet: Turns };
  readonly cutting: Cutting;
  /** Room for the mark of the guide's makers; a pocket card has none, and a phone that makes one has not the mark. */
  readonly logoMm?: Size;
  readonly listedAs: Extract<Printable["kind"], "card" | "larger-card">;
}

/** Size of a pocket card. Source: ISO/IEC 7810:2019, ID-1. */
const id1 = { widthMm: 85.6, heightMm: 53.98 };

/** No word is smaller, at arm's length. */
const leastPt = 8;

type AnyFront = Omit<FrontLook, "shared">;

type Fronts = readonly [AnyFront, ...AnyFront[]];

const withLabels = (shared: FrontLook["shared"], [best, ...others]: Fronts): CardFormat["fronts"] => [
  { ...best, shared },
  ...others.map((front) => ({ ...front, shared })),
];

/**
 * Before shot share a label, unlike ones last, the drawing takes smaller type and more of the card: the back tells each
 * group of shot by itself.
 */
const apart = (fronts: Fronts): CardFormat["fronts"] => [
  ...withLabels("brief", fronts),
  ...withLabels("alike", fronts),
  ...withLabels("any", fronts),
];

/** What both sides of a pocket card have in common. */
const pocket = { whiteMm: 0, marginMm: 2.2, wordPt: leastPt, lineHeight: 1.05 } as const;

const pocketFront = (figurePt: number, tackleOn: FrontLook["tackleOn"], settingPt = 16): AnyFront => ({
  ...pocket,
  figurePt,
  settingPt,
  tackleOn,
});

const pocketBack = (figurePt: number, said: BackLook["said"]): BackLook => ({
  ...pocket,
  figurePt,
  settingPt: figurePt + 3,
  nameWidthMm: 2.35 * leastPt,
  rowGapMm: 0.15,
  gapMm: 0.6,
  writeInMm: 4.7,
  said,
  punch: "right",
});

/** As much as 8 pt gives: lines without room between them. */
const tightBack: BackLook = {
  ...pocketBack(leastPt, "run on"),
  lineHeight: 1,
  rowGapMm: 0.08,
  gapMm: 0.3,
  writeInMm: 4,
};

const upright: Turns = { front: 0, back: 0 };

/** What cards to read have in common. */
const reader = {
  moduleMinMm: 0.4, // for telephones; from memory
  logoMm: { widthMm: 24, heightMm: 8 },
  listedAs: "larger-card",
} as const;

interface ReaderRoom extends Pick<SideLook, "marginMm" | "whiteMm"> {
  readonly gapMm: number;
  readonly writeInMm: number;
}

/** A side of a card to read has one size of type for words and figures, labels of the drawing included. */
function readerSides(
  [largest, ...smaller]: readonly [number, ...number[]],
  room: ReaderRoom,
): Pick<CardFormat, "fronts" | "backs"> {
  const { gapMm, writeInMm, ...edge } = room;
  const side = (pt: number) => ({ ...edge, wordPt: pt, figurePt: pt, lineHeight: 1.12 });
  const front = (pt: number): AnyFront => ({
    ...side(pt),
    settingPt: Math.max(18, Math.round(1.55 * pt)),
    tackleOn: "front",
  });
  const back = (pt: number): BackLook => ({
    ...side(pt),
    settingPt: pt + 2,
    nameWidthMm: 1.95 * pt,
    // A decimal point so near to a rule is lost with it in a copy of a copy.
    rowGapMm: 0.35,
    gapMm,
    writeInMm,
    said: "apart",
    punch: "left",
  });
  const fronts: Fronts = [front(largest), ...smaller.map(front)];
  return {
    // Before a label says less it is set smaller: a larger card says no less than a small one.
    fronts: [...withLabels("none", fronts), ...apart(fronts)],
    backs: [back(largest), ...smaller.map(back)],
  };
}

/**
 * Clear print is at least 14 pt, large print at least 16 pt, labels of drawings included.
 * Source: UKAAF G003, Creating clear print and large print documents, 2019.
 */
const clearPt = 14;
const largePt = 16;

/** A card that a sheet of paper is cut into four of. */
function quartered(size: Size): Omit<CardFormat, "name"> {
  return {
    ...reader,
    front: size,
    back: size,
    least: [],
    wished: adviceParts,
    ...readerSides([clearPt, 13, 12, 11, 10], {
      marginMm: 7,
      whiteMm: unprintableMm,
      gapMm: 1.2,
      writeInMm: 10,
    }),
    turns: { alone: upright, onSheet: upright },
    cutting: "halving",
  };
}

/** A card that a sheet of paper is cut into two of; to be cut it lies with its head to the left. */
function halved(size: Size): Omit<CardFormat, "name"> {
  return {
    ...reader,
    front: size,
    back: size,
    least: [...depthParts, "code", "gauge"],
    wished: [...adviceParts, "record-depth", "signs", "publisher", ...makersParts],
    ...readerSides([largePt, 15, clearPt, 13, 12], {
      marginMm: 8,
      whiteMm: unprintableMm,
      gapMm: 1.5,
      writeInMm: 12,
    }),
    turns: { alone: upright, onSheet: { front: 270, back: 90 } },
    cutting: "halving",
  };
}

/** Every format of card; one that `addresses.ts` names and that is missing here does not compile. */
export const cardFormats: { readonly [Name in CardFormatName]: CardFormat & { readonly name: Name } } = {
  "ID-1": {
    name: "ID-1",
    front: { widthMm: id1.heightMm, heightMm: id1.widthMm },
    back: id1,
    least: [],
    wished: ["set-depth", "made-up", "ruler"],
    fronts: apart([
      pocketFront(9, "front"),
      pocketFront(leastPt, "front"),
      pocketFront(9, "back"),
      pocketFront(leastPt, "back"),
      pocketFront(leastPt, "back", 15),
    ]),
    backs: [pocketBack(9, "apart"), pocketBack(9, "run on"), pocketBack(leastPt, "run on"), tightBack],
    moduleMinMm: 0.34, // 4 dots of a 300 dpi printer
    // The upright front lies with its head to the left: its top right corner and the back's are the same corner of the
    // card, which is kept clear for a punch.
    turns: { alone: { front: 270, back: 0 }, onSheet: { front: 270, back: 0 } },
    cutting: "apart",
    listedAs: "card",
  },
  A7: {
    name: "A7",
    ...reader,
    front: paperSizes.A7,
    back: paperSizes.A7,
    least: [],
    wished: ["set-depth", "made-up", "ruler", "depth-between"],
    ...readerSides([12, 11, 10, 9, leastPt], { marginMm: 3.5, whiteMm: 0, gapMm: 0.8, writeInMm: 8 }),
    turns: { alone: upright, onSheet: upright },
    cutting: "apart",
  },
  A6: { name: "A6", ...quartered(paperSizes.A6) },
  A5: { name: "A5", ...halved(paperSizes.A5) },
  "quarter Letter": { name: "quarter Letter", ...quartered(paperSizes["quarter Letter"]) },
  "half Letter": { name: "half Letter", ...halved(paperSizes["half Letter"]) },
};

/** The formats that a guide's cards are made in, smallest first: the larger ones are halves and quarters of its paper. */
export const cardFormatsOn: Readonly<Record<Guide["paper"], readonly [CardFormat, ...CardFormat[]]>> = {
  A4: [cardFormats["ID-1"], cardFormats.A7, cardFormats.A6, cardFormats.A5],
  Letter: [cardFormats["ID-1"], cardFormats.A7, cardFormats["quarter Letter"], cardFormats["half Letter"]],
};
