import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { compare, dpi } from "./printed-cards.ts";
import { dotsOf } from "./raster.ts";

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
  });

  afterAll(async () => {
    if (!("reason" in started)) await started.browser.close();
  });

  test("the card looks like its preview to 0.12 % of the dots", async () => {
    await compare(async (pdf, n) => dotsOf(await drawInBrowser(page, pdf, n)), 0.0012);
  });
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
