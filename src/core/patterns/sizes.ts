import type { PatternSpec } from "./pattern.ts";

/** The sizes that a pattern asks for. */
interface AskedSizes {
  /** Named for a place of their own: telltale, droppers, the shot strung out, the anchor. */
  readonly named: readonly string[];
  /** Of which a group may be made. */
  readonly group: readonly string[];
}

export function sizesOf(spec: PatternSpec): AskedSizes {
  switch (spec.kind) {
    case "strung out":
      return { named: [spec.telltale.size, spec.size], group: spec.alsoSizes ?? [] };
    case "bulk":
    case "spread bulk":
      return { named: [spec.telltale.size, ...spec.droppers], group: spec.sizes };
    case "shirt button":
    case "tapered shirt button":
      return { named: [spec.telltale.size], group: spec.sizes };
    case "lift":
      return { named: [spec.anchor], group: [] };
    case "all at the float":
      return { named: [], group: [] };
  }
}

/** The same pattern of other shot: each named size by what stands for it, groups of the sizes given. */
export function withSizes(
  spec: PatternSpec,
  standIn: (size: string) => string,
  group: readonly string[],
): PatternSpec {
  const named = "telltale" in spec && { telltale: { ...spec.telltale, size: standIn(spec.telltale.size) } };
  switch (spec.kind) {
    case "strung out":
      return { ...spec, ...named, size: standIn(spec.size), ...(spec.alsoSizes && { alsoSizes: group }) };
    case "bulk":
    case "spread bulk":
      return { ...spec, ...named, droppers: spec.droppers.map(standIn), sizes: group };
    case "shirt button":
    case "tapered shirt button":
      return { ...spec, ...named, sizes: group };
    case "lift":
      return { ...spec, anchor: standIn(spec.anchor) };
    case "all at the float":
      return spec;
  }
}
