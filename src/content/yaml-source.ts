import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
  type YAMLMap,
} from "yaml";
import { type Keep, makeAnew, once } from "../model/kept.ts";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { keyOf, type PathStep, placeIn, placesIn } from "./yaml-places.ts";
import { yamlTrouble } from "./yaml-trouble.ts";

/** A YAML text as plain data, with the place of every value kept. */
export interface YamlSource {
  readonly data: unknown;
  readonly messages: readonly Message[];
  /** What stops nothing. */
  readonly warnings: readonly Message[];
  /** Place of the value at a path, or of the nearest part of the path that is there. */
  placeOf(path: readonly PathStep[]): Place;
  /** What stands behind a # in the line of a value that is empty. */
  noteBehind(path: readonly PathStep[]): string | undefined;
  /** The value at a path as it was typed, such as a number with its noughts. */
  typed(path: readonly PathStep[]): string;
  /** Place of a key itself, for keys that should not be there. */
  placeOfKey(path: readonly PathStep[], key: string): Place;
}

/**
 * Reads a YAML text, once somebody asks for something in it. Where it was read before, it is parsed again only for what is seldom asked.
 *
 * @param file path to name in messages
 * @param lineOffset lines above the text in its file, such as the `---` over a front matter
 */
export function readYaml(text: string, file: string, lineOffset = 0, keep: Keep = makeAnew): YamlSource {
  const parsed = once(() => parseYaml(text, file, lineOffset));
  const plain = once(() =>
    keep("yaml", text, () => {
      const { doc, lines, source } = parsed();
      // What there is to tell has its place in a file: such a text is parsed each time.
      const isSound = source.messages.length + source.warnings.length === 0;
      const places = isSound ? placesIn(doc, lines) : undefined;
      return places && { data: source.data, places };
    }),
  );
  return {
    get data() {
      return (plain() ?? parsed().source).data;
    },
    get messages() {
      return plain() ? [] : parsed().source.messages;
    },
    get warnings() {
      return plain() ? [] : parsed().source.warnings;
    },
    placeOf: (path) => {
      const places = plain()?.places;
      if (!places) return parsed().source.placeOf(path);
      const { line, column } = placeIn(places, path);
      return { file, line: line + lineOffset, column };
    },
    noteBehind: (path) => parsed().source.noteBehind(path),
    typed: (path) => parsed().source.typed(path),
    placeOfKey: (path, key) => parsed().source.placeOfKey(path, key),
  };
}

function parseYaml(text: string, file: string, lineOffset: number) {
  const lines = new LineCounter();
  const doc = parseDocument(text, { lineCounter: lines, prettyErrors: false, resolveKnownTags: false });
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line: line + lineOffset, column: col };
  };
  // What the parser says after its first error mostly comes of that.
  const messages = [...doc.errors, ...doc.warnings].slice(0, 1).map((error) => {
    const { values, offset, first } = yamlTrouble(error, text);
    const firstLine = first === undefined ? {} : { firstLine: placeAt(first).line };
    return message("yaml-syntax", placeAt(offset), { ...values, ...firstLine });
  });
  let data: unknown;
  try {
    if (messages.length === 0) data = doc.toJS({ maxAliasCount: limits.aliases.most });
  } catch (error) {
    // Aliases that point nowhere, or that multiply beyond all measure.
    messages.push(aliasFault((error as Error).message, text, placeAt));
  }
  const found = (path: readonly PathStep[]) => nearestNode(doc, path);
  const source: YamlSource = {
    data,
    messages,
    warnings: cutByHash(doc, text, placeAt),
    placeOf: (path) => placeAt(found(path)?.range?.[0] ?? 0),
    noteBehind: (path) => {
      const at = found(path)?.range?.[0] ?? 0;
      return /^[^\n]*?(#[^\n]*)/.exec(text.slice(at))?.[1]?.trim();
    },
    typed: (path) => text.slice(...(found(path)?.range?.slice(0, 2) ?? [0, 0])),
    placeOfKey: (path, key) => {
      const node = found(path);
      const pair = isMap(node) ? node.items.find((item) => keyOf(item) === key) : undefined;
      const keyNode = pair?.key as Node | undefined;
      return placeAt(keyNode?.range?.[0] ?? node?.range?.[0] ?? 0);
    },
  };
  return { doc, lines, source };
}

type PlaceAt = (offset: number) => Place;

/** Aliases that multiply beyond all measure, or a value that starts with a star, which makes an alias of it. */
function aliasFault(said: string, text: string, placeAt: PlaceAt): Message {
  const alias = /^Unresolved alias .*: (.*)$/.exec(said)?.[1];
  const at = alias === undefined ? -1 : text.indexOf(`*${alias}`);
  if (at < 0) return message("yaml-syntax", placeAt(0), { problem: "other", said });
  return message("yaml-syntax", placeAt(at), { problem: "quotes", said: `"*${alias}"` });
}

/** A warning for each value that a # right before a word cuts short: `Rig #1` is `Rig`. */
function cutByHash(doc: Document, text: string, placeAt: PlaceAt): readonly Message[] {
  const messages: Message[] = [];
  visit(doc, {
    Scalar(_, { comment, value, range }) {
      if (!comment || value === null || !/^\S/.test(comment) || !range) return;
      const at = text.indexOf("#", range[1]);
      if (at < 0 || text.slice(range[1], at).includes("\n")) return;
      const cut = `#${comment.split("\n")[0]}`;
      messages.push(message("hash-cuts", placeAt(at), { cut }));
    },
  });
  return messages;
}

/** The pairs of each map that places were asked of, by their keys: there may be a thousand of them. */
const pairs = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();

function pairsOf(node: YAMLMap): ReadonlyMap<string, Pair> {
  const known = pairs.get(node) ?? new Map(node.items.filter(isPair).map((pair) => [keyOf(pair), pair]));
  pairs.set(node, known);
  return known;
}

/** Walks a path as far as it goes, through aliases and merged maps. */
function nearestNode(doc: Document, path: readonly PathStep[]): Node | undefined {
  let node = (doc.contents ?? undefined) as Node | undefined;
  for (const step of path) {
    const next = childOf(resolved(doc, node), step, doc);
    if (!next) break;
    node = next;
  }
  return resolved(doc, node);
}

function resolved(doc: Document, node: Node | undefined): Node | undefined {
  return isAlias(node) ? (node.resolve(doc) as Node | undefined) : node;
}

function childOf(node: Node | undefined, step: PathStep, doc: Document): Node | undefined {
  if (isSeq(node)) return node.items[Number(step)] as Node | undefined;
  if (!isMap(node)) return undefined;
  const own = pairsOf(node).get(String(step));
  if (own) return (own.value ?? own.key) as Node;
  for (const merge of node.items.filter((item) => keyOf(item) === "<<")) {
    const found = childOf(resolved(doc, merge.value as Node), step, doc);
    if (found) return found;
  }
  return undefined;
}
