import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../src/layout/png.ts";
import { cardFormats } from "../../src/print/cards/card-formats.ts";
import { cardSides } from "../../src/print/cards/card-sides.ts";
import { layOutCard } from "../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../src/print/pdf/pdf.ts";
import { startBrowser } from "../support/browser.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleAvon, sampleWaggler } from "../support/sample-rig.ts";
import { type Dots, difference, dotsOf } from "./raster.ts";
import { sampleGuide } from "./sample-print.ts";

/** Whole dots to a tenth of a millimetre, so that both painters put their grid in the same place. */
const dpi = 508;
/** Letters cover at least this share of a card, or nothing was compared. */
const inkMin = 0.02;

const fonts = nodeFonts();
const rigs = [sampleWaggler, sampleAvon];
const printed: { id: string; pdf: Uint8Array; previews: readonly Dots[] }[] = [];

beforeAll(async () => {
  for (const solved of rigs) {
    const faces = layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, fonts);
    const { id, title } = solved.rig;
    const facts = { title, author: "Makebelieve", language: "en", date: "2026-05-01" };
    const previews = [faces.front, faces.back].map((face) => dotsOf(drawingToPng(face, dpi, fonts)));
    printed.push({ id, previews, pdf: paintPdf(cardSides(faces.alone), facts, fonts) });
  }
}, 60_000);

/** Holds what another program makes of each page against the preview. */
async function compare(draw: (pdf: Uint8Array, page: number) => Promise<Dots>, shareMax: number) {
  for (const { id, pdf, previews } of printed) {
    for (const [n, preview] of previews.entries()) {
      const { share, ink } = difference(preview, await draw(pdf, n + 1));
      expect(ink, `${id}, page ${n + 1}`).toBeGreaterThan(inkMin);
      expect(share, `${id}, page ${n + 1}`).toBeLessThan(shareMax);
    }
  }
}

const mutool = spawnSync("mutool", ["-v"]).error === undefined;

describe.skipIf(!mutool)("drawn by mutool", () => {
  test("the card looks like its preview to 0.12 % of the dots, with no complaint about a glyph", async () => {
    await inFolder((folder) =>
      compare(async (pdf, page) => {
        const [input, output] = [join(folder, "card.pdf"), join(folder, "card.png")];
        writeFileSync(input, pdf);
        const { stderr, status } = spawnSync(
          "mutool",
          ["draw", "-q", "-r", String(dpi), "-c", "rgba", "-o", output, input, String(page)],
          { encoding: "utf8" },
        );
        expect(status).toBe(0);
        expect(stderr).not.toMatch(/FT_|glyph|error/i);
        return onWhite(dotsOf(readFileSync(output)));
      }, 0.0012),
    );
  }, 60_000);
});

async function inFolder(use: (folder: string) => unknown): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "raster-"));
  try {
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function onWhite({ width, height, data }: Dots): Dots {
  const out = Buffer.from(data);
  for (let at = 0; at < out.length; at += 4) {
    const cover = out[at + 3]! / 255;
    for (let c = 0; c < 3; c++) out[at + c] = Math.round(out[at + c]! * cover + 255 * (1 - cover));
    out[at + 3] = 255;
  }
  return { width, height, data: out };
}

const qpdf = spawnSync("qpdf", ["--version"]).error === undefined;

test.skipIf(!qpdf)("qpdf finds no fault", async () => {
  await inFolder((folder) => {
    const input = join(folder, "card.pdf");
    for (const { pdf } of printed) {
      writeFileSync(input, pdf);
      const output = execFileSync("qpdf", ["--check", input], { encoding: "utf8" });
      expect(output).toContain("No syntax or stream encoding errors found");
    }
  });
});

const started = await startBrowser();
const inBrowser =
  "reason" in started ? `drawn in the browser (not here: ${started.reason})` : "drawn in the browser";

describe.skipIf("reason" in started)(inBrowser, () => {
  let page: Page;

  beforeAll(async () => {
    if ("reason" in started) return;
    page = await started.browser.newPage();
    const resolve = createRequire(import.meta.url).resolve;
    await page.route("http://print.test/**", async (route) => {
      const name = new URL(route.request().url()).pathname.slice(1);
      if (name === "") return route.fulfill({ contentType: "text/html", body: readerPage });
      return route.fulfill({
        contentType: "text/javascript",
        body: readFileSync(resolve(`pdfjs-dist/build/${name}`)),
      });
    });
    await page.goto("http://print.test/");
    await page.waitForFunction(() => "reader" in globalThis);
  }, 60_000);

  afterAll(async () => {
    if (!("reason" in started)) await started.browser.close();
  });

  test("the card looks like its preview to 0.12 % of the dots", async () => {
    await compare(async (pdf, n) => dotsOf(await drawInBrowser(page, pdf, n)), 0.0012);
  }, 120_000);
});

const readerPage = `<!doctype html><script type="module">
import * as reader from "/pdf.min.mjs";
reader.GlobalWorkerOptions.workerSrc = "/pdf.worker.min.mjs";
globalThis.reader = reader;
</script>`;

async function drawInBrowser(page: Page, pdf: Uint8Array, pageNumber: number): Promise<Uint8Array> {
  const url = await page.evaluate(
    async ({ base64, pageNumber, scale }) => {
      const { reader } = globalThis as unknown as { reader: typeof import("pdfjs-dist") };
      const data = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
      const document_ = await reader.getDocument({ data, verbosity: 0 }).promise;
      const sheet = await document_.getPage(pageNumber);
      const viewport = sheet.getViewport({ scale });
      const canvas = document.createElement("canvas");
      canvas.width = Math.ceil(viewport.width - 0.001);
      canvas.height = Math.ceil(viewport.height - 0.001);
      await sheet.render({ canvas, viewport }).promise;
      return canvas.toDataURL("image/png");
    },
    { base64: Buffer.from(pdf).toString("base64"), pageNumber, scale: dpi / 72 },
  );
  return Buffer.from(url.slice(url.indexOf(",") + 1), "base64");
}
