import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect } from "vitest";
import { sitePaths } from "../../src/model/addresses.ts";
import { siteFile } from "../../src/site/site-files.tsx";
import type { TestBrowser } from "../support/browser.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { realSite } from "./real-site.ts";

/** Pages of the shipped guide with films on them, opened from disk. */
export interface FilmPages {
  /** What the pages said to the console. */
  readonly said: readonly string[];
  /** A page with its clock in our hands, so that no test waits for a film. */
  open(path: string, options?: BrowserContextOptions): Promise<Page>;
  close(): void;
}

export async function filmPages(browser: TestBrowser, paths: readonly string[]): Promise<FilmPages> {
  const input = await realSite();
  const assets = [...input.assets.keys()].map(sitePaths.asset);
  const folder = await writeToNewFolder([...paths, ...assets].flatMap((path) => siteFile(path, input) ?? []));
  const said: string[] = [];
  return {
    said,
    async open(path, options = {}) {
      const context = await browser.newContext({ viewport: { width: 360, height: 740 }, ...options });
      const page = await context.newPage();
      page.on("console", (message) => said.push(message.text()));
      page.on("pageerror", (error) => said.push(error.message));
      const hasClock = options.javaScriptEnabled !== false;
      if (hasClock) await page.clock.install({ time: 0 });
      await page.goto(pathToFileURL(join(folder, path)).href);
      // From here on it goes only as far as it is told.
      if (hasClock) await page.clock.pauseAt(3_600_000);
      expect(said).toEqual([]);
      return page;
    },
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
