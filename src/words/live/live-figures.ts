import type { Nodes, Root, RootContent } from "mdast";
import type { LeafDirective, TextDirective } from "mdast-util-directive";
import { toString as textOf } from "mdast-util-to-string";
import type { Finding } from "../../core/finding.ts";
import { variantsOf } from "../../core/float/moved-float.ts";
import { first } from "../../core/lists.ts";
import { clutchWaterMl, weakestAtWorstG } from "../../core/tackle/knots.ts";
import { parseLoad } from "../../core/tackle/load-notation.ts";
import type { BasisSign } from "../../model/basis-sign.ts";
import { filmsOf, isFilmOf, knotFilmName } from "../../model/films.ts";
import type { Guide, MarkdownText } from "../../model/library.ts";
import { type Message, message } from "../../model/message.ts";
import { type PictureReference, scenes, stateGroups } from "../../model/pictures.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../model/solved.ts";
import { positionOf } from "../../model/source-position.ts";
import type { Figures } from "../figures.ts";
import { leadRuleText } from "../lead-rule-text.ts";
import { findingMessage } from "../reason.ts";
import { tableNode } from "../text-nodes.ts";
import { basisSign } from "./basis-sign.ts";
import { guideFacts } from "./guide-facts.ts";
import { tables } from "./live-tables.ts";
import { takeOwnPictures } from "./own-pictures.ts";
import {
  type Attributes,
  answered,
  depthOf,
  type LiveContext,
  type LiveLibrary,
  list,
  mustFlow,
  NoAnswer,
  named,
  oneOf,
  rigOf,
  unknown,
  Wrong,
} from "./references.ts";
import { slippedSigns } from "./slipped-signs.ts";
import { childrenOf, isDirective, typedIn } from "./typed-in.ts";
import { without } from "./without.ts";

/** Words that stand here in another sense than the glossary's, as a canal's lock does; pages make them no link. */
const unlinkedWords = "plain";

type Inline = (at: Attributes, context: LiveContext, label: string) => string | BasisSign;

/** Directives inside a sentence: attributes, and the words between the brackets, → text, or a sign beside it. */
const inline: Readonly<Record<string, Inline>> = {
  basis: basisSign,
  marking: (at, { library }) => named(library.floats, at("float"), "float").marking,
  "marked-weight": (at, context) =>
    loadWeight(named(context.library.floats, at("float"), "float").marking, context),
  weight: (at, context) => loadWeight(at("load"), context),
  figure: (at, context) => {
    const wanted = at("of");
    const ofRig = Object.hasOwn(rigFigures, wanted) ? rigFigures[wanted] : undefined;
    if (ofRig) return ofRig(rigOf(at, context), context.figures);
    const depth = depthOf(at, context);
    const ofDepth = Object.hasOwn(depthFigures, wanted) ? depthFigures[wanted] : undefined;
    if (!ofDepth) throw unknown("figure", wanted, [...Object.keys(depthFigures), ...Object.keys(rigFigures)]);
    return ofDepth(depth, context.figures);
  },
  "one-more": (at, context) => {
    const { shotEffects } = depthOf(at, context);
    const wanted = at("size");
    const effect = shotEffects.find(({ size }) => size === wanted);
    if (!effect) {
      throw unknown(
        "size in the rig's tub",
        wanted,
        shotEffects.map(({ size }) => size),
      );
    }
    return effect.oneMoreMm === null ? context.words("table.under") : context.figures.tip(effect.oneMoreMm);
  },
  rule: (at, { library: { guide }, words, figures }) => {
    const { leadRule } = guide;
    const rules: Guide["rules"] = {
      ...guide.rules,
      place: leadRule.place,
      lead: leadRuleText(leadRule, words, figures),
    };
    const wanted = at("of");
    const found = Object.hasOwn(rules, wanted) ? rules[wanted] : undefined;
    if (found === undefined) throw unknown("rule of the guide", wanted, Object.keys(rules));
    return found;
  },
  guide: (at, { library: { guide }, figures }) => {
    const facts: Readonly<Record<string, string>> = { ...guideFacts(guide, figures.date) };
    const wanted = at("of");
    const found = Object.hasOwn(facts, wanted) ? facts[wanted] : undefined;
    if (found === undefined) throw unknown("fact of the guide", wanted, Object.keys(facts));
    return found;
  },
  [unlinkedWords]: (_, __, label) => {
    if (label.trim() === "") throw new Wrong("missing-label", { of: `:${unlinkedWords}` });
    return label;
  },
};

/** What a directive inside a sentence may be called. */
export const inlineNames: readonly string[] = Object.keys(inline);

/** What a load such as "2 AAA" weighs on the guide's scale. */
function loadWeight(typed: string, { library, figures }: LiveContext): string {
  const scale = named(library.scales, library.guide.scaleId, "shot scale");
  return figures.mass(answered(parseLoad(typed, scale)).massG);
}

/** Figures of a rig that are the same at each of its depths. */
const rigFigures: Readonly<Record<string, (rig: SolvedRig, figures: Figures) => string>> = {
  "main-line": ({ rig }, figures) => figures.strength(rig.mainLine.strengthG),
  "hook-line": ({ rig }, figures) => figures.strength(rig.hookLine.strengthG),
  session: ({ rig }, figures) => figures.time(rig.feed.forS),
  feed: ({ sessionFeed }, figures) => figures.volume(sessionFeed.volumeMl),
  weakest: ({ lineChain }, figures) => figures.strength(weakestAtWorstG(lineChain)),
  clutch: ({ lineChain }, figures) => figures.volume(clutchWaterMl(lineChain)),
};

const depthFigures: Readonly<Record<string, (depth: SolvedDepth, figures: Figures) => string>> = {
  depth: (depth, figures) => figures.depth(depth.depthMm),
  tip: (depth, figures) => figures.tip(depth.tipAsSetMm),
  draught: (depth, figures) => figures.gap(depth.draughtMm),
  "float-to-hook": (depth, figures) => figures.gap(figures.settingMm(depth)),
  "lock-share": (depth, figures) => figures.share(depth.lockShare),
  spare: (depth, figures) => figures.mass(depth.sparePullG),
  "shot-count": (depth) => String(allShot(depth).length),
};

const drawnFish = ({ species }: LiveLibrary) => species.filter(({ looks }) => looks);
const drawnBaits = ({ baits }: LiveLibrary) => baits.flatMap(({ bait, looks }) => (looks ? [bait] : []));

/** Directives on a line of their own that become pictures. */
const pictures: Readonly<Record<string, (at: Attributes, context: LiveContext) => PictureReference>> = {
  "rig-drawing": (at, context) => {
    const { rig } = rigOf(at, context);
    const depth = depthOf(at, context);
    const variant = oneOf(variantsOf(depth, rig.water), at("variant", "set"), `variant of "${rig.id}"`);
    return { picture: "rig-drawing", rig: rig.id, depthMm: depth.depthMm, variant };
  },
  "float-drawing": (at, { library }) => ({
    picture: "float-drawing",
    float: named(library.floats, at("float"), "float").id,
  }),
  "float-chart": (at, { library }) => ({
    picture: "float-chart",
    floats: list(at, "floats").map((id) => named(library.floats, id, "float").id),
  }),
  "float-states": (at, context) => ({
    picture: "float-states",
    rig: rigOf(at, context).rig.id,
    show: oneOf(stateGroups, at("show"), "group of float states"),
  }),
  "pattern-chart": (at, context) => {
    const rigs = list(at, "rigs");
    const depths = rigs.map((rig) => depthOf((name) => (name === "rig" ? rig : at(name)), context));
    return { picture: "pattern-chart", rigs, depthMm: first(depths).depthMm };
  },
  "hang-plot": (at, context) => {
    const { rig } = rigOf(at, context);
    mustFlow(rig, context);
    return { picture: "hang-plot", rig: rig.id, depthMm: depthOf(at, context).depthMm };
  },
  film: (at, context) => {
    if (at("film") === knotFilmName)
      return {
        picture: "film",
        film: knotFilmName,
        knot: named(context.library.knots, at("knot"), "knot").id,
      };
    const solved = rigOf(at, context);
    const depth = depthOf(at, context);
    const { id } = solved.rig;
    const asked = at("film");
    // All are looked for only where it is none of them: some want to know how the rig sinks.
    const film = isFilmOf(asked, solved, depth)
      ? asked
      : oneOf(filmsOf(solved, depth), asked, `film of "${id}" at this depth`);
    return { picture: "film", film, rig: id, depthMm: depth.depthMm };
  },
  knot: (at, { library }) => ({ picture: "knot", knot: named(library.knots, at("knot"), "knot").id }),
  fish: (at, { library }) => ({
    picture: "fish",
    fish: named(drawnFish(library), at("fish"), "fish that is drawn").id,
  }),
  bait: (at, { library }) => ({
    picture: "bait",
    bait: named(drawnBaits(library), at("bait"), "bait that is drawn").id,
  }),
  scene: (at) => ({ picture: "scene", scene: oneOf(scenes, at("scene"), "scene") }),
};

/** What a directive on a line of its own may be called. */
const blockNames: readonly string[] = [...Object.keys(tables), ...Object.keys(pictures)];

const directiveNames = { inline: inlineNames, blocks: blockNames };

/**
 * A text with its directives made into figures, tables and pictures. A reference to something that is not there is an
 * error at its place; the text around it stays, or goes with what it was to show.
 *
 * @param wrong what becomes of a paragraph, a point of a list or a row of a table with such a reference in it
 */
export function withLiveFigures(
  { path, body }: MarkdownText,
  context: LiveContext,
  wrong: "stays" | "goes" = "stays",
): { readonly value: Root; readonly messages: readonly Message[] } {
  const hasImages = typedIn(body).images;
  const root = hasImages ? structuredClone(body) : body;
  const messages: Message[] = [
    ...(hasImages ? takeOwnPictures(root, path, context.library.images) : []),
    ...slippedSigns(root, path, directiveNames),
  ];
  const gone = new Set<Nodes>();
  const { around } = typedIn(root);
  const live = (node: Nodes, next: Nodes | undefined): Nodes => {
    // A container is an error of its own: see checkMarkdown.
    if (!isDirective(node) || node.type === "containerDirective")
      return around.has(node) ? ({ ...node, children: liveChildren(node) } as Nodes) : node;
    const { line, column } = positionOf(node).start;
    const place = { file: path, line, column };
    const tell = (finding: Finding) =>
      messages.push(findingMessage(finding, place, context.words, context.figures));
    try {
      return expanded(node as TextDirective | LeafDirective, context, tell, next);
    } catch (error) {
      gone.add(node);
      if (error instanceof Wrong) messages.push(message(error.code, place, error.values));
      else if (error instanceof NoAnswer) error.findings.forEach(tell);
      else throw error;
      return node;
    } finally {
      // What is wrong in the words of one is told, too.
      if (around.has(node)) liveChildren(node);
    }
  };
  const liveChildren = (node: Nodes): readonly Nodes[] => {
    const children = childrenOf(node);
    return children.map((child, at) => live(child, children[at + 1]));
  };
  const value = live(root, undefined) as Root;
  return { value: wrong === "goes" ? without(value, gone) : value, messages };
}

/** @param behind what stands behind it, where braces that are not understood are text */
function missingAttribute(name: string, node: TextDirective | LeafDirective, behind: Nodes | undefined) {
  const label = textOf(node);
  const isBraced = behind?.type === "text" && /^ *\{/.test(behind.value);
  const slip = isBraced ? "in braces" : label === "" ? "none" : "in brackets";
  const of = `${node.type === "leafDirective" ? "::" : ":"}${node.name}`;
  return new Wrong("missing-attribute", { name, of, slip, label });
}

/** Tells the pages to leave a text alone. */
const unlinked = { hName: "span", hProperties: { className: ["unlinked"] } };

function expanded(
  node: TextDirective | LeafDirective,
  context: LiveContext,
  tell: (finding: Finding) => void,
  behind: Nodes | undefined,
): RootContent {
  const at: Attributes = (name, otherwise) => {
    const value = node.attributes?.[name] ?? otherwise;
    if (!value?.trim()) throw missingAttribute(name, node, behind);
    return value;
  };
  if (node.type === "textDirective") {
    const make = Object.hasOwn(inline, node.name) ? inline[node.name] : undefined;
    if (!make && blockNames.includes(node.name)) throw new Wrong("block-as-figure", { name: node.name });
    if (!make) throw unknown("figure directive", node.name, inlineNames);
    const made = make(at, context, textOf(node));
    if (typeof made !== "string") return made;
    return { type: "text", value: made, ...(node.name === unlinkedWords && { data: unlinked }) };
  }
  const makeTable = Object.hasOwn(tables, node.name) ? tables[node.name] : undefined;
  if (makeTable) {
    const table = makeTable(at, context);
    table.findings?.forEach(tell);
    return tableNode(table);
  }
  if (Object.hasOwn(pictures, node.name)) {
    return { type: "picture", reference: pictures[node.name]!(at, context) };
  }
  throw inlineNames.includes(node.name)
    ? new Wrong("figure-as-block", { name: node.name })
    : unknown("block directive", node.name, blockNames);
}
