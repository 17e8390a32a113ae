import type { Nodes } from "mdast";
import { visit } from "unist-util-visit";
import type { Prose } from "../../../src/model/library.ts";
import { nodesOf, type ReadPdf } from "../../print/read-pdf.ts";
import { readDescription } from "./read-drawing.ts";
import { type Cell, readKits, readMetals } from "./read-kit.ts";
import { figure } from "./read-lesson.ts";
import { readMakeUp, readStates } from "./read-states.ts";
import { readGuideRow, readShotTable, readWhipTable } from "./read-tables.ts";
import { heard, plain, readCm, readPlaces } from "./read-words.ts";
import type { Statement } from "./statement.ts";

type Told = readonly [rig: string, Statement];

/** The rigs that a text can be about. */
export interface ToldRigs {
  /** Ids by their titles. */
  readonly byTitle: ReadonlyMap<string, string>;
  /** The one that is made up step by step in a scene. */
  readonly made: string;
  readonly ofKit: (kit: string) => readonly string[];
}

/** A directive of a text that names a rig, and maybe one of its depths, or a kit. */
interface Asked {
  readonly name: string;
  readonly rig: string;
  /** Of a chart that has several beside each other. */
  readonly rigs?: readonly string[];
  readonly kit?: string;
  readonly depthCm?: number;
}

const depthOf = (depth: string | null | undefined) =>
  depth ? { depthCm: Math.round(readCm(depth.replace(/(\d)(c?m)/, "$1 $2"))) } : {};

/** What texts ask to have told of a rig, in their order. */
function asked(texts: readonly Pick<Prose, "body">[]): Asked[] {
  const found: Asked[] = [];
  for (const { body } of texts) {
    visit(body, "leafDirective", ({ name, attributes }) => {
      const { rig, rigs, depth, kit } = attributes ?? {};
      const several = rigs && { rigs: rigs.split(" ") };
      if (rig || rigs || kit)
        found.push({ name, rig: rig ?? "", ...several, ...depthOf(depth), ...(kit && { kit }) });
    });
  }
  return found;
}

/**
 * What a handout says of rigs once it is printed and read by an independent reader: the words for its pictures, its
 * tables, and the figures in its sentences. The texts say which rig is asked for where; what is told of it is read from
 * the paper.
 *
 * @param texts as they are written, in the order of the handout
 */
export function readHandout(
  { pages }: ReadPdf,
  texts: readonly Prose[],
  rigs: ToldRigs,
  teller: string,
): Told[] {
  const wanted = asked(texts);
  const kits = wanted.filter(({ name }) => name === "kit").map(({ kit }) => kit!);
  const alts = pages.flatMap(({ tree }) =>
    nodesOf(tree, "Figure").flatMap(({ alt }) => (alt ? [plain(alt)] : [])),
  );
  // The booklet has a page behind what leads to another text.
  const words = plain(pages.map(({ tree }) => tree?.words ?? "").join(" ")).replace(/\s\(p\.\s?\d+\)/g, "");
  const cells = pages.flatMap(({ tree }) =>
    nodesOf(tree, "TR").map(({ children }) =>
      children.map(({ role, words: cell }) => ({ head: role === "TH", cell })),
    ),
  );
  return [
    ...readDrawings(alts, rigs.byTitle, teller),
    ...readStates(
      alts,
      wanted.filter(({ name }) => name === "float-states").map(({ rig }) => rig),
      teller,
    ),
    ...readMakeUp(words, teller).map((one): Told => [rigs.made, one]),
    ...readMetals(words, teller).flatMap((one) => [...rigs.byTitle.values()].map((rig): Told => [rig, one])),
    ...readHangs(alts, wanted, teller),
    ...readPatterns(alts, wanted, rigs.byTitle, teller),
    ...readTables(cells, wanted, teller),
    ...readKits(cells, teller).flatMap((told, at) =>
      rigs.ofKit(kits[at]!).flatMap((rig) => told.map((one): Told => [rig, one])),
    ),
    ...texts.flatMap((text) => readSentences(text, words, teller)),
  ];
}

/** The words for drawings of rigs. */
function readDrawings(
  alts: readonly string[],
  rigByTitle: ReadonlyMap<string, string>,
  teller: string,
): Told[] {
  return alts.flatMap((alt): Told[] => {
    const title = /^(.*?): for water .* deep\. .*From the hook up: /.exec(alt)?.[1];
    if (title === undefined) return [];
    return readDescription(alt, teller).map((one): Told => [rigByTitle.get(title)!, one]);
  });
}

/** The words for charts of patterns: "Straight waggler, bulk: number 10 at 32 cm; …; bait down after 15 s. …" */
export function readPatterns(
  alts: readonly string[],
  wanted: readonly Pick<Asked, "rigs" | "depthCm">[],
  rigByTitle: ReadonlyMap<string, string>,
  teller: string,
): Told[] {
  const asked = wanted.flatMap(({ rigs = [], depthCm }) => rigs.map((rig) => ({ rig, depthCm })));
  const told = alts.flatMap((alt) => {
    const rigs = alt.split(/(?<=\.) /).map((one) => /^(.*?): (.* cm)(?:; bait down after .*)?\.$/.exec(one));
    return rigs.every((one) => one && rigByTitle.has(one[1]!)) ? rigs : [];
  });
  if (told.length !== asked.length)
    throw new Error(`${teller}: patterns of ${told.length} rigs, not ${asked.length}`);
  return asked.map(({ rig, depthCm }, at): Told => {
    const [, title, shot] = told[at]!;
    if (rigByTitle.get(title!) !== rig) throw new Error(`${teller}: the pattern of ${title}, not of ${rig}`);
    const groups = readPlaces(heard(shot!));
    return [rig, { teller, of: "line placed", ...(depthCm !== undefined && { depthCm }), groups }];
  });
}

/** The words for plots of how a line hangs: "The flow runs right, 10 m in 50 s. Float run free: …" */
function readHangs(alts: readonly string[], wanted: readonly Asked[], teller: string): Told[] {
  const plots = wanted.filter(({ name }) => name === "hang-plot");
  const told = alts.flatMap(
    (alt) => /^The flow runs right, 10 m in (\d+) s\. Float (.*)\.$/.exec(alt)?.slice(1) ?? [],
  );
  if (told.length !== 2 * plots.length)
    throw new Error(`${teller}: ${told.length / 2} plots, not ${plots.length}`);
  return plots.flatMap(({ rig, depthCm }, at) =>
    told[2 * at + 1]!.split("; ").map((one): Told => {
      const [, held, lead, side] = /^(.*?): bait (?:level|(\d+) cm (ahead of|behind)) (?:the|with)/.exec(
        one,
      )!;
      const off = Number(/, (\d+) cm off the bed$/.exec(one)?.[1] ?? 0);
      const deep = /, ([\d.]+) m deep,/.exec(one)?.[1];
      if (deep !== undefined && depthCm !== undefined && Math.abs(100 * Number(deep) + off - depthCm) > 1)
        throw new Error(`${teller}: ${deep} m down and ${off} cm off the bed in ${depthCm} cm of water`);
      const share = held === "run free" ? 0 : held === "stopped" ? 1 : Number(/\d+/.exec(held!)) / 100;
      return [
        rig,
        {
          teller,
          of: "hang",
          ...(depthCm !== undefined && { depthCm }),
          paceMs: 10 / Number(told[2 * at]),
          heldBackShare: share,
          leadCm: (side === "behind" ? -1 : 1) * Number(lead ?? 0),
          offBedCm: off,
        },
      ];
    }),
  );
}

/** Tables of a rig by what their heads say, in the order that the texts ask for them. */
function readTables(rows: readonly (readonly Cell[])[], wanted: readonly Asked[], teller: string): Told[] {
  const tables: { head: string[]; rows: string[][] }[] = [];
  for (const row of rows) {
    const cells = row.map(({ cell }) => cell);
    // A table that goes on over pages has its other rows there, with nothing in them here.
    if (cells.every((cell) => cell === "")) continue;
    if (row.every(({ head }) => head)) tables.push({ head: cells, rows: [] });
    else tables.at(-1)!.rows.push(cells);
  }
  const kinds = {
    "shot-table": (head: string) => /^Depth\|(Float|Stop knot) to hook\|.*Tip$/.test(head),
    "depth-guide": (head: string) => head.startsWith("Hook set|"),
    "whip-line": (head: string) => head.includes("Whip tip to water"),
  };
  return Object.entries(kinds).flatMap(([name, isOne]) => {
    const asks = wanted.filter((one) => one.name === name);
    const made = tables.filter(({ head }) => isOne(head.join("|")));
    if (asks.length !== made.length)
      throw new Error(`${teller}: ${made.length} of ${name}, not ${asks.length}`);
    return asks.flatMap(({ rig, depthCm }, at): Told[] => {
      const table = made[at]!;
      const told =
        name === "shot-table"
          ? readShotTable(table, teller)
          : name === "whip-line"
            ? readWhipTable(table, teller)
            : table.rows.map((row) => readGuideRow(row, depthCm!, teller));
      return told.map((one): Told => [rig, one]);
    });
  });
}

/** A piece of a sentence that may be printed over several lines. */
const inPrint = (text: string) =>
  text
    .split(/\s+/)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&"))
    .join("\\s+");

/** `104 cm (41 in)`: the number with its unit, and what the other system makes of it. */
const printedFigure = "(\\d[\\d.]*(?:\\s(?:mm|cm|m|%|ml|l|g|kg|lb|oz|h|min|s)(?!\\w))?)(?:\\s\\([^)]*\\))?";

/** The figures of rigs in a text's paragraphs and rows, read from where they stand in the printed words. */
function readSentences({ body }: Prose, words: string, teller: string): Told[] {
  const told: Told[] = [];
  visit(body, ["paragraph", "tableRow"], (block) => {
    const figures: { rig: string; of: string; depth?: string }[] = [];
    const pattern = (node: Nodes): string => {
      if (node.type === "text") return inPrint(node.value);
      if (node.type !== "textDirective")
        return "children" in node ? node.children.map(pattern).join("\\s*") : "";
      const { rig, of, depth } = node.attributes ?? {};
      if (node.name !== "figure" || !rig || !of)
        return node.name === "plain" ? node.children.map(pattern).join("") : ".{0,80}?";
      figures.push({ rig, of, ...(depth && { depth }) });
      return printedFigure;
    };
    const printed = pattern(block as Nodes);
    if (figures.length === 0) return;
    const match = new RegExp(printed).exec(words);
    if (!match) throw new Error(`${teller}: not printed: ${printed}`);
    figures.forEach(({ rig, of, depth }, at) => {
      const where = { teller, ...depthOf(depth) };
      told.push(...figure(of, plain(match[at + 1]!), where).map((one): Told => [rig, one]));
    });
  });
  return told;
}
