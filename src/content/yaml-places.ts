import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type LineCounter,
  type Node,
  type Pair,
} from "yaml";

export type PathStep = string | number;

interface Spot {
  readonly line: number;
  readonly column: number;
}

/** Where a value stands in its text, and the values in it. Plain data, so that it can be kept. */
interface PlacedValue extends Spot {
  readonly inside?: ReadonlyMap<string, PlacedValue>;
}

/** The places of all values of a text without fault; none where it has aliases, which the parser alone follows. */
export function placesIn({ contents }: Document, lines: LineCounter): PlacedValue | undefined {
  return placed((contents ?? undefined) as Node | undefined, lines);
}

function placed(node: Node | undefined, lines: LineCounter): PlacedValue | undefined {
  if (isAlias(node)) return undefined;
  const { line, col: column } = lines.linePos(node?.range?.[0] ?? 0);
  const inside = new Map<string, PlacedValue>();
  for (const [key, value] of valuesIn(node)) {
    const found = key === "<<" ? undefined : placed(value, lines);
    if (!found) return undefined;
    inside.set(key, found);
  }
  return { line, column, ...(inside.size > 0 && { inside }) };
}

function valuesIn(node: Node | undefined): readonly (readonly [key: string, value: Node])[] {
  if (isSeq(node)) return node.items.map((item, i) => [String(i), item as Node]);
  if (!isMap(node)) return [];
  return node.items.filter(isPair).map((pair) => [keyOf(pair), (pair.value ?? pair.key) as Node]);
}

export function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : String(pair.key);
}

/** Place of the value at a path, or of the nearest part of the path that is there. */
export function placeIn(places: PlacedValue, path: readonly PathStep[]): Spot {
  let found = places;
  for (const step of path) {
    const next = found.inside?.get(String(step));
    if (!next) break;
    found = next;
  }
  return found;
}
