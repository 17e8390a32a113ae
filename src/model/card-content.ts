import type { MovedPart } from "../core/depth/setting.ts";
import type { WaterKind } from "../core/water/water.ts";
import { levels, type RigEntry } from "./library.ts";

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

/** What a coach has written of a rig and its float. */
export interface CardNotes {
  /** The load as it is written on the float. */
  readonly marking?: string;
  readonly changeFirst?: readonly string[];
  /** From 1, the easiest. */
  readonly level?: number;
}

export function cardNotes(
  { changeFirst, changeFirstOnCards = changeFirst, level }: RigEntry,
  marking: string | undefined,
): CardNotes {
  return {
    changeFirst: changeFirstOnCards,
    level: levels.indexOf(level) + 1,
    ...(marking !== undefined && { marking }),
  };
}

/** Everything that a card can say of a rig, worded; a format takes what it has room for. */
export interface CardContent {
  readonly id: string;
  readonly title: string;
  readonly water: WaterKind;
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
  /** The same for depths between the told ones alone, with the shot of one of these. */
  readonly depthBetween?: string;
  /** The tip that shows in all depths; missing where they differ. */
  readonly tipShowing?: string;
  /** Whether what the float says when it is set right tells that tip, too. */
  readonly tipInSays: boolean;
  readonly metal: string;
  /** How many sizes of shot the rig has in its depths. */
  readonly shotSizes: number;
  /** Where the places of shot are measured from. */
  readonly placesFrom: string;
  /** What the ruler beside a drawing out of scale is for. */
  readonly ruler: string;
  /** How the float is held and from where it is measured, and how ranges of shot are spaced. */
  readonly madeUp: readonly string[];
  /** What the float says of its depth: too shallow, right, too deep. */
  readonly floatSays: readonly string[];
  readonly changeFirst?: string;
  /** What was found of the rig in its depths, each once. */
  readonly findings: readonly string[];
  readonly setDepth: string;
  /** Whether its hook is set off the bed that a plummet finds: then every card says how. */
  readonly isUpInWater: boolean;
  readonly recordDepth: string;
  /** What the signs on its edge and the ring in its corner stand for. */
  readonly signs: readonly string[];
  /** What the tip says of the load, and what to do about it. */
  readonly tipSays: string;
  readonly feed: string;
  /** What the rule on lead forbids of the rig's shot; missing where that is nothing. */
  readonly leadWarning?: string;
  readonly caution: string;
  readonly publisher: string;
  /** Where the guide's makers are found, and when they are open; missing where they do not say. */
  readonly findUs?: string;
  /** Page of the rig, for the QR code; missing without a site address. */
  readonly address?: string;
}

/**
 * Fields of `CardContent` that stand on every card, of every format, rig, paper and system of units, beside the drawing
 * and, for the depth that is drawn, all that `CardDepth` says.
 */
export const onEveryCard = [
  "title",
  "float",
  "tackle",
  "settingFor",
  "metal",
  "placesFrom",
  "leadWarning",
  "caution",
] as const;

/** Parts that say for how many depths a card tells setting and shot: each more than the one before. */
export const depthParts = ["two-depths", "three-depths", "every-depth"] as const;

/** The makers' own, which no card needs: it never takes the place of anything else. */
export const makersParts = ["find-us", "logo"] as const;

/**
 * What else every card has. A rig with more to tell than a format has room for goes without the last of them, and is
 * named for it.
 */
export const mustParts = [
  "true-tip",
  "findings",
  "two-depths",
  "float-says",
  "other-depth",
  "three-depths",
  "change-first",
  "write-in",
] as const;

/** What somebody needs who is alone at the water: cards to read have it in smaller type rather than not at all. */
export const adviceParts = [
  "set-depth",
  "made-up",
  "ruler",
  "depth-between",
  "every-depth",
  "tip-says",
  "feed",
] as const;

/** What a card takes besides where it fits, the most needed first. All that a format takes, each larger one takes too. */
const furtherParts = [
  "set-depth",
  "made-up",
  "ruler",
  "depth-between",
  "every-depth",
  "tip-says",
  "feed",
  "record-depth",
  "signs",
  "publisher",
  "code",
  "gauge",
  ...makersParts,
] as const;

export const cardParts = [...mustParts, ...furtherParts];
export type CardPart = (typeof cardParts)[number];

/** What of a rig stands on a card. */
export interface CardChoice {
  readonly depths: readonly CardDepth[];
  readonly parts: ReadonlySet<CardPart>;
}
