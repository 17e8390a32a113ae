import type { Root } from "mdast";
import type { Printable } from "../../templates/pages/view.ts";
import type { Library, Prose } from "../content/library.ts";
import type { MeasureText } from "../drawing/model.ts";
import type { Figures } from "../report/figures.ts";
import type { Words } from "../report/words.ts";
import type { SolvedRig } from "../solve/solved.ts";

/** A change worth telling readers of the feed. */
export interface SiteChange {
  /** ISO date. */
  readonly date: string;
  readonly title: string;
  readonly summary: string;
  /** Page below the output folder. */
  readonly path: string;
}

/** All that the pages are made from. */
export interface SiteInput {
  readonly library: Library;
  /** By rig id. */
  readonly solved: ReadonlyMap<string, SolvedRig>;
  readonly kit: { readonly words: Words; readonly figures: Figures; readonly measure: MeasureText };
  /** Style sheet, fonts and page scripts by file name, made when the tool is compiled. */
  readonly assets: ReadonlyMap<string, string | Uint8Array>;
  readonly printables: readonly Printable[];
  readonly changes?: readonly SiteChange[];
  /** Puts live figures into a lesson or page. */
  readonly expandDirectives?: (prose: Prose) => Root;
}
