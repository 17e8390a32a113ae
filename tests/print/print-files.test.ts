import { extname } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { beforeAll, describe, expect, test } from "vitest";
import { DoesNotFitError } from "../../src/print/does-not-fit.ts";
import { printFiles } from "../../src/print/print-files.ts";
import { sampleAvon, sampleStick, sampleWaggler } from "../support/sample-rig.ts";
import { rawPdf } from "./raw-pdf.ts";
import { readPdf } from "./read-pdf.ts";
import { printed, sampleInput } from "./sample-print.ts";

const id = sampleWaggler.rig.id;
let files: Map<string, Uint8Array>;

beforeAll(async () => {
  files = await printed(sampleInput({}, [sampleWaggler]));
}, 120_000);

describe("files", () => {
  test("a card of each format, and sheets of each format", () => {
    const paths = [...files.keys()];
    for (const suffix of ["", "-a7", "-a6", "-a5"]) {
      expect(paths).toContain(`cards/${id}${suffix}.pdf`);
      expect(paths).toContain(`cards/sheet${suffix}.pdf`);
      expect(paths).toContain(`cards/sheet${suffix}-short-edge.pdf`);
    }
    for (const suffix of ["", "-a7", "-a6"]) expect(paths).toContain(`cards/sheet${suffix}-fold.pdf`);
    expect(new Set(paths).size).toBe(paths.length);
  });

  test("the front of the pocket card is a picture too, where pages have an address to show it by", async () => {
    const pictures = (all: ReadonlyMap<string, unknown>) =>
      [...all.keys()].filter((path) => /png$/.test(path));
    expect(pictures(files)).toEqual([]);
    const site = { siteAddress: "https://makebelieve.example/" };
    const shown = await printed(sampleInput(site, [sampleWaggler]));
    expect(pictures(shown)).toEqual([`site/previews/${id}-front.png`]);
  }, 120_000);

  test("are PDF, PNG and SVG as they are called", () => {
    const heads = { ".pdf": "%PDF", ".png": "\x89PNG", ".svg": "<svg" } as const;
    for (const [path, bytes] of files) {
      const begins = new TextDecoder("latin1").decode(bytes.subarray(0, 4));
      expect(begins, path).toBe(heads[extname(path) as keyof typeof heads]);
    }
  });

  test("each to print has its first page as a small picture of its shape, the right way up", async () => {
    let seen = 0;
    for await (const { path, printable } of printFiles(sampleInput({}, [sampleWaggler]))) {
      if (!printable) continue;
      seen++;
      const small = printable.smallPage!;
      const svg = new TextDecoder().decode(files.get(small.path));
      const { width, height } = new Resvg(svg, { font: { loadSystemFonts: false } });
      expect(small.widthMm / small.heightMm, path).toBeCloseTo(width / height, 1);
      const { pages } = await readPdf(files.get(path)!);
      const [page] = pages;
      const [left = 0, bottom = 0, right = 0, top = 0] = page!.box;
      const ratio = (right - left) / (top - bottom);
      expect(width / height, path).toBeCloseTo(page!.turn % 180 === 0 ? ratio : 1 / ratio, 1);
      // Its words are those of the page, and nothing is fetched for it.
      const [, word] = />[^<]*?(\p{L}{5,})[^<]*<\/text>/u.exec(svg)!;
      expect(pages.map(({ text }) => text).join(" "), path).toContain(word);
      expect(svg, path).not.toMatch(/href|<image/);
      expect(svg.length, path).toBeLessThan(180_000);
    }
    expect(seen).toBeGreaterThan(10);
  }, 120_000);

  test("a second build gives the same bytes", async () => {
    const again = await printed(sampleInput({}, [sampleWaggler]));
    expect([...again.keys()]).toEqual([...files.keys()]);
    for (const [path, bytes] of again) expect(Buffer.compare(bytes, files.get(path)!), path).toBe(0);
  }, 120_000);
});

test("sheets take the rigs and copies asked for", async () => {
  const input = {
    ...sampleInput({}, [sampleWaggler, sampleStick, sampleAvon]),
    sheets: { copies: 2, rigs: [sampleStick.rig.id] },
  };
  const titles = (await rawPdf((await printed(input)).get("cards/sheet.pdf")!)).root.kids;
  const sections = titles.filter(({ type }) => type === "Sect");
  expect(sections).toHaveLength(4);
}, 120_000);

test("a rig that fits no card stops everything before the first file", async () => {
  const title = "Straightwagglerstrungoutforstillwaterwithoutanyspacesatall";
  const rig = { ...sampleWaggler, rig: { ...sampleWaggler.rig, title } };
  const seen: string[] = [];
  const failing = printed(sampleInput({}, [sampleStick, rig])).then((all) => seen.push(...all.keys()));
  await expect(failing).rejects.toBeInstanceOf(DoesNotFitError);
  expect(seen).toEqual([]);
}, 60_000);
