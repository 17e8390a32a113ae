import type { Root } from "mdast";
import type { ShownSession } from "../../templates/pages/sessions.tsx";
import type { Finding } from "../core/finding.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { Drawings, Films } from "../drawing/pictures.ts";
import type { ChoosingData } from "../model/choosing-data.ts";
import type { Library, MarkdownText } from "../model/library.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { Printable } from "../model/printable.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import type { SwimText } from "../model/swim.ts";
import type { RigTexts } from "../words/rig-texts.ts";
import type { TextPart, WaterText } from "../words/water-text.ts";

/** All that the pages are made from. */
export interface SiteInput {
  readonly library: Library;
  readonly drawings: Drawings;
  readonly films: Films;
  /**
   * Keeps what is drawn of something with the guide's kit, by all else that it is drawn from.
   *
   * @param without stands in for a drawing that has no room, where a page may go without
   */
  readonly kept: <T>(kind: string, from: unknown, draw: (kit: DrawingKit) => T, without: T) => T;
  /** Keeps what is made of a whole page, by all that it is made from besides the guide and its words. */
  readonly keptPage: <T>(kind: string, from: unknown, make: () => T) => T;
  /** Draws a page for what it lacks; one that lacked nothing, no more by as much as its drawings are drawn from. */
  readonly tried: (from: unknown, draw: () => void) => void;
  /** Photos and drawings of the guide's own, by name. */
  readonly images: ReadonlyMap<string, ReadyImage>;
  /** By rig id. */
  readonly solved: ReadonlyMap<string, SolvedRig>;
  readonly swims: readonly SwimText[];
  /** What rigs are chosen by, in a guide that has rules for it. */
  readonly choosing?: ChoosingData;
  readonly kit: DrawingKit;
  /** Style sheet, fonts and page scripts by file name, made when the tool is compiled. */
  readonly assets: ReadonlyMap<string, string | Uint8Array>;
  /** Code points of the signs that a font of the guide's own lends to ours, rising. */
  readonly lentSigns?: readonly number[];
  /** Names with their hash in them, by the plain paths of scripts and style sheet below the output folder. */
  readonly stamped?: ReadonlyMap<string, string>;
  readonly printables: readonly Printable[];
  /** Sessions that are shown, by their days. */
  readonly sessions: readonly ShownSession[];
  /** A text with its live figures put in. */
  readonly liveBody: (text: MarkdownText) => Root;
  /** How a rig is in the water, and where its feed goes in, as text. */
  readonly inWater: (rig: SolvedRig, depth: SolvedDepth) => WaterText | undefined;
  readonly feedPlaces: (rig: SolvedRig) => readonly TextPart[];
  /** What the core found, as a sentence. */
  readonly reason: (finding: Finding) => string;
  /** What is said of a rig in more than one place. */
  readonly rigTexts: RigTexts;
}
