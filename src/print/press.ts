import type { DrawingKit } from "../drawing/kit.ts";
import type { FileFonts } from "../layout/font-file.ts";
import type { InOrder } from "../model/in-order.ts";
import type { Keep } from "../model/kept.ts";
import type { RasterImage } from "../model/own-image.ts";
import type { GuideOffPages } from "../words/off-pages.ts";
import type { DocumentFacts } from "./pdf/pdf-metadata.ts";

/** What all printing needs, whatever is printed. */
export interface Press {
  readonly guide: GuideOffPages;
  readonly kit: DrawingKit;
  readonly fonts: FileFonts;
  /** The mark of the guide's makers. */
  readonly logo?: RasterImage;
  readonly facts: (title: string) => DocumentFacts;
  readonly keep: Keep;
  /** In which order texts, cards and shelves are laid out; what comes of them stands in their own. */
  readonly inOrder: InOrder;
  /** Keeps what is painted of parts of paper, the last ones at hand: sheets paint each card again and again. */
  readonly parts: Keep;
  /** Keeps the pictures of texts, the last ones at hand: a text is laid out several times, and looks at them each time. */
  readonly pictures: Keep;
  /** Keeps the marks of what is laid out, the last ones at hand: they take some 300 kB for the cards of a rig, as much for a text. */
  readonly marks: Keep;
  /** Stands for kit, fonts, mark and where the guide's makers are found: with no more of the guide texts are laid out, so that they stay under another title. */
  readonly textsFrom: string;
  /** Stands for all of this, where what is printed is kept. */
  readonly from: string;
}
