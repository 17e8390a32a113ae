import { relative } from "node:path/posix";
import type { OutputFile } from "../markup/output.ts";
import { sitePaths } from "../model/addresses.ts";
import { cardNotes } from "../model/card-content.ts";
import { type GuideData, type RigList, rigListName } from "../model/guide-data.ts";
import type { RigEntry } from "../model/library.ts";
import { stampedPath } from "./file-hash.ts";
import type { SiteInput } from "./input.ts";

/**
 * Data for the page scripts as scripts that set one global each: opened from disk a page may load a script but fetch
 * nothing. A count without end is written as null, JSON having no such number.
 *
 * @param addressOf where a file stands
 */
export function browserData(
  { library, assets }: Pick<SiteInput, "library" | "assets">,
  addressOf: (file: OutputFile) => string = stampedPath,
): OutputFile[] {
  const asked = sectionsAskedFor(assets);
  const markings = new Map(library.floats.map(({ float, marking }) => [float.id, marking]));
  const ofRigs = library.rigs.map((entry) => ({
    rig: entry.rig,
    ...rigFile(entry, markings.get(entry.rig.float.id)),
  }));
  const guide: GuideData = {
    words: Object.fromEntries(Object.entries(library.words).filter(([name]) => asked.has(name))),
    guide: library.guide,
    scales: library.scales.map(({ id, title, sizes }) => ({ id, title, sizes })),
  };
  const guideFile = { path: sitePaths.asset("guide-data.js"), content: script("dotdownGuide", guide) };
  const standsAt = (file: OutputFile) => relative("site", addressOf(file));
  const loaded = rigPageScripts.map((name) => ({
    path: sitePaths.asset(name),
    content: assets.get(name) ?? "",
  }));
  const list: RigList = {
    scripts: [guideFile, ...loaded].map(standsAt),
    rigs: ofRigs.map(({ rig: { id, water, depthsMm }, ...file }) => ({
      id,
      water,
      depthsMm,
      data: standsAt(file),
      page: relative("site", sitePaths.rig(id)),
    })),
  };
  return [
    guideFile,
    { path: sitePaths.asset(rigListName), content: script("dotdownRigs", list) },
    ...ofRigs.map(({ path, content }) => ({ path, content })),
  ];
}

/** Scripts that the page of a rig makes it by for a reader's own water. */
const rigPageScripts = ["fit.js", "sums-worker.js"] as const;

/** A rig, and what its card says besides its sums. */
function rigFile(entry: RigEntry, marking: string | undefined): OutputFile {
  const { rig } = entry;
  const notes = cardNotes(entry, marking);
  return {
    path: sitePaths.rigData(rig.id),
    content: script("dotdownRig", rig) + script("dotdownCardNotes", notes),
  };
}

/** What stands before the first dot of a text in a page script: among it the section of every word that is asked for. */
function sectionsAskedFor(assets: SiteInput["assets"]): ReadonlySet<string> {
  const scripts = [...assets].flatMap(([name, content]) => (name.endsWith(".js") ? [String(content)] : []));
  return new Set(
    scripts.flatMap((text) => [...text.matchAll(/["'`]([a-z-]+)\./g)].map(([, name = ""]) => name)),
  );
}

function script(name: string, value: unknown): string {
  return `var ${name} = ${JSON.stringify(value)};\n`;
}
