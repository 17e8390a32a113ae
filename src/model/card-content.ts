/** A rig made up for one depth, as a card words it. */
export interface CardDepth {
  readonly depth: string;
  /** Float's lower eye, or stop knot, to hook. */
  readonly setFloatAt: string;
  /** Missing where no shot hold the float. */
  readonly lock?: string;
  readonly onLine: string;
  readonly tip: string;
}

/** Everything that a card can say of a rig, worded; a format takes what it has room for. */
export interface CardContent {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly float: string;
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
  readonly caution: string;
  readonly publisher: string;
  /** Page of the rig, for the QR code; missing without a site address. */
  readonly address?: string;
}
