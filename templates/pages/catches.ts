import type { Library, RigEntry } from "../../src/model/library.ts";

/** Kinds of fish that a rig is for, by the names of the guide's list of fish; one that is not on it keeps its own. */
export function kindsCaught({ species }: Pick<Library, "species">, { catches }: RigEntry): string[] {
  const kinds = catches.map((name) => {
    const known = species.find(({ title, also }) =>
      [title, ...also].some((one) => one.toLowerCase() === name.toLowerCase()),
    );
    return known?.title ?? name;
  });
  return [...new Set(kinds)];
}
