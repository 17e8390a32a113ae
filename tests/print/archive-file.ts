import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFName,
  type PDFObject,
  PDFRawStream,
} from "@cantoo/pdf-lib";
import { entry, type RawPdf, rawPdf } from "./raw-pdf.ts";

/** A file as its bytes and as what stands in them. */
export interface Kept {
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly pdf: RawPdf;
  readonly objects: readonly PDFObject[];
  readonly dicts: readonly PDFDict[];
}

/** Every value of a file, those within others too. */
function within(object: PDFObject): PDFObject[] {
  if (object instanceof PDFRawStream) return [object, ...within(object.dict)];
  if (object instanceof PDFDict)
    return [object, ...object.entries().flatMap(([name, value]) => [name, ...within(value)])];
  if (object instanceof PDFArray) return [object, ...object.asArray().flatMap(within)];
  return [object];
}

export async function kept(bytes: Uint8Array): Promise<Kept> {
  const pdf = await rawPdf(bytes);
  const objects = pdf.catalog.context.enumerateIndirectObjects().flatMap(([, object]) => within(object));
  const text = new TextDecoder("latin1").decode(bytes);
  return { bytes, text, pdf, objects, dicts: objects.filter((object) => object instanceof PDFDict) };
}

export const has = (dict: PDFDict | undefined, ...keys: string[]) =>
  keys.some((key) => dict?.has(PDFName.of(key)) ?? false);
export const dictOf = (from: PDFDict | undefined, key: string) => from?.lookupMaybe(PDFName.of(key), PDFDict);
export const listOf = (from: PDFDict | undefined, key: string) =>
  from?.lookupMaybe(PDFName.of(key), PDFArray)?.asArray() ?? [];
const bytesOf = (stream: PDFRawStream) => decodePDFRawStream(stream).decode();

/** The profile of the output intent. */
export function profileOf({
  pdf,
}: Kept): { readonly stream: PDFRawStream; readonly bytes: Uint8Array } | undefined {
  const intents = pdf.catalog.lookupMaybe(PDFName.of("OutputIntents"), PDFArray);
  const stream = intents?.lookup(0, PDFDict).lookup(PDFName.of("DestOutputProfile"));
  return stream instanceof PDFRawStream ? { stream, bytes: bytesOf(stream) } : undefined;
}

/** File specifications, by the name that the catalogue has for them. */
export function carriedBy({ pdf }: Kept): readonly PDFDict[] {
  const names = dictOf(dictOf(pdf.catalog, "Names"), "EmbeddedFiles")?.lookup(PDFName.of("Names"), PDFArray);
  return Array.from({ length: (names?.size() ?? 0) / 2 }, (_, i) => names!.lookup(2 * i + 1, PDFDict));
}

export function carriedStream(spec: PDFDict): PDFRawStream | undefined {
  const stream = dictOf(spec, "EF")?.lookup(PDFName.of("F"));
  return stream instanceof PDFRawStream ? stream : undefined;
}

/** The files that a document carries, by name. */
export async function carriedFiles(bytes: Uint8Array): Promise<Map<string, string>> {
  return new Map(
    carriedBy(await kept(bytes)).map((spec) => [
      entry(spec, "F")!,
      new TextDecoder().decode(bytesOf(carriedStream(spec)!)),
    ]),
  );
}
