import type { RootContent } from "mdast";
import { sum } from "../core/lists.ts";
import type { SwimEntry } from "../model/swim.ts";
import type { SwimNotes } from "../model/swim-notes.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";
import { bullets, heading, paragraph, strong, tableNode } from "./text-nodes.ts";

/** What was found at a swim day by day: depth and pace over the days, which rig did what, and what worked. */
export function diaryOf(swim: SwimEntry, notes: readonly SwimNotes[], kit: TableKit): RootContent[] {
  const { words } = kit;
  if (notes.length === 0) return [];
  const picture = (of: "depth" | "pace"): RootContent => ({
    type: "picture",
    reference: { picture: "swim-days", swim: swim.id, of },
  });
  return [
    heading(words("swim.found")),
    paragraph(words("swim.found-how")),
    ...(notes.some(({ depths }) => depths.length > 0) ? [picture("depth")] : []),
    ...(notes.some(({ paceMs }) => paceMs !== undefined) ? [picture("pace")] : []),
    tableNode(catchTable(notes, kit)),
    bullets(notes.map((day) => paragraph(strong(`${kit.figures.date(day.date)}.`), ` ${daySaid(day, kit)}`))),
  ];
}

/** What each rig caught in all, the one with the most first. */
function catchTable(notes: readonly SwimNotes[], { words }: TableKit): TextTable {
  const byRig = new Map<string, Map<string, number>>();
  for (const { rig, catches } of notes.flatMap(({ rigs }) => rigs)) {
    const caught = byRig.get(rig.title) ?? new Map<string, number>();
    for (const { fish, count } of catches) caught.set(fish, (caught.get(fish) ?? 0) + count);
    byRig.set(rig.title, caught);
  }
  const total = (caught: ReadonlyMap<string, number>) => sum(caught.values());
  return {
    head: [words("swim.rig"), words("swim.days"), words("swim.caught")],
    rows: [...byRig]
      .sort(([, a], [, b]) => total(b) - total(a))
      .map(([title, caught]) => [
        title,
        String(notes.filter(({ rigs }) => rigs.some(({ rig }) => rig.title === title)).length),
        caught.size === 0 ? words("table.blank") : caughtText(caught, words),
      ]),
  };
}

const caughtText = (caught: Iterable<readonly [string, number]>, words: TableKit["words"]) =>
  [...caught].map(([fish, count]) => words("swim.so-many", { count, fish })).join(", ");

/** How the water was on a day, how deep it was where, and what each rig did. */
function daySaid({ levelMm, paceMs, depths, rigs }: SwimNotes, { words, figures }: TableKit): string {
  const level =
    levelMm === undefined || levelMm === 0
      ? []
      : words(levelMm > 0 ? "swim.level-up" : "swim.level-down", { by: figures.gap(Math.abs(levelMm)) });
  const pace = paceMs === undefined ? [] : words("swim.ran", { pace: figures.pace(paceMs) });
  const found = depths.map(({ spot, depthMm }) =>
    words("swim.found-deep", { spot, depth: figures.shortDepth(depthMm) }),
  );
  const deep = found.length > 0 ? words("swim.found-depths", { depths: found.join(", ") }) : [];
  const did = rigs.map(({ rig, spot, worked, catches }) => {
    const where = spot === undefined ? rig.title : words("swim.rig-at", { rig: rig.title, spot });
    const caught = catches.map(({ fish, count }) => [fish, count] as const);
    return words(worked === undefined ? "swim.did" : "swim.did-well", {
      where,
      caught: caught.length > 0 ? caughtText(caught, words) : words("swim.no-fish"),
      ...(worked !== undefined && { worked }),
    });
  });
  return [level, pace, deep, did].flat().join(" ");
}
