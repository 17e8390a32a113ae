import { expect, test } from "vitest";
import type { Library } from "../../src/model/library.ts";
import { chosenWithin, inOrderOfNeed, type Keepable, roomAtOnce } from "../../src/site/kept-at-once.ts";
import type { Page } from "../../src/site/page.ts";
import { seeded } from "../support/seeded.ts";

const page = (path: string, kept?: Page["kept"], kind?: Page["kind"]): Page => ({
  path: `site/${path}.html`,
  title: path,
  description: path,
  ...(kept && { kept }),
  ...(kind && { kind }),
  body: () => "",
});

const rigsOf = (levels: Readonly<Record<string, string>>) =>
  ({ rigs: Object.entries(levels).map(([id, level]) => ({ id, level })) }) as unknown as Library;

const keepable = (path: string, bytes: number, files: Readonly<Record<string, number>> = {}): Keepable => ({
  path,
  bytes,
  files: new Map(Object.entries(files)),
});

test("what keeps from harm and finds a rig comes first, then what is looked up, then rigs from the easiest and lessons in turn", () => {
  const pages = [
    page("coaches"),
    page("plan", "once opened"),
    page("first-lesson", "in turn", "lesson"),
    page("second-lesson", "in turn", "lesson"),
    page("rigs/hard", "in turn", "rig"),
    page("rigs/easy", "in turn", "rig"),
    page("rigs/middling", "in turn", "rig"),
    page("knots", "at the bank"),
    page("safety", "always"),
  ];
  const library = rigsOf({ hard: "next", easy: "first", middling: "beginner" });
  expect(inOrderOfNeed(pages, library).map(({ title }) => title)).toEqual([
    "safety",
    "knots",
    "rigs/easy",
    "first-lesson",
    "rigs/middling",
    "second-lesson",
    "rigs/hard",
    "coaches",
    "plan",
  ]);
});

test("a page that has no room leaves it to the next, and what two pages share takes room once", () => {
  const pages = [
    keepable("a", 30, { photo: 60 }),
    keepable("b", 30, { photo: 60 }),
    keepable("large", 101),
    keepable("c", 80),
    keepable("d", 1),
    keepable("e", 800),
  ];
  const paths = (room: number) => chosenWithin(room, pages).map(({ path }) => path);
  expect(paths(1000)).toEqual(["a", "b", "c", "d"]);
  expect(paths(10_000)).toEqual(["a", "b", "large", "c", "d", "e"]);
});

test.each([20, 100, 1_000, 10_000])("of %i rigs a phone keeps no more than it has room for", (count) => {
  const random = seeded(count);
  const pages = Array.from({ length: count }, (_, at) =>
    keepable(`rig ${at}`, 40_000 + Math.floor(60_000 * random.next().value), { [`data ${at}`]: 3_000 }),
  );
  const chosen = chosenWithin(roomAtOnce, pages);
  const bytes = chosen.reduce((sum, one) => sum + one.bytes + 3_000, 0);
  expect(bytes).toBeLessThanOrEqual(roomAtOnce);
  // The room is used, too.
  expect(bytes).toBeGreaterThan(count === 20 ? 20 * 43_000 : 0.97 * roomAtOnce);
  if (count === 20) expect(chosen).toHaveLength(20);
});
