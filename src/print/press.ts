import type { DrawingKit } from "../drawing/kit.ts";
import type { Fonts } from "../layout/fonts.ts";
import type { Guide } from "../model/library.ts";
import type { DocumentFacts } from "./pdf/pdf-metadata.ts";

/** What all printing needs, whatever is printed. */
export interface Press {
  readonly guide: Guide;
  readonly kit: DrawingKit;
  readonly fonts: Fonts;
  readonly facts: (title: string) => DocumentFacts;
}
