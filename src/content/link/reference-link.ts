import type { z } from "zod";
import { termId } from "../../model/addresses.ts";
import type { Library, Species, Term, Trouble } from "../../model/library.ts";
import { parseNotes } from "../markdown-source.ts";
import { folded } from "../names.ts";
import type { Read, Reading } from "../reading.ts";
import type {
  changesSchema,
  glossarySchema,
  speciesSchema,
  troublesSchema,
} from "../schema/reference-schema.ts";
import { fishLooks } from "./looks-link.ts";

export function speciesOf(
  { id, source, value, yaml }: Read<z.output<typeof speciesSchema>>,
  { keep }: Reading,
): Species {
  return {
    id,
    path: source.file,
    title: value.title,
    also: value.also,
    asks: value.asks,
    ...(value.looks && { looks: fishLooks(value.looks) }),
    notes: parseNotes(value.notes, yaml.placeOf(["notes"]), keep),
  };
}

/** News, the latest first. */
export function changesOf(read: Read<z.output<typeof changesSchema>> | undefined): Library["changes"] {
  if (!read) return [];
  return read.value
    .map((change, at) => ({ ...change, place: read.yaml.placeOf([at, "page"]) }))
    .sort((a, b) => (a.date < b.date ? 1 : -1));
}

/** The words of the glossary; two that come out at one anchor are an error at the second. */
export function termsOf(read: Read<z.output<typeof glossarySchema>> | undefined, reading: Reading): Term[] {
  if (!read) return [];
  const anchors = new Set<string>();
  return read.value.map((term, at) => {
    const anchor = folded(termId(term.term));
    const place = read.yaml.placeOf([at]);
    if (anchors.has(anchor)) reading.error(place, "duplicate-name", { found: term.term });
    anchors.add(anchor);
    return { ...term, place };
  });
}

export function troublesOf(read: Read<z.output<typeof troublesSchema>> | undefined): Trouble[] {
  return (
    read?.value.map(({ sign, when, water, shows, causes, do: remedies }, at) => ({
      place: read.yaml.placeOf([at]),
      sign,
      ...(when && { when }),
      water,
      ...(shows && { shows }),
      causes,
      remedies,
    })) ?? []
  );
}
