import type { Parent, Root } from "mdast";
import { addressesIn, leadsNowhere, pagesOf } from "../checks/links.ts";
import { allTexts, liveAttributes } from "../checks/texts.ts";
import { rigInScene } from "../drawing/scenes/draw-scene.ts";
import type { Library, MarkdownText, RigEntry } from "../model/library.ts";
import { scenes } from "../model/pictures.ts";
import { visit } from "../model/visit.ts";

/** The library as it is published: without what is left out, and with no link of a lent text that leads there. */
export function published(whole: Library, leftOut: ReadonlySet<string>): Library {
  if (whole.lent.size === 0) return whole;
  const stays = (folder: string) => (entry: { readonly id: string }) => !leftOut.has(`${folder}/${entry.id}`);
  const rigs = whole.rigs.filter(stays("rigs"));
  const ids = new Set(rigs.map(({ id }) => id));
  const kits = whole.kits
    .map((kit) => ({ ...kit, rigIds: kit.rigIds.filter((id) => ids.has(id)) }))
    .filter(({ rigIds }) => rigIds.length > 0);
  const kept: Library = {
    ...whole,
    rigs,
    kits: kits.filter(stays("kits")),
    lessons: whole.lessons.filter(stays("lessons")),
    plans: whole.plans.filter(stays("lessons")),
    pages: whole.pages.filter(stays("pages")),
    floats: whole.floats.filter(stays("floats")),
    baits: whole.baits.filter(({ bait }) => stays("baits")(bait)),
    knots: whole.knots.filter(stays("knots")),
    species: whole.species.filter(stays("species")),
  };
  return withoutDeadLinks(kept);
}

/** Links of lent texts to what the guide has not become plain words; an author's own are an error, told elsewhere. */
function withoutDeadLinks(library: Library): Library {
  const lent = new Set(library.lent.values());
  const pages = pagesOf(library);
  const body = (text: MarkdownText): Root => {
    if (!lent.has(text.path) || addressesIn(text).every(({ url }) => !leadsNowhere(url, text, pages)))
      return text.body;
    const root = structuredClone(text.body);
    visit(root, ["link", "linkReference"], (node, index, parent) => {
      if (node.type !== "link" || !parent || index === undefined) return;
      if (leadsNowhere(node.url, text, pages)) (parent as Parent).children.splice(index, 1, ...node.children);
    });
    return root;
  };
  const inProse = <T extends MarkdownText>(texts: readonly T[]): T[] =>
    texts.map((text) => ({ ...text, body: body(text) }));
  const inNotes = <T extends { readonly path: string; readonly notes: Root }>(entries: readonly T[]): T[] =>
    entries.map((entry) => ({ ...entry, notes: body({ path: entry.path, body: entry.notes }) }));
  return {
    ...library,
    rigs: inProse(library.rigs),
    lessons: inProse(library.lessons),
    plans: inProse(library.plans),
    pages: inProse(library.pages),
    floats: inProse(library.floats),
    baits: inNotes(library.baits),
    species: inNotes(library.species),
  };
}

/** Rigs whose sums are asked for: those of the guide, and those of which its texts speak or that its scenes show. */
export function rigsAskedFor(whole: Library): readonly RigEntry[] {
  if (whole.lent.size === 0) return whole.rigs;
  const guide = published(whole, whole.leftOut);
  const asked = new Set(guide.rigs.map(({ id }) => id));
  for (const { rigIds } of whole.sessions) for (const id of rigIds) asked.add(id);
  for (const { packs } of whole.shelves) for (const { rigId } of packs) asked.add(rigId);
  for (const text of allTexts(guide)) {
    for (const id of liveAttributes(text, "rig")) asked.add(id);
    for (const ids of liveAttributes(text, "rigs")) for (const id of ids.split(/[\s,]+/)) asked.add(id);
    for (const scene of scenes.filter((name) => liveAttributes(text, "scene").has(name))) {
      asked.add(rigInScene(scene, whole.rigs)?.id ?? "");
    }
  }
  return whole.rigs.filter(({ id }) => asked.has(id));
}
