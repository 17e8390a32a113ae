import type { Root, RootContent, Table, TableRow } from "mdast";
import type { LeafDirective, TextDirective } from "mdast-util-directive";
import { visit } from "unist-util-visit";
import type { Library, Prose } from "../../content/library.ts";
import { terminalFallMs } from "../../core/body-fall.ts";
import { parseLoad } from "../../core/load-notation.ts";
import { parseQuantity, type QuantityKind } from "../../core/quantity.ts";
import type { Figures } from "../../report/figures.ts";
import type { Message } from "../../report/message.ts";
import type { Words } from "../../report/words.ts";
import { ballDown, feedTable } from "../feed-in-water.ts";
import type { InWater } from "../in-water.ts";
import type { SolvedDepth, SolvedRig } from "../solved.ts";
import { depthGuideTable, shotTable, type TextTable } from "../tables.ts";
import { ballTable, feedPlaceTable, holdBackTable, liftTable } from "../water-tables.ts";
import { type PictureReference, scenes, stateGroups } from "./pictures.ts";

/** What live figures are taken from. */
export interface LiveContext {
  readonly library: Library;
  readonly solved: ReadonlyMap<string, SolvedRig>;
  readonly words: Words;
  readonly figures: Figures;
}

/** What a directive may say is wrong with it: a code of `report/messages.ts` and its values. */
class Wrong extends Error {
  constructor(
    readonly code: string,
    readonly values: Message["values"],
  ) {
    super(code);
  }
}

type Attributes = (name: string) => string;

/** Directives inside a sentence: attributes → text. */
const inline: Readonly<Record<string, (at: Attributes, context: LiveContext) => string>> = {
  marking: (at, { library }) => named(library.floats, at("float"), "float").marking,
  "marked-weight": (at, context) =>
    loadWeight(named(context.library.floats, at("float"), "float").marking, context),
  weight: (at, context) => loadWeight(at("load"), context),
  figure: (at, context) => {
    const depth = depthOf(at, context);
    const wanted = at("of");
    const figure = Object.hasOwn(depthFigures, wanted) ? depthFigures[wanted] : undefined;
    if (!figure) throw unknown("figure", wanted, Object.keys(depthFigures));
    return figure(depth, context.figures);
  },
};

/** What a load such as "2 AAA" weighs on the guide's scale. */
function loadWeight(typed: string, { library, figures }: LiveContext): string {
  const scale = named(library.scales, library.guide.scaleId, "shot scale");
  const load = parseLoad(typed, scale);
  if (!load.ok) throw unknown("load", typed, []);
  return figures.mass(load.value.massG);
}

const depthFigures: Readonly<Record<string, (depth: SolvedDepth, figures: Figures) => string>> = {
  tip: (depth, figures) => figures.tip(depth.tipAsSetMm),
  draught: (depth, figures) => figures.gap(depth.draughtMm),
  "float-to-hook": (depth, figures) => figures.depth(depth.floatToHookMm),
  "lock-share": (depth, figures) => figures.share(depth.lockShare),
  spare: (depth, figures) => figures.mass(depth.sparePullG),
  "shot-count": (depth) => String(depth.shot.length),
};

/** Directives on a line of their own that become tables. */
const tables: Readonly<Record<string, (at: Attributes, context: LiveContext) => TextTable>> = {
  "shot-table": (at, context) => shotTable(rigOf(at, context), context),
  "depth-guide": (at, context) => depthGuideTable(depthOf(at, context), context),
  "lift-and-pull": (at, context) => liftTable(inWaterOf(at, context).lift, context),
  "hold-back": (at, context) => holdBackTable(inWaterOf(at, context).holdBackMax, context),
  "feed-places": (at, context) => {
    const bait = named(
      context.library.baits.map(({ bait }) => bait),
      at("bait"),
      "bait",
    );
    const fall = terminalFallMs(bait, context.library.guide.conditions);
    const feed = fall.ok
      ? feedTable(fall.value, quantities(at, "pace", "paces"), quantities(at, "length", "depths"))
      : fall;
    if (!feed.ok) throw unknown("bait that sinks", at("bait"), []);
    return feedPlaceTable(feed.value, "spot", context);
  },
  "groundbait-fall": (at, context) => {
    const paces = quantities(at, "pace", "paces");
    const balls = quantities(at, "length", "depths").map((depthMm) => {
      const ball = ballDown(depthMm, paces, context.library.guide.conditions);
      if (!ball.ok) throw unknown("depth", at("depths"), []);
      return { depthMm, ball: ball.value };
    });
    return ballTable(balls, context);
  },
  "shot-sizes": (_, { library, words, figures }) => {
    const scale = named(library.scales, library.guide.scaleId, "shot scale");
    return {
      head: [words("table.size"), words("table.mass")],
      rows: scale.sizes.map(({ name, massG }) => [name, figures.mass(massG)]),
    };
  },
};

/** Directives on a line of their own that become pictures. */
const pictures: Readonly<Record<string, (at: Attributes, context: LiveContext) => PictureReference>> = {
  "rig-drawing": (at, context) => ({
    picture: "rig-drawing",
    rig: rigOf(at, context).rig.id,
    depthMm: depthOf(at, context).depthMm,
  }),
  "float-drawing": (at, { library }) => ({
    picture: "float-drawing",
    float: named(library.floats, at("float"), "float").id,
  }),
  "float-chart": (at, { library }) => ({
    picture: "float-chart",
    floats: list(at("floats")).map((id) => named(library.floats, id, "float").id),
  }),
  "float-states": (at, context) => ({
    picture: "float-states",
    rig: rigOf(at, context).rig.id,
    show: oneOf(stateGroups, at("show"), "group of float states"),
  }),
  "pattern-chart": (at, context) => {
    const rigs = list(at("rigs"));
    const depths = rigs.map((rig) => depthOf((name) => (name === "rig" ? rig : at(name)), context));
    return { picture: "pattern-chart", rigs, depthMm: depths[0]!.depthMm };
  },
  "hang-plot": (at, context) => {
    const { rig } = rigOf(at, context);
    if (rig.water === "still") throw unknown("rig for running water", rig.id, flowing(context));
    return { picture: "hang-plot", rig: rig.id, depthMm: depthOf(at, context).depthMm };
  },
  knot: (at, { library }) => ({ picture: "knot", knot: named(library.knots, at("knot"), "knot").id }),
  scene: (at) => ({ picture: "scene", scene: oneOf(scenes, at("scene"), "scene") }),
};

/** Names with commas or spaces between them. */
const list = (typed: string): readonly string[] => typed.split(/[\s,]+/).filter(Boolean);

function oneOf<T extends string>(allowed: readonly T[], typed: string, what: string): T {
  const found = allowed.find((known) => known === typed);
  if (!found) throw unknown(what, typed, allowed);
  return found;
}

function flowing({ solved }: LiveContext): readonly string[] {
  return [...solved.values()].filter(({ rig }) => rig.water === "flowing").map(({ rig }) => rig.id);
}

function unknown(what: string, found: string, allowed: readonly string[]): Wrong {
  return new Wrong("unknown-name", { what, found, allowed });
}

function named<T extends { readonly id: string }>(entries: readonly T[], id: string, what: string): T {
  const found = entries.find((entry) => entry.id === id);
  if (found) return found;
  throw unknown(
    what,
    id,
    entries.map((entry) => entry.id),
  );
}

function rigOf(at: Attributes, { solved }: LiveContext): SolvedRig {
  const found = solved.get(at("rig"));
  if (!found) throw unknown("rig", at("rig"), [...solved.keys()]);
  return found;
}

function depthOf(at: Attributes, context: LiveContext): SolvedDepth {
  const rig = rigOf(at, context);
  const typed = at("depth");
  const wanted = parseQuantity("length", typed);
  const found = wanted.ok && rig.depths.find(({ depthMm }) => Math.abs(depthMm - wanted.value) < 1);
  if (!found) {
    const depths = rig.depths.map(({ depthMm }) => context.figures.shortDepth(depthMm));
    throw unknown(`depth of "${rig.rig.id}"`, typed, depths);
  }
  return found;
}

function inWaterOf(at: Attributes, context: LiveContext): InWater {
  const { inWater } = depthOf(at, context);
  if (!inWater) throw unknown("rig whose bait sinks", at("rig"), []);
  return inWater;
}

/** Quantities typed one after another, parted by commas. */
function quantities(at: Attributes, kind: QuantityKind, name: string): readonly number[] {
  return at(name)
    .split(",")
    .map((typed) => {
      const read = parseQuantity(kind, typed.trim());
      if (!read.ok) {
        const { problem, unit, examples } = read;
        throw new Wrong("quantity", { problem, unit, kind, examples, found: typed.trim() });
      }
      return read.value;
    });
}

/**
 * A text with its directives made into figures, tables and pictures. A reference to something that is not there is an
 * error at its place; the text around it stays.
 */
export function withLiveFigures(
  prose: Prose,
  context: LiveContext,
): { readonly value: Root; readonly messages: readonly Message[] } {
  const root = structuredClone(prose.body);
  const messages: Message[] = [];
  visit(root, (node, index, parent) => {
    if (node.type !== "textDirective" && node.type !== "leafDirective" && node.type !== "containerDirective")
      return;
    if (!parent || index === undefined) return;
    try {
      const made = expanded(node as TextDirective | LeafDirective, context);
      parent.children[index] = made as never;
    } catch (error) {
      if (!(error instanceof Wrong)) throw error;
      const { line, column } = node.position!.start;
      messages.push({
        severity: "error",
        place: { file: prose.path, line, column },
        code: error.code,
        values: error.values,
      });
    }
  });
  return { value: root, messages };
}

function expanded(node: TextDirective | LeafDirective, context: LiveContext): RootContent {
  const at: Attributes = (name) => {
    const value = node.attributes?.[name];
    if (!value?.trim()) throw new Wrong("missing-key", { key: name });
    return value;
  };
  if (node.type === "textDirective") {
    const make = Object.hasOwn(inline, node.name) ? inline[node.name] : undefined;
    if (!make) throw unknown("figure directive", node.name, Object.keys(inline));
    return { type: "text", value: make(at, context) };
  }
  if (Object.hasOwn(tables, node.name)) return tableNode(tables[node.name]!(at, context));
  if (Object.hasOwn(pictures, node.name)) {
    return { type: "picture", reference: pictures[node.name]!(at, context) };
  }
  throw unknown("block directive", node.name, [...Object.keys(tables), ...Object.keys(pictures)]);
}

function tableNode({ head, rows }: TextTable): Table {
  const row = (cells: readonly string[]): TableRow => ({
    type: "tableRow",
    children: cells.map((value) => ({ type: "tableCell", children: [{ type: "text", value }] })),
  });
  return { type: "table", align: head.map(() => null), children: [row(head), ...rows.map(row)] };
}
