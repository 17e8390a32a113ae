import type { PdfFile } from "./pdf-file.ts";
import { pdfDate } from "./pdf-metadata.ts";
import { type PdfDict, PdfString } from "./pdf-values.ts";
import { srgbProfile } from "./srgb-profile.ts";

/** A file of text that a document carries. */
export interface Attachment {
  /** Signs of ASCII alone, such as `margin.json`. */
  readonly name: string;
  readonly mediaType: string;
  readonly text: string;
  /** What it is, in words. */
  readonly about: string;
}

/**
 * What a catalogue has for a document that is kept: what its greys and colours mean, and the files that it carries as the data
 * that its pages were made from. Sources: ISO 19005-3, sections 6.2.3 and 6.8; ISO 32000-1, sections 7.11.4 and 14.11.5.
 */
export function archiveEntries(file: PdfFile, attached: readonly Attachment[], date: string): PdfDict {
  const intent = {
    Type: "OutputIntent",
    S: "GTS_PDFA1",
    OutputConditionIdentifier: PdfString.ascii("sRGB"),
    Info: PdfString.ascii("sRGB"),
    DestOutputProfile: file.addPacked(srgbProfile(), { N: 3 }),
  };
  const carried = attached.map((one) => [PdfString.ascii(one.name), carriedFile(file, one, date)] as const);
  return {
    OutputIntents: [file.add(intent)],
    ...(carried.length > 0 && {
      AF: carried.map(([, ref]) => ref),
      Names: { EmbeddedFiles: { Names: carried.flat() } },
    }),
  };
}

function carriedFile(file: PdfFile, { name, mediaType, text, about }: Attachment, date: string) {
  const bytes = new TextEncoder().encode(text);
  const stream = file.addPacked(bytes, {
    Type: "EmbeddedFile",
    Subtype: mediaType,
    Params: { Size: bytes.length, ModDate: pdfDate(date) },
  });
  return file.add({
    Type: "Filespec",
    F: PdfString.ascii(name),
    UF: PdfString.text(name),
    Desc: PdfString.text(about),
    AFRelationship: "Data",
    EF: { F: stream, UF: stream },
  });
}
