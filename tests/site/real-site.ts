import { rmSync } from "node:fs";
import { join } from "node:path";
import { siteInput } from "../../src/build/site-input.ts";
import type { Solved } from "../../src/build/stages.ts";
import { drawPictures } from "../../src/drawing/pictures.ts";
import type { OutputFile } from "../../src/markup/output.ts";
import type { Printable } from "../../src/model/printable.ts";
import { fileHash } from "../../src/site/file-hash.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { serveFolder } from "../support/serve.ts";
import { shippedGuide } from "../support/shipped-guide.ts";
import { siteAssets } from "../support/site-assets.ts";
import { writeToNewFolder } from "../support/site-folder.ts";

/** What the site of the shipped content, or of another guide, is made from, with a card for every rig. */
export async function realSite(guide: Solved = shippedGuide): Promise<SiteInput> {
  const { library, source } = guide;
  const printables = library.rigs.map(
    ({ id, title }): Printable => ({
      path: `site/cards/${id}.pdf`,
      title,
      kind: "card",
      rigId: id,
      sizeBytes: 30_000,
      hash: fileHash(""),
    }),
  );
  return siteInput(guide, drawPictures(source), printables, {
    date: "2026-05-01",
    siteAssets: await siteAssets(),
  });
}

let made: Promise<ReadonlyMap<string, OutputFile["content"]>> | undefined;

/** The site of the shipped content: path → content. It is made once for all the tests that share their modules. */
export function realSiteFiles(): Promise<ReadonlyMap<string, OutputFile["content"]>> {
  made ??= siteFilesOf(shippedGuide);
  return made;
}

/** The site of a guide, with cards that are empty: path → content. */
export async function siteFilesOf(guide: Solved): Promise<ReadonlyMap<string, OutputFile["content"]>> {
  const input = await realSite(guide);
  const files = new Map<string, OutputFile["content"]>();
  for await (const { path, content } of siteFiles(input)) files.set(path, content);
  for (const { path } of input.printables) files.set(path, "");
  return files;
}

/** The site of the shipped content in a folder of its own, and served, until closed. */
export async function serveRealSite() {
  const files = [...(await realSiteFiles())].map(([path, content]) => ({ path, content }));
  const folder = await writeToNewFolder(files);
  const server = await serveFolder(join(folder, "site"));
  return {
    folder,
    address: server.address,
    close: async () => {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
