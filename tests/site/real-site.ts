import { solveContent } from "../../src/build/build.ts";
import { disk } from "../../src/cli/disk.ts";
import type { OutputFile } from "../../src/markup/output.ts";
import { fileHash } from "../../src/site/file-hash.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { reasonText } from "../../src/words/reason.ts";
import { rigTexts } from "../../src/words/rig-texts.ts";
import { feedText, waterText } from "../../src/words/water-text.ts";
import { siteAssets } from "../../tools/site-assets.mjs";

/** What the site of the shipped content is made from, with a card for every rig. */
export async function realSite(): Promise<SiteInput> {
  const { value, messages } = await solveContent(disk, ["content"]);
  if (!value) throw new Error(`the content has errors: ${JSON.stringify(messages)}`);
  const { library, source, live, kit } = value;
  return {
    library,
    solved: source.solved,
    pictures: source,
    kit,
    assets: await siteAssets(),
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

/** The site of the shipped content: path → content. */
export async function realSiteFiles(): Promise<Map<string, OutputFile["content"]>> {
  const input = await realSite();
  const files = new Map<string, OutputFile["content"]>();
  for await (const { path, content } of siteFiles(input)) files.set(path, content);
  for (const { path } of input.printables) files.set(path, "");
  return files;
}
