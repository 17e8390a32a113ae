import { type Answer, answer } from "../core/finding.ts";
import { isLine, type KitLine, type KitNeed, kitFor } from "../core/tackle/kit.ts";
import type { GroupUse, Kit } from "../model/library.ts";
import { mostOfEachSize, type SolvedRig } from "../model/solved.ts";
import { usualPacket } from "../solve/stock/stock-lines.ts";
import { amountText, boughtText } from "./stock-text.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";

/** What a learner brings. */
export function kitTable(
  { floats, tub, hooks, mainLineG, hookLineG, baits }: Kit,
  { words, figures }: TableKit,
): TextTable {
  const sizes = [...new Set(tub.tub.map(({ size }) => size))];
  const list = (of: readonly (string | number)[]) => of.join(", ");
  return {
    head: [words("table.tackle"), words("table.bring")],
    rows: [
      [words("table.floats"), list(floats.map(({ title }) => title))],
      [words("table.shot"), words("table.tub", { title: tub.title, sizes: list(sizes) })],
      [words("table.main-line"), figures.strength(mainLineG)],
      [words("table.hook-length"), figures.strength(hookLineG)],
      [words("table.hooks"), list(hooks.map(({ size }) => size))],
      [words("table.bait"), list(baits.map(({ bait }) => bait.title))],
    ],
  };
}

/** A kit that a group shares, with its rigs made up. */
interface GroupKit {
  readonly kit: Kit;
  readonly use: GroupUse;
  readonly rigs: readonly SolvedRig[];
}

/**
 * What a group uses up in which every learner makes up each rig of the kit, and what to buy for it. Shot come by the
 * tub: so many tubs that none of its sizes runs out.
 */
export function groupKitTable(group: GroupKit, learners: number, told: TableKit): Answer<TextTable> {
  const { words } = told;
  const { kit, use, rigs } = group;
  const mainLine: KitNeed = {
    kind: "line",
    name: told.figures.strength(kit.mainLineG),
    count: use.mainLineMm / 1000,
  };
  const needs = [...rigs.map((rig) => needsOf(rig, group, told)), [mainLine]];
  const list = kitFor(learners, needs, use.spareShare, (need) => perPacket(need, group));
  if (!list.ok) return list;
  const shot = list.value.filter(({ kind }) => kind === "shot");
  return answer({
    head: [
      words("table.tackle"),
      words("table.group", { learners }),
      words("table.sold"),
      words("table.buy"),
    ],
    rows: [
      ...list.value.filter(({ kind }) => kind === "float").map((line) => row(line, told)),
      ...(shot.length > 0 ? [shotRow(kit.tub.title, shot, told)] : []),
      ...list.value.filter(({ kind }) => kind !== "float" && kind !== "shot").map((line) => row(line, told)),
    ],
  });
}

function needsOf(solved: SolvedRig, { kit, use }: GroupKit, { figures }: TableKit): readonly KitNeed[] {
  const { rig } = solved;
  const most = mostOfEachSize(solved);
  const counted = [...new Set(kit.tub.tub.map(({ size }) => size))].filter(
    (size) => most.has(size) && inTub(kit, size) < Infinity,
  );
  return [
    { kind: "float", name: rig.float.title, count: 1 },
    ...counted.map((name): KitNeed => ({ kind: "shot", name, count: most.get(name) ?? 0 })),
    { kind: "hook", name: String(rig.hook.size), count: use.hookLengths },
    {
      kind: "hook length",
      name: figures.strength(kit.hookLineG),
      count: (use.hookLengths * use.hookLineMm) / 1000,
    },
  ];
}

/** How many of a size a kit's tub holds; without end where nobody counted them. */
function inTub({ tub }: Kit, size: string): number {
  return tub.tub.filter((one) => one.size === size).reduce((sum, { count }) => sum + count, 0);
}

/** Shot come by the tub. */
const perPacket = (need: KitNeed, { kit, use }: GroupKit): number =>
  need.kind === "shot" ? inTub(kit, need.name) : usualPacket(need, use);

/** Words for each kind of thing that is not shot. */
const things = {
  float: "table.floats",
  hook: "table.hooks",
  "hook length": "table.hook-length",
  line: "table.main-line",
} as const;

function row(line: KitLine, told: TableKit): string[] {
  const { words } = told;
  const { kind, name, count, perPacket } = line;
  if (kind === "shot") throw new Error("shot have a row of their own");
  const amount = (of: number) => amountText(line, of, told);
  const packet = isLine(line) ? "table.spools" : perPacket === 1 ? "table.singly" : "table.packets";
  return [
    words("table.thing", { thing: words(things[kind]), name }),
    amount(count),
    words(packet, { amount: amount(perPacket) }),
    boughtText(line, told),
  ];
}

function shotRow(tub: string, shot: readonly KitLine[], { words }: TableKit): string[] {
  const sizes = shot.map(({ name, count }) =>
    words("figures.several-shot", { count: String(count), size: name }),
  );
  return [
    words("table.thing", { thing: words("table.shot"), name: tub }),
    sizes.join(", "),
    words("table.tubs"),
    words("stock.tubs", { count: Math.max(...shot.map(({ packets }) => packets)) }),
  ];
}
