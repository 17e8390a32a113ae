import type { MovedPart } from "../core/depth/setting.ts";

/** A rig made up for one depth, as a card words it. */
export interface CardDepth {
  readonly depthMm: number;
  readonly depth: string;
  /** Float's lower eye, or stop knot, to hook. */
  readonly setAt: string;
  /** Missing where no shot hold the float. */
  readonly lock?: string;
  /** Shot on the line, counted. */
  readonly line: string;
  /** The same with their places. */
  readonly places: string;
  readonly tip: string;
}

/** Everything that a card can say of a rig, worded; a format takes what it has room for. */
export interface CardContent {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly float: string;
  /** What is moved on the line to set the depth. */
  readonly moved: MovedPart;
  readonly depths: readonly CardDepth[];
  readonly mainLine: string;
  readonly hookLength: string;
  readonly hook: string;
  readonly shot: string;
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

/** What a back may hold besides the name, the tip, the tackle, the rule on lead and the caution, which it must. */
export const backExtras = ["box", "tip-says", "feed", "publisher", "set-depth", "record-depth"] as const;
export type BackExtra = (typeof backExtras)[number];

/** For how many depths a back tells setting and shot; for none of them the front does, for the depth that it draws. */
export const backDepths = ["drawn-depth", "two-depths", "three-depths", "every-depth"] as const;
export type BackDepths = (typeof backDepths)[number];

/** Something that a back takes where it fits. */
export type BackPart = BackExtra | BackDepths;

/** What of a rig stands on the back of a card. */
export interface BackParts {
  readonly depths: readonly CardDepth[];
  /** Setting and shot left to the front, told without the places that the front gives, or with them. */
  readonly shot: "on the front" | "counted" | "placed";
  readonly extras: ReadonlySet<BackExtra>;
}
