import type { z } from "zod";
import type { Library } from "../model/library.ts";
import type { Place } from "../model/message.ts";
import type { Reading } from "./reading.ts";
import type { libraryKinds, librarySchema } from "./schema/guide-schema.ts";

type Kind = (typeof libraryKinds)[number];
type Choice = z.output<typeof librarySchema>;
type Content = Omit<Library, "leftOut" | "plans" | "shelves" | "sessions">;

/** Something of the library, and the words by which it can be chosen besides its name. */
interface OnShelf {
  readonly id: string;
  readonly tags: readonly string[];
}

const plain = (entries: readonly { readonly id: string }[]): OnShelf[] =>
  entries.map(({ id }) => ({ id, tags: [] }));

/** What there is to choose from, by folder. */
const shelves: { readonly [K in Kind]: (library: Content) => readonly OnShelf[] } = {
  lessons: ({ lessons }) => lessons.map(({ id, part }) => ({ id, tags: [part] })),
  rigs: ({ rigs }) => rigs.map(({ id, level, rig }) => ({ id, tags: [level, rig.water, rig.pattern.kind] })),
  floats: ({ floats }) => floats.map(({ id, float }) => ({ id, tags: [float.kind] })),
  baits: ({ baits }) => plain(baits.map(({ bait }) => bait)),
  knots: ({ knots }) => plain(knots),
  species: ({ species }) => plain(species),
  kits: ({ kits }) => plain(kits),
  pages: ({ pages }) => plain(pages),
};

/**
 * What a guide does not take from the library, as `rigs/stick-tapered`. What a rig of the guide is made of stays, chosen
 * or not: it would lead nowhere without.
 *
 * @param placeOf place of a choice, or of a name in it
 */
export function leftOutBy(
  choice: Choice,
  library: Content,
  placeOf: (path: readonly (string | number)[]) => Place,
  reading: Reading,
): ReadonlySet<string> {
  if (choice === "none") return new Set();
  const left = new Set<string>();
  for (const kind of Object.keys(shelves) as Kind[]) {
    const wanted = choice[kind];
    if (wanted === "all") continue;
    const lent = shelves[kind](library).filter(({ id }) => library.lent.has(`${kind}/${id}`));
    const names = wanted === "none" ? [] : wanted;
    const known = new Map(lent.flatMap(({ id, tags }) => [id, ...tags]).map((name) => [name, name]));
    for (const [at, name] of names.entries()) {
      reading.lookUp(known, name, `name or tag in the library's ${kind}`, placeOf([kind, at]));
    }
    const isWanted = ({ id, tags }: OnShelf) => [id, ...tags].some((name) => names.includes(name));
    for (const entry of lent) if (!isWanted(entry)) left.add(`${kind}/${entry.id}`);
  }
  for (const needed of madeOf(library, left)) left.delete(needed);
  return left;
}

/** Floats, baits and knots of the rigs that stay. */
function madeOf({ rigs }: Content, left: ReadonlySet<string>): readonly string[] {
  return rigs
    .filter(({ id }) => !left.has(`rigs/${id}`))
    .flatMap(({ rig }) => [
      `floats/${rig.float.id}`,
      `baits/${rig.bait.id}`,
      ...rig.knots.map(({ knot }) => `knots/${knot.id}`),
    ]);
}
