import type { Guide } from "./library.ts";

/** Where the guide's makers are found, and when they are open; nothing where they do not say. */
export function linesToFindUs({ visit }: Pick<Guide, "visit">): readonly string[] {
  return visit ? [visit.address, ...visit.hours] : [];
}
