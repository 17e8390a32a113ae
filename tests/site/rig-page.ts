import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import type { OutputFile } from "../../src/markup/output.ts";
import type { TestBrowser } from "../support/browser.ts";
import { writeToNewFolder } from "../support/site-folder.ts";

/** Pages of a site opened from disk on a phone, one after another in one tab. */
export interface RigPages {
  readonly page: Page;
  /** What the pages said to the console. */
  readonly said: string[];
  /** @param address below `site/` */
  open(address: string): Promise<unknown>;
  close(): void;
}

export async function rigPages(
  browser: TestBrowser,
  files: AsyncIterable<OutputFile> | Iterable<OutputFile>,
): Promise<RigPages> {
  const folder = await writeToNewFolder(files);
  const page = await browser.newPage({ viewport: { width: 360, height: 740 }, acceptDownloads: true });
  const said: string[] = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  return {
    page,
    said,
    open: (address) => {
      const [path = "", query = ""] = address.split("?");
      return page.goto(pathToFileURL(join(folder, "site", path)).href + (query && `?${query}`));
    },
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}
