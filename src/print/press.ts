import type { Guide } from "../content/library.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { Fonts } from "../layout/fonts.ts";
import type { DocumentFacts } from "./pdf-metadata.ts";

/** What all printing needs, whatever is printed. */
export interface Press {
  readonly guide: Guide;
  readonly kit: DrawingKit;
  readonly fonts: Fonts;
  readonly facts: (title: string) => DocumentFacts;
}
