import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleFiles } from "./sample-site.ts";

/** The sample's site in a new folder, and the paths of its pages that open from there. */
export async function sampleOnDisk(): Promise<{ folder: string; pages: readonly string[] }> {
  const files = await sampleFiles();
  // The page for addresses that are not there finds its files from the root of a host, which a disk is none.
  const opens = (path: string) => path.endsWith(".html") && path !== "site/404.html";
  return { folder: await writeToNewFolder(files), pages: files.map(({ path }) => path).filter(opens) };
}

/** Where a page lies on disk, with what is asked of it. */
export function onDisk(folder: string, path: string): string {
  const [file = "", query] = path.split("?");
  return pathToFileURL(join(folder, file)).href + (query === undefined ? "" : `?${query}`);
}

/** Pages made for a reader's own water. */
export const fittedPages = ["site/rigs/waggler-strung-out.html", "site/rigs/stick-shirt-button.html"].map(
  (path) => `${path}?depth=1.6+m`,
);
