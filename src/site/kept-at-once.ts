import { sitePaths } from "../model/addresses.ts";
import { type Library, levels } from "../model/library.ts";
import type { Page } from "./page.ts";

/** Room that a phone gives a guide before anybody asks for more [byte]. */
export const roomAtOnce = 5_000_000;
/** No page takes a larger share of it, unless it has to be kept. */
const largestShare = 0.1;

/** A page as a phone keeps it, with files that only some pages need. */
export interface Keepable {
  readonly path: string;
  readonly bytes: number;
  /** Bytes by path. */
  readonly files: ReadonlyMap<string, number>;
}

/** Pages in the order in which a phone needs them at the water; those that wait until they are opened come last. */
export function inOrderOfNeed(pages: readonly Page[], { rigs }: Library): readonly Page[] {
  const of = (kept: Page["kept"]) => pages.filter((page) => page.kept === kept);
  const level = new Map(rigs.map((entry) => [sitePaths.rig(entry.id), levels.indexOf(entry.level)]));
  const levelOf = ({ path }: Page) => level.get(path) ?? levels.length;
  const inTurn = of("in turn");
  const easiestFirst = inTurn.filter(({ kind }) => kind === "rig").sort((a, b) => levelOf(a) - levelOf(b));
  const others = inTurn.filter(({ kind }) => kind !== "rig");
  const turns = Array.from({ length: Math.max(easiestFirst.length, others.length) }, (_, turn) => turn);
  return [
    ...of("always"),
    ...of("at the bank"),
    ...turns.flatMap((turn) => [...easiestFirst.slice(turn, turn + 1), ...others.slice(turn, turn + 1)]),
    ...of(undefined),
    ...of("once opened"),
  ];
}

/** Those of the pages, the most needed first, that have room together with what goes with them. */
export function chosenWithin(room: number, pages: readonly Keepable[]): readonly Keepable[] {
  const files = new Set<string>();
  let left = room;
  return pages.filter((page) => {
    const more = [...page.files].filter(([path]) => !files.has(path));
    const bytes = more.reduce((sum, [, each]) => sum + each, page.bytes);
    if (bytes > Math.min(left, room * largestShare)) return false;
    left -= bytes;
    for (const [path] of more) files.add(path);
    return true;
  });
}
