import { known } from "../core/lists.ts";
import type { SiteInput } from "./input.ts";

// Pages are kept without the hashes in the names of what they load, which are put in when a page is written.

/** Stands in the name of a file for its hash; nobody writes so. */
const mark = "-zz-hash-zz-";

/** The name of a file that has the mark in place of its hash, below the site. */
const marked = new RegExp(`((?:assets|data)/[^"\\s]*?)\\.${mark}\\.(\\w+)`, "g");

const made = new WeakMap<SiteInput, SiteInput>();

/** The same, with the mark in place of each hash. */
export function withoutHashes(input: SiteInput): SiteInput {
  if (!input.stamped) return input;
  const found = made.get(input) ?? {
    ...input,
    stamped: new Map(
      [...input.stamped.keys()].map((path) => [path, path.replace(/\.(?=\w+$)/, `.${mark}.`)]),
    ),
  };
  made.set(input, found);
  return found;
}

/** Plain paths of the files that have the mark in a page. */
export const loadedBy = (html: string): readonly string[] => [
  ...new Set([...html.matchAll(marked)].map(([, stem, ending]) => `site/${stem}.${ending}`)),
];

/** A page with the hashes in their places. */
export const withHashes = (html: string, { stamped = new Map() }: SiteInput): string =>
  html.replaceAll(marked, (_, stem, ending) =>
    known(stamped, `site/${stem}.${ending}`).slice("site/".length),
  );
