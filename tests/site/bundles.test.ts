import { gzipSync } from "node:zlib";
import { beforeAll, expect, test } from "vitest";
import { makeAnew } from "../../src/model/kept.ts";
import { withCardFaces } from "../../src/print/card-faces.ts";
import { shippedLibrary } from "../support/shipped-library.ts";
import { siteAssets } from "../support/site-assets.ts";

let assets: Map<string, string | Uint8Array>;
beforeAll(async () => {
  assets = await siteAssets();
});

/** Ceilings a little above what each has grown to, so that a new dependency is noticed. */
test.each([
  ["page.js", 1_000],
  ["water.js", 15_000],
  ["on-this-phone.js", 3_500],
  ["filters.js", 14_500],
  ["rig.js", 4_500],
  ["signs.js", 2_500],
  ["soundings.js", 7_500],
  ["choose.js", 40_000],
  ["film.js", 34_500],
  ["try.js", 144_000],
  ["search.js", 25_000],
  ["service-worker.js", 3_200],
  ["fit.js", 124_500],
  ["sums-worker.js", 87_000],
  ["card.js", 142_500],
  ["site.css", 20_000],
  ["plex-regular.woff", 22_000],
  ["plex-bold.woff", 22_000],
])("%s is smaller than %i bytes", (name, ceiling) => {
  expect(Buffer.byteLength(assets.get(name)!)).toBeLessThan(ceiling);
});

test("the player of films is at most 15 kB on the way", () => {
  expect(gzipSync(assets.get("film.js")!).length).toBeLessThan(15_000);
});

test("page scripts hold nothing of the command line's tools and open no door to other hosts", () => {
  for (const [name, content] of assets) {
    if (!name.endsWith(".js")) continue;
    for (const word of ['"node:', "zod", "eval(", "new Function", "https://", "import("]) {
      expect(String(content).includes(word), `${word} in ${name}`).toBe(false);
    }
  }
});

test("no script compiles a program, which pages have no leave to do", () => {
  for (const [name, content] of assets) {
    if (!name.endsWith(".js")) continue;
    expect(String(content), name).not.toMatch(/AGFzbQ|WebAssembly\.(?!RuntimeError)/);
  }
});

test("what a card needs beyond the page's own scripts is at most 350 kB on the way", () => {
  const script = withCardFaces(assets, shippedLibrary, makeAnew).get("card.js")!;
  expect(gzipSync(script).length).toBeLessThan(350_000);
  // As it has grown to, so that what makes it larger is noticed.
  expect(gzipSync(script).length).toBeLessThan(103_000);
});
