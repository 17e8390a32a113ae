import type { Root } from "mdast";
import type { DrawingKit } from "../drawing/kit.ts";
import type { PictureSource } from "../drawing/pictures.ts";
import type { ReadyFont } from "../images/ready-font.ts";
import type { Keep } from "../model/kept.ts";
import type { Library, MarkdownText } from "../model/library.ts";
import type { Message } from "../model/message.ts";
import type { SolvedShelf } from "../model/shelf.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { SolvedSession } from "../model/solved-session.ts";
import type { SwimText } from "../model/swim.ts";
import type { SheetChoice } from "../print/card-files.ts";

/** Content with its sums done: all that pages, cards and data are made from. */
export interface Solved {
  /** What is published. */
  readonly library: Library;
  /** What texts draw and reckon from: what is left out of the guide, too. */
  readonly source: PictureSource;
  readonly rigs: readonly SolvedRig[];
  readonly shelves: readonly SolvedShelf[];
  readonly sessions: readonly SolvedSession[];
  /** Every text with its live figures put in. */
  readonly live: ReadonlyMap<Root, Root>;
  /** What is told of each swim. */
  readonly swims: readonly SwimText[];
  readonly kit: DrawingKit;
  /** Signs of a font of the guide's own, as pages load them; missing where none is needed. */
  readonly font?: ReadyFont;
}

/** A text of it with its live figures. */
export const liveBodyIn =
  ({ live }: Solved) =>
  ({ body }: MarkdownText): Root =>
    live.get(body) ?? body;

/** Content that is right by itself, left out or not, and how its words and figures are written. */
export type Read = Pick<Solved, "library" | "kit">;

/** What a build is told besides its content. */
export interface BuildSettings {
  /** Day the files are dated, `2026-11-20`. */
  readonly date: string;
  /** Style sheet, fonts and page scripts by file name, made when the tool is compiled. */
  readonly siteAssets: ReadonlyMap<string, string | Uint8Array>;
  /** Which cards go on the sheets, and how often; each once where nothing is asked for. */
  readonly sheets?: SheetChoice;
  /** Where what is drawn, laid out and painted is kept; nowhere where nothing is said. */
  readonly keep?: Keep;
  /** Sides of pocket cards that become pictures, too; those that a page leads to, where nothing is said. */
  readonly shownSides?: readonly ("front" | "back")[];
  /** Told what is found as things are laid out and stops nothing. */
  readonly tell?: (messages: readonly Message[]) => void;
  /** Makes what fits, and tells of what does not in place of stopping there. */
  readonly keepGoing?: boolean;
  /** What is made of it; all where nothing is said. */
  readonly parts?: readonly Part[];
}

/** What is built: the site with the cards that it offers, what is printed, the figures as data. */
export const buildParts = ["web", "print", "data"] as const;
type Part = (typeof buildParts)[number];
