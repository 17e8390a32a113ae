import type { Root, RootContent } from "mdast";
import { first } from "../core/lists.ts";
import { bedOf, gapsOf } from "../core/swim/bed.ts";
import type { ChoosableRig, ChosenSpot, RuledOutBy } from "../model/choosing.ts";
import { windStrengths } from "../model/choosing-rules.ts";
import type { Guide } from "../model/library.ts";
import type { SoundedLine, SwimEntry } from "../model/swim.ts";
import type { SwimNotes } from "../model/swim-notes.ts";
import { conditionsText, ruledOutText, spokenForText } from "./choosing-text.ts";
import { surenessText } from "./spot-text.ts";
import { diaryOf } from "./swim-diary.ts";
import { hazardLines } from "./swim-hazards.ts";
import type { TableKit } from "./table-kit.ts";
import { shotTable, type TextTable } from "./tables.ts";
import { bullets, heading, link, numbered, paragraph, strong, tableNode } from "./text-nodes.ts";

/** So many rigs are told of for a spot; the others suit it too, and are named. */
const toldMost = 3;

/**
 * All that is told of a swim, as a text: hazards first, how help gets there, the bed along each line, and for each spot
 * the rigs that suit it, the best made up for just there, and, where there is room for it, what rules out the others.
 */
export function swimText(
  swim: SwimEntry,
  spots: readonly ChosenSpot[],
  notes: readonly SwimNotes[],
  guide: Pick<Guide, "rules">,
  kit: TableKit,
  { withRuledOut }: { readonly withRuledOut: boolean },
): Root {
  const { words } = kit;
  return {
    type: "root",
    children: [
      heading(words("swim.hazards")),
      bullets(hazardLines(swim, guide, kit)),
      heading(words("swim.facts")),
      bullets(factsOf(swim, kit)),
      heading(words("swim.bed")),
      ...swim.lines.flatMap((line, at) => lineOf(swim, line, at, kit)),
      ...(spots.length > 0 ? rigsOf(spots, withRuledOut, kit) : []),
      ...diaryOf(swim, notes, kit),
    ],
  };
}

function factsOf(swim: SwimEntry, { words, figures }: TableKit) {
  const { access, paceMs, levelMark, exposedTo, fish } = swim;
  const facts = [
    ["road", access.road],
    ["way", access.way],
    ["grid-reference", access.gridReference],
    ["places", String(swim.places)],
    ["fish", fish.join(", ")],
    ["pace", paceMs === undefined ? undefined : figures.pace(paceMs)],
    ["wind", exposedTo.map((wind) => words(`swim.wind.${wind}`)).join(", ")],
    ["sounded", figures.date(swim.sounded)],
    ["level-mark", levelMark],
  ] as const;
  return facts.flatMap(([key, fact]) =>
    fact ? paragraph(strong(words(`swim.fact.${key}`)), ` ${fact}`) : [],
  );
}

/** The bed along one line: its picture, its soundings, and where nobody has plumbed. */
function lineOf(swim: SwimEntry, line: SoundedLine, at: number, { words, figures }: TableKit): RootContent[] {
  const depth = figures.shortDepth;
  const gaps = gapsOf(bedOf(line.soundings)).map(({ fromMm, toMm }) =>
    words("swim.gap", { from: depth(fromMm), to: depth(toMm) }),
  );
  const notes = line.features.flatMap(({ note, what, fromBankMm }) =>
    note === undefined
      ? []
      : words("swim.feature", { what: words(`drawing.bed.${what}`), distance: depth(fromBankMm), note }),
  );
  const said = [...notes, ...gaps].join(" ");
  return [
    heading(line.title, 3),
    { type: "picture", reference: { picture: "bed", swim: swim.id, line: at } },
    ...soundingTables(line, { words, figures }),
    ...(said === "" ? [] : [paragraph(said)]),
  ];
}

/** So many soundings stand side by side on paper. */
const abreastMost = 6;

function soundingTables({ soundings }: SoundedLine, { words, figures }: TableKit): RootContent[] {
  const count = Math.ceil(soundings.length / abreastMost);
  return Array.from({ length: count }, (_, i) => {
    const some = soundings.slice(i * abreastMost, (i + 1) * abreastMost);
    return tableNode({
      head: [words("swim.from-bank"), ...some.map(({ fromBankMm }) => figures.shortDepth(fromBankMm))],
      rows: [[words("swim.depth"), ...some.map(({ depthMm }) => figures.shortDepth(depthMm))]],
    });
  });
}

function rigsOf(spots: readonly ChosenSpot[], withRuledOut: boolean, kit: TableKit): RootContent[] {
  const { words } = kit;
  return [
    heading(words("swim.rigs")),
    paragraph(conditionsText(first(spots).conditions, kit), ` ${words("swim.moved")}`),
    ...spots.flatMap((spot, at) => [
      ...spotOf(spot, at + 1, kit),
      ...(withRuledOut ? ruledOut(spot, kit) : []),
    ]),
  ];
}

function spotOf(chosen: ChosenSpot, number: number, kit: TableKit): RootContent[] {
  const { words, figures } = kit;
  const { spot, conditions, choice } = chosen;
  const title = words("choosing.place", {
    spot: words("swim.numbered", { number, spot: spot.title }),
    distance: figures.depth(spot.fromBankMm),
    depth: figures.depth(conditions.depthMm),
  });
  const more = choice.offered.slice(toldMost).map(({ entry }) => entry.title);
  return [
    heading(title, 3),
    paragraph(surenessText(spot, kit)),
    ...(choice.offered.length === 0
      ? [paragraph(words("choosing.nothing"))]
      : [
          numbered(
            choice.offered
              .slice(0, toldMost)
              .map(({ entry, points, because }) =>
                paragraph(
                  link(rigAddress(entry), entry.title),
                  ` ${words("swim.points", { points, why: because.map((by) => spokenForText(by, kit)).join("; ") })}`,
                ),
              ),
          ),
        ]),
    ...(more.length > 0 ? [paragraph(words("swim.others", { rigs: more.join(", ") }))] : []),
    ...madeFor(chosen, kit),
    tableNode(bestTable(chosen, kit)),
  ];
}

const rigAddress = ({ id }: ChoosableRig) => `../rigs/${id}.md`;

/** The best rig made up for just there: its drawing, and what to pinch on where. */
function madeFor({ swim, spot, choice }: ChosenSpot, kit: TableKit): RootContent[] {
  const [best] = choice.offered;
  if (!best) return [];
  return [
    heading(kit.words("swim.made-for", { rig: best.entry.title, spot: spot.title }), 4),
    tableNode(shotTable(best.made, kit)),
    { type: "picture", reference: { picture: "spot-rig", swim: swim.id, spot: spot.title } },
  ];
}

/** The best rig for each learner in each wind. */
function bestTable({ best }: ChosenSpot, { words }: TableKit): TextTable {
  return {
    head: [words("swim.best-for"), ...windStrengths.map((wind) => words(`choosing.wind.${wind}`))],
    rows: best.map(({ learner, byWind }) => [
      words(`choosing.learner.${learner}`),
      ...byWind.map((entry) => entry?.title ?? words("table.blank")),
    ]),
  };
}

/** Rigs that are ruled out, together where the same rules them out. */
function ruledOut({ choice }: ChosenSpot, kit: TableKit): RootContent[] {
  const byReason = new Map<string, string[]>();
  for (const { entry, because } of choice.ruledOut) {
    const why = because.map((by: RuledOutBy) => ruledOutText(by, kit)).join(" ");
    byReason.set(why, [...(byReason.get(why) ?? []), entry.title]);
  }
  if (byReason.size === 0) return [];
  return [
    paragraph(strong(kit.words("choosing.ruled-out"))),
    bullets([...byReason].map(([why, rigs]) => paragraph(strong(`${rigs.join(", ")}.`), ` ${why}`))),
  ];
}
