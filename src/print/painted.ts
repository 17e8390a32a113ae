import type { PaperSide } from "../layout/paper.ts";
import { type Fingerprint, fingerprintOf } from "../model/fingerprint.ts";
import { type Keep, once } from "../model/kept.ts";
import { paintPdf } from "./pdf/pdf.ts";
import { type Pack, packed } from "./pdf/pdf-file.ts";
import { sideFrom } from "./pdf/pdf-side.ts";
import type { Press } from "./press.ts";
import type { PaintedFile, Shown } from "./printed-file.ts";
import { smallPageSvg } from "./small-page.ts";

/** A document painted, and the side of it that lists show. */
export interface Painted {
  readonly content: Uint8Array;
  readonly shows: Shown;
}

/**
 * Sides of paper as a document; `shown` is the one that lists show. With `sides` each side is kept by what it is made from, and
 * what is packed besides, such as tags and fonts, by itself: where one side changed, most of the others' tags are as they were.
 */
export function painted(
  sides: readonly PaperSide[],
  shown: PaperSide,
  facts: Omit<Parameters<typeof paintPdf>[1], "pack">,
  { fonts, parts }: Pick<Press, "fonts" | "parts">,
): Painted {
  const { widthMm, heightMm } = shown;
  const from = sideFrom(shown);
  const small = () => smallPageSvg(shown);
  const { sides: keep } = facts;
  return {
    content: paintPdf(sides, { ...facts, parts, ...(keep && { pack: keptPack(keep) }) }, fonts),
    shows: { svg: from && keep ? keep("small page", from, small) : small(), widthMm, heightMm },
  };
}

const keptPack =
  (keep: Keep): Pack =>
  (bytes) =>
    keep("packed", fingerprintOf(bytes).sha256, () => packed(bytes));

/** What is known of a document without reading it. */
interface ToldOfDocument {
  readonly known: Fingerprint;
  readonly shows: { readonly known: Fingerprint; readonly widthMm: number; readonly heightMm: number };
}

export function toldOfDocument({ content, shows }: Painted): ToldOfDocument {
  const { svg, widthMm, heightMm } = shows;
  return { known: fingerprintOf(content), shows: { known: fingerprintOf(svg), widthMm, heightMm } };
}

type About = Pick<PaintedFile, "path" | "printable">;

/** A document as a file, which is read, or painted, once somebody asks what is in it. */
export function documentFile(
  about: About,
  { known, shows }: ToldOfDocument,
  document: () => Painted,
): PaintedFile {
  return {
    ...about,
    known,
    get content() {
      return document().content;
    },
    shows: {
      ...shows,
      get svg() {
        return document().shows.svg;
      },
    },
  };
}

/** A document that is painted once for all that it is made from. */
export function paintedOnce(
  about: About,
  kind: string,
  from: string,
  paint: () => Painted,
  { keep }: Pick<Press, "keep">,
): PaintedFile {
  // The file is soon written and forgotten, and the document with it.
  const document = once(() => keep(kind, from, paint));
  return documentFile(
    about,
    keep(`${kind}, told`, from, () => toldOfDocument(document())),
    document,
  );
}
