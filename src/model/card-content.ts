import type { MovedPart } from "../core/depth/setting.ts";

/** A rig made up for one depth, as a card words it. */
export interface CardDepth {
  readonly depthMm: number;
  readonly depth: string;
  /** Float's lower eye, or stop knot, to hook. */
  readonly setAt: string;
  /** Missing where no shot hold the float. */
  readonly lock?: string;
  /** Shot on the line with their places from the hook. */
  readonly places: string;
  readonly tip: string;
}

/** What a coach has written of a rig and its float; the page that fits a rig to other water has none of it. */
export interface CardNotes {
  /** The load as it is written on the float. */
  readonly marking?: string;
  readonly changeFirst?: readonly string[];
  /** From 1, the easiest. */
  readonly level?: number;
}

/** Everything that a card can say of a rig, worded; a format takes what it has room for. */
export interface CardContent {
  readonly id: string;
  readonly title: string;
  readonly water: "still" | "flowing";
  readonly level?: number;
  /** Float with its marking. */
  readonly float: string;
  /** Hook, bait, line and hook length. */
  readonly tackle: string;
  /** What is moved on the line to set the depth. */
  readonly moved: MovedPart;
  readonly depths: readonly CardDepth[];
  /** The depth that the front draws. */
  readonly drawn: CardDepth;
  /** What the setting is, and for which depth the front gives it. */
  readonly settingFor: string;
  /** How to set it in any other depth; missing where that takes more than moving it. */
  readonly otherDepth?: string;
  readonly metal: string;
  readonly floatSays: readonly string[];
  readonly changeFirst?: string;
  readonly setDepth: string;
  readonly recordDepth: string;
  /** What the tip says of the load, and what to do about it. */
  readonly tipSays: string;
  readonly feed: string;
  /** What the rule on lead forbids of the rig's shot; missing where that is nothing. */
  readonly leadWarning?: string;
  readonly caution: string;
  readonly publisher: string;
  /** Page of the rig, for the QR code; missing without a site address. */
  readonly address?: string;
}

/**
 * What every card has, of every format, rig, paper and system of units, beside the drawing: fields of `CardContent`. For
 * the depth that is drawn it has all that `CardDepth` says.
 */
export const onEveryCard = [
  "title",
  "float",
  "tackle",
  "settingFor",
  "metal",
  "leadWarning",
  "caution",
] as const;

/** What a card takes besides where it fits, the most needed first. All that a format takes, each larger one takes too. */
export const cardParts = [
  "other-depth",
  "two-depths",
  "true-tip",
  "three-depths",
  "float-says",
  "change-first",
  "every-depth",
  "box",
  "tip-says",
  "name-line",
  "set-depth",
  "feed",
  "record-depth",
  "publisher",
  "code",
] as const;
export type CardPart = (typeof cardParts)[number];

/** Parts that say for how many depths a card tells setting and shot: each more than the one before. */
export const depthParts = ["two-depths", "three-depths", "every-depth"] as const satisfies CardPart[];

/** What of a rig stands on a card. */
export interface CardChoice {
  readonly depths: readonly CardDepth[];
  readonly parts: ReadonlySet<CardPart>;
}
