import type { Root } from "mdast";
import type { Printable } from "../../templates/pages/view.ts";
import type { Library, Prose } from "../content/library.ts";
import type { Finding } from "../core/finding.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { SolvedRig } from "../solve/solved.ts";

/** All that the pages are made from. */
export interface SiteInput {
  readonly library: Library;
  /** By rig id. */
  readonly solved: ReadonlyMap<string, SolvedRig>;
  readonly kit: DrawingKit;
  /** Style sheet, fonts and page scripts by file name, made when the tool is compiled. */
  readonly assets: ReadonlyMap<string, string | Uint8Array>;
  readonly printables: readonly Printable[];
  /** A text with its live figures put in. */
  readonly liveBody: (prose: Prose) => Root;
  /** What the core found, as a sentence. */
  readonly reason: (finding: Finding) => string;
}
