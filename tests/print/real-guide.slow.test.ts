import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { disk } from "../../src/cli/disk.ts";
import { carriedFiles } from "./archive-file.ts";
import { archiveBreaks } from "./archive-rules.ts";
import { uaBreaks } from "./pdf-ua-rules.ts";
import { rawPdf } from "./raw-pdf.ts";
import { elementsOf } from "./ua/rule.ts";

const pdfs = new Map<string, Uint8Array>();
const data = new Map<string, string>();

beforeAll(async () => {
  const { value } = await solveContent(disk, ["content"]);
  const settings = { date: "2026-11-20", siteAssets: new Map() };
  for await (const { path, content } of outputFiles(value!, settings)) {
    if (path.endsWith(".pdf") && !path.startsWith("site/")) pdfs.set(path, content as Uint8Array);
    if (path.startsWith("data/rigs/")) data.set(path, content as string);
  }
});

test("every file of the shipped guide keeps the rules of PDF/UA-1 that a program can check", async () => {
  expect(pdfs.size).toBeGreaterThan(100);
  for (const [path, bytes] of pdfs) {
    const pdf = await rawPdf(bytes);
    const claims = pdf.xmp.includes("<pdfuaid:part>");
    expect({ path, claims }).toEqual({ path, claims: true });
    if (claims) expect({ path, breaks: uaBreaks(pdf) }).toEqual({ path, breaks: [] });
  }
});

test("every file of the shipped guide keeps the rules of PDF/A-3a that a program can check", async () => {
  for (const [path, bytes] of pdfs) {
    expect({ path, breaks: await archiveBreaks(bytes) }).toEqual({ path, breaks: [] });
  }
});

test("every card of a rig carries the very data that the guide has of it, and is at most 60 kB with it", async () => {
  const cards = [...pdfs].filter(([path]) => path.startsWith("cards/") && !path.includes("/sheet"));
  expect(cards.length).toBeGreaterThan(4 * data.size - 1);
  for (const [path, bytes] of cards) {
    const [[name, text], ...others] = [...(await carriedFiles(bytes))] as [[string, string]];
    expect({ path, name, others }).toEqual({ path, name: expect.stringMatching(/\.json$/), others: [] });
    expect(path.startsWith(`cards/${name.slice(0, -".json".length)}`)).toBe(true);
    expect(text === data.get(`data/rigs/${name}`), path).toBe(true);
    expect(bytes.length, path).toBeLessThan(60_000);
  }
});

test("the booklet links its lessons to each other", async () => {
  const pdf = await rawPdf(pdfs.get("handouts/booklet.pdf")!);
  const links = pdf.pages.flatMap(({ annotations }) => annotations);
  const pages = new Set(pdf.pages.map(({ ref }) => ref));
  expect(links.length).toBeGreaterThan(50);
  for (const { target, address } of links) expect(address !== undefined || pages.has(target!)).toBe(true);
  expect(elementsOf(pdf).filter(({ type }) => type === "Link").length).toBeGreaterThan(50);
});

const qpdf = spawnSync("qpdf", ["--version"]).error === undefined;

test.skipIf(!qpdf)("qpdf finds no fault in any of them", () => {
  const folder = mkdtempSync(join(tmpdir(), "guide-"));
  try {
    const input = join(folder, "in.pdf");
    for (const [path, bytes] of pdfs) {
      writeFileSync(input, bytes);
      const { status, stderr } = spawnSync("qpdf", ["--check", input], { encoding: "utf8" });
      expect({ path, status, stderr }).toEqual({ path, status: 0, stderr: "" });
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
