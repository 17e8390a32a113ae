import type { SiteInput } from "../../src/site/input.ts";

/** A site with so many rigs: its own, over and over, each time under another name. */
export function withRigs(input: SiteInput, count: number): SiteInput {
  const { library, printables } = input;
  const solved = new Map(input.solved);
  const all = [...library.rigs];
  const cards = [...printables];
  for (let at = 0; all.length < count; at++) {
    const entry = library.rigs[at % library.rigs.length]!;
    const id = `${entry.id}-${Math.floor(at / library.rigs.length) + 2}`;
    const rig = { ...entry.rig, id };
    all.push({ ...entry, id, title: `${entry.title}, again`, rig });
    solved.set(id, { ...input.solved.get(entry.id)!, rig });
    const card = printables.find(({ kind, rigId }) => kind === "card" && rigId === entry.id);
    if (card) cards.push({ ...card, path: `site/cards/${id}.pdf`, rigId: id });
  }
  return { ...input, library: { ...library, rigs: all.slice(0, count) }, solved, printables: cards };
}
