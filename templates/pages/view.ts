import type { Finding } from "../../src/core/finding.ts";
import type { Float } from "../../src/core/float/float.ts";
import type { Child } from "../../src/markup/jsx-runtime.ts";
import type { Library, MarkdownText } from "../../src/model/library.ts";
import type { Printable } from "../../src/model/printable.ts";
import type { SignPicture } from "../../src/model/signs.ts";
import type { SolvedDepth, SolvedRig } from "../../src/model/solved.ts";
import type { Figures } from "../../src/words/figures.ts";
import type { RigTexts } from "../../src/words/rig-texts.ts";
import type { TextPart, WaterText } from "../../src/words/water-text.ts";
import type { Say } from "./page-words.ts";

/** What parts of pages need to speak; the browser has it too. */
export interface Voice {
  readonly figures: Figures;
  readonly say: Say;
  /** What the core found, as a sentence. */
  readonly reason: (finding: Finding) => string;
  /** What is said of a rig in more than one place. */
  readonly rigTexts: RigTexts;
  /** The picture of a rig at one depth, as SVG. */
  readonly drawRig: (rig: SolvedRig, depth: SolvedDepth, idPrefix: string) => string;
  /** How it sinks, how its bite feels and how it hangs in a current, as text; none where nobody reckoned it. */
  readonly inWater: (rig: SolvedRig, depth: SolvedDepth) => WaterText | undefined;
  /** How its bait sinks, and how it hangs in a current, as SVG; none where there is nothing to show. */
  readonly drawSink: (rig: SolvedRig, depth: SolvedDepth, idPrefix: string) => string | undefined;
  readonly drawHang: (rig: SolvedRig, depth: SolvedDepth, idPrefix: string) => string | undefined;
}

/** What a page template is given besides its own subject. */
export interface View extends Voice {
  readonly library: Library;
  readonly solved: ReadonlyMap<string, SolvedRig>;
  readonly printables: readonly Printable[];
  /** Those of a rig. */
  readonly printablesOf: (rigId: string) => readonly Printable[];
  /** A rig without words, to tell it from others in a list, as SVG. */
  readonly drawSmallRig: (rig: SolvedRig, idPrefix: string) => string;
  /** Where its loose feed goes in; nothing in still water. */
  readonly feedPlaces: (rig: SolvedRig) => readonly TextPart[];
  /** A knot step by step, as SVG, with what to do at each step. */
  readonly drawKnot: (knotId: string) => readonly CaptionedPicture[];
  /** Floats side by side to one scale, as SVG. */
  readonly drawFloatChart: (floatIds: readonly string[]) => string;
  /** A float with its parts named, as SVG. */
  readonly drawFloat: (float: Float, idPrefix: string) => string;
  /** A kind of fish, and a bait on its hook, as SVG; none where the guide does not say what it looks like. */
  readonly drawFish: (fishId: string) => string | undefined;
  readonly drawBait: (baitId: string) => string | undefined;
  /** What a sign looks like, as SVG. */
  readonly drawSign: (picture: SignPicture, sign: string) => string;
  /** Path of this page below the output folder. */
  readonly path: string;
  readonly phone: KeptOnPhone;
  /** What stands for the guide in tabs of browsers. */
  readonly icon: { readonly path: string; readonly type: string };
  /** The mark of the guide's makers. */
  readonly logo?: { readonly path: string; readonly widthPx: number; readonly heightPx: number };
  /** Colour of the browser's own bar around the page. */
  readonly themeColour: string;
  /** Where a file below the output folder is found once the site is served; none where nobody knows. */
  readonly address: (target: string) => string | undefined;
  /** Address of a file below the output folder, with an anchor or not, as seen from this page. */
  readonly href: (target: string) => string;
  /** Markdown with its live figures as an element tree; `level` is the heading level its first headings get. */
  readonly markdown: (text: MarkdownText, options?: { level?: number; idPrefix?: string }) => Child;
}

/** What a phone keeps of the guide without being asked. */
export interface KeptOnPhone {
  /** Room that all of it takes [byte]. */
  readonly bytes: number;
  /** Room that a page takes with all that goes with it [byte]. */
  readonly bytesOf: (path: string) => number;
  readonly isAtOnce: (path: string) => boolean;
}

/** Where a page is made alone, nobody knows. */
export const nothingKept: KeptOnPhone = { bytes: 0, bytesOf: () => 0, isAtOnce: () => true };

/** A picture as SVG with what stands below it. */
export interface CaptionedPicture {
  readonly svg: string;
  readonly caption?: string;
}

/** A file to print by its path below the site; none where it was not made. */
export const printableAt = ({ printables }: View, sitePath: string): Printable | undefined =>
  printables.find(({ path }) => path === `site/${sitePath}`);

/** Whether the guide has a page on safety, which menu and notes lead to. */
export const hasSafety = ({ library }: View) => library.pages.some(({ id }) => id === "safety");

/** Places in the main menu; a page outside them has none. */
export const sections = ["lessons", "rigs", "floats", "safety", "search"] as const;
export type Section = (typeof sections)[number];
