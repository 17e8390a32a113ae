import type { Species } from "../../model/library.ts";
import type { Place } from "../../model/message.ts";
import type { Reading } from "../reading.ts";

/** Whether the guide knows a fish by a name; told where it does not. */
export function knownFish(
  name: string,
  species: readonly Species[],
  place: Place,
  reading: Reading,
): boolean {
  // What a fish is called stands within its file, which may be one with an error.
  if (reading.hasErrorIn("species")) return true;
  const names = new Map(
    species.flatMap(({ title, also }) => [title, ...also].map((one) => [one.toLowerCase(), one])),
  );
  return reading.lookUp(names, name.toLowerCase(), "fish", place) !== undefined;
}
