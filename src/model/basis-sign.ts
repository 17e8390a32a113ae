import type { Node } from "mdast";

/** A small sign beside a figure of a text: where it comes from, without a word in the sentence. */
export interface BasisSign extends Node {
  readonly type: "basisSign";
  readonly sign: string;
  /** What is read out in its place. */
  readonly spoken: string;
  /** Where the sign is explained, as a link in a text is written. */
  readonly url: string;
}

declare module "mdast" {
  interface RootContentMap {
    basisSign: BasisSign;
  }
  interface PhrasingContentMap {
    basisSign: BasisSign;
  }
}
