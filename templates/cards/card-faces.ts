import type { Element } from "../../src/markup/jsx-runtime.ts";
import type { BackParts, CardContent } from "../../src/model/card-content.ts";
import type { Words } from "../../src/words/words.ts";
import type { Picture } from "./front.tsx";

/** A code that opens the rig's page; its size has its quiet zone in it. */
export interface CardCode extends Picture {
  readonly sizeMm: number;
  readonly quietMm: number;
}

export interface CardBackProps {
  readonly card: CardContent;
  readonly parts: BackParts;
  readonly words: Words;
  /** Where the card says where its page is. */
  readonly code?: CardCode;
}

/** How a format's two sides are put on paper. */
export interface CardFaces {
  readonly front: (card: CardContent, picture: Picture) => Element;
  readonly back: (props: CardBackProps) => Element;
}
