import type { z } from "zod";
import type { Place } from "../model/message.ts";
import type { Read, Reading, ReadProse } from "./reading.ts";
import type { lessonSchema } from "./schema/rig-schema.ts";
import type { hooksSchema } from "./schema/tackle-schema.ts";

/**
 * An entry of a list that is there before it is an error at its second place.
 *
 * @param entries as they are told from one another
 * @param found what is said to stand there twice
 */
export function eachOnce(
  reading: Reading,
  entries: readonly (string | number)[],
  placeOf: (at: number) => Place,
  found: (at: number) => string = (at) => String(entries[at]),
): void {
  for (const [at, entry] of entries.entries()) {
    if (entries.indexOf(entry) < at) reading.error(placeOf(at), "duplicate-name", { found: found(at) });
  }
}

/** A hook that is listed again is an error at its second place. */
export function noHookTwice({ value, yaml }: Read<z.output<typeof hooksSchema>>, reading: Reading): void {
  const sizes = value.map(({ size }) => size);
  eachOnce(reading, sizes, (at) => yaml.placeOf([at, "size"]));
}

/** Two lessons of the guide's own that have one place in the course. */
export function noOrderTwice(
  lessons: readonly ReadProse<z.output<typeof lessonSchema>>[],
  reading: Reading,
): void {
  const own = lessons.filter(({ source }) => !source.fromLibrary);
  const free = Math.max(0, ...own.map(({ value }) => value.order)) + 1;
  for (const [at, { value, yaml }] of own.entries()) {
    const { order } = value;
    const other = own.slice(0, at).find((before) => before.value.order === order);
    if (other) reading.error(yaml.placeOf(["order"]), "order-taken", { order, by: other.source.file, free });
  }
}
