import { cardSuffixes, handoutSizes, printPaths, sitePaths, turningSuffixes } from "./addresses.ts";

interface PagePlace {
  readonly page: string;
  /** Anchor of what a file is about, where it has no page of its own. */
  readonly entry?: string;
}

/** Page that shows a file, by its folder of the content. */
export const pagePlaces: ReadonlyMap<string, (id: string) => PagePlace> = new Map([
  ["rigs", (id) => ({ page: sitePaths.rig(id) })],
  ["lessons", (id) => ({ page: sitePaths.lesson(id) })],
  ["plans", (id) => ({ page: sitePaths.plan(id) })],
  ["swims", (id) => ({ page: sitePaths.swim(id) })],
  ["sessions", (id) => ({ page: sitePaths.session(id) })],
  ["pages", (id) => ({ page: sitePaths.page(id) })],
  ["floats", (id) => ({ page: sitePaths.floats, entry: id })],
  ["shot", (id) => ({ page: sitePaths.shot, entry: id })],
  ["tubs", (id) => ({ page: sitePaths.shot, entry: `tub-${id}` })],
  ["baits", (id) => ({ page: sitePaths.baits, entry: id })],
  ["knots", (id) => ({ page: sitePaths.knots, entry: id })],
  ["species", (id) => ({ page: sitePaths.fish, entry: id })],
]);

const cardFormats = Object.keys(cardSuffixes) as (keyof typeof cardSuffixes)[];
const turnings = Object.keys(turningSuffixes) as (keyof typeof turningSuffixes)[];

const printed: ReadonlyMap<string, (id: string) => readonly string[]> = new Map([
  ["rigs", (id) => [...cardFormats.map((format) => printPaths.card(id, format)), printPaths.strip(id)]],
  ["plans", (id) => [printPaths.plan(id)]],
  ["swims", (id) => [printPaths.swim(id)]],
  ["sessions", (id) => [printPaths.session(id)]],
  ["shelves", (id) => [printPaths.shelf(id)]],
  [
    "lessons",
    (id) =>
      Object.values(handoutSizes).flatMap((size) => [
        printPaths.handout(id, size),
        printPaths.handout(id, `${size}-to-fold`),
      ]),
  ],
]);

/** Every address that is made of a file of the content, by its folder and its name. */
export function addressesOf(folder: string, id: string): readonly string[] {
  const shown = pagePlaces.get(folder)?.(id);
  const page = shown?.entry === undefined ? shown?.page : `${shown.page}#${shown.entry}`;
  return [...(page === undefined ? [] : [page]), ...(printed.get(folder)?.(id) ?? [])];
}

/** Anchors of the lists that belong to no entry. */
const ownAnchors = [
  sitePaths.floats,
  sitePaths.shot,
  sitePaths.baits,
  sitePaths.knots,
  sitePaths.fish,
].flatMap((page) => ["main", "side-by-side", "metals"].map((anchor) => `${page}#${anchor}`));

/** Addresses of the guide's own, which no file of the content may take. The safety page is the content's. */
export const ownAddresses: readonly string[] = [
  ...Object.values(sitePaths).filter((path) => typeof path === "string" && path !== sitePaths.safety),
  ...Object.values(printPaths).filter((path) => typeof path === "string"),
  ...cardFormats.flatMap((format) => turnings.map((turning) => printPaths.sheet(format, turning))),
  ...ownAnchors,
] as readonly string[];
