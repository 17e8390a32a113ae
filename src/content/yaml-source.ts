import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type YAMLMap,
} from "yaml";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place } from "../model/message.ts";

type PathStep = string | number;

/** A YAML text as plain data, with the place of every value kept. */
export interface YamlSource {
  readonly data: unknown;
  readonly messages: readonly Message[];
  /** Place of the value at a path, or of the nearest part of the path that is there. */
  placeOf(path: readonly PathStep[]): Place;
  /** Place of a key itself, for keys that should not be there. */
  placeOfKey(path: readonly PathStep[], key: string): Place;
}

/**
 * Reads a YAML text.
 *
 * @param file path to name in messages
 * @param lineOffset lines above the text in its file, such as the `---` over a front matter
 */
export function readYaml(text: string, file: string, lineOffset = 0): YamlSource {
  const lines = new LineCounter();
  const doc = parseDocument(text, { lineCounter: lines, prettyErrors: false, resolveKnownTags: false });
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line: line + lineOffset, column: col };
  };
  const fault = (problem: string, offset: number) => message("yaml-syntax", placeAt(offset), { problem });
  const messages = [...doc.errors, ...doc.warnings].map((error) => fault(error.message, error.pos[0]));
  let data: unknown;
  try {
    if (messages.length === 0) data = doc.toJS({ maxAliasCount: limits.aliases.most });
  } catch (error) {
    // Aliases that point nowhere, or that multiply beyond all measure.
    messages.push(fault((error as Error).message, 0));
  }
  const found = (path: readonly PathStep[]) => nearestNode(doc, path);
  return {
    data,
    messages,
    placeOf: (path) => placeAt(found(path)?.range?.[0] ?? 0),
    placeOfKey: (path, key) => {
      const node = found(path);
      const pair = isMap(node) ? node.items.find((item) => keyOf(item) === key) : undefined;
      const keyNode = pair?.key as Node | undefined;
      return placeAt(keyNode?.range?.[0] ?? node?.range?.[0] ?? 0);
    },
  };
}

/** The pairs of each map that places were asked of, by their keys: there may be a thousand of them. */
const pairs = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();

function pairsOf(node: YAMLMap): ReadonlyMap<string, Pair> {
  const known = pairs.get(node) ?? new Map(node.items.filter(isPair).map((pair) => [keyOf(pair), pair]));
  pairs.set(node, known);
  return known;
}

function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : String(pair.key);
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
