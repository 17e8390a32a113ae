import type { OutputFile } from "../../src/markup/output.ts";
import { withCardFaces } from "../../src/print/card-faces.ts";
import { fileHash } from "../../src/site/file-hash.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { reasonText } from "../../src/words/reason.ts";
import { rigTexts } from "../../src/words/rig-texts.ts";
import { feedText, waterText } from "../../src/words/water-text.ts";
import { siteAssets } from "../../tools/site-assets.mjs";
import { shippedGuide } from "../support/shipped-guide.ts";

/** What the site of the shipped content is made from, with a card for every rig. */
export async function realSite(): Promise<SiteInput> {
  const { library, source, live, kit } = shippedGuide;
  return {
    library,
    solved: source.solved,
    pictures: source,
    kit,
    assets: withCardFaces(await siteAssets(), library),
    printables: library.rigs.map(({ id, title }) => ({
      path: `site/cards/${id}.pdf`,
      title,
      kind: "card",
      rigId: id,
      sizeBytes: 30_000,
      hash: fileHash(""),
    })),
    liveBody: ({ body }) => live.get(body) ?? body,
    inWater: (rig, depth) => waterText(rig, depth, kit),
    feedPlaces: (rig) => feedText(rig, kit),
    reason: (finding) => reasonText(finding, kit.words, kit.figures),
    told: rigTexts(kit),
  };
}

let made: Promise<ReadonlyMap<string, OutputFile["content"]>> | undefined;

/** The site of the shipped content: path → content. It is made once for all the tests that share their modules. */
export function realSiteFiles(): Promise<ReadonlyMap<string, OutputFile["content"]>> {
  made ??= makeFiles();
  return made;
}

async function makeFiles() {
  const input = await realSite();
  const files = new Map<string, OutputFile["content"]>();
  for await (const { path, content } of siteFiles(input)) files.set(path, content);
  for (const { path } of input.printables) files.set(path, "");
  return files;
}
