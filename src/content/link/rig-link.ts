import type { z } from "zod";
import type { PatternKind, PatternSpec } from "../../core/patterns/pattern.ts";
import type { KnotPlace, TiedKnot } from "../../core/tackle/knots.ts";
import { fishWithoutLine } from "../../model/fish-without-line.ts";
import type {
  BaitEntry,
  FloatEntry,
  Guide,
  KnotEntry,
  PlaceOf,
  RigEntry,
  ScaleEntry,
  TubEntry,
} from "../../model/library.ts";
import { type LineTable, lineOfFish } from "../../model/line-table.ts";
import type { Hook, Rig } from "../../model/rig.ts";
import type { Reading, ReadProse } from "../reading.ts";
import type { loadingSchema, rigSchema } from "../schema/rig-schema.ts";
import { eachOnce } from "../taken-twice.ts";
import type { YamlSource } from "../yaml-source.ts";

/** What a rig's names are looked up in. */
interface Shelves {
  readonly floats: ReadonlyMap<string, FloatEntry>;
  readonly baits: ReadonlyMap<string, BaitEntry>;
  readonly hooks: ReadonlyMap<number, Hook>;
  readonly knots: ReadonlyMap<string, KnotEntry>;
  readonly scale: ScaleEntry;
  readonly tubs: ReadonlyMap<string, TubEntry>;
  readonly guide: Guide;
  readonly lines?: LineTable | undefined;
}

/** A rig with its names looked up; undefined where one of them is not there. */
export function linkRig(
  read: ReadProse<z.output<typeof rigSchema>>,
  shelves: Shelves,
  reading: Reading,
): RigEntry | undefined {
  const { id, value, yaml } = read;
  const { guide, scale } = shelves;
  const float = reading.lookUp(shelves.floats, value.float, "float", yaml.placeOf(["float"]));
  const bait = reading.lookUp(shelves.baits, value.bait, "bait", yaml.placeOf(["bait"]));
  const hooks = new Map([...shelves.hooks].map(([size, hook]) => [String(size), hook]));
  const hook = reading.lookUp(hooks, String(value.hook), "hook size", yaml.placeOf(["hook"]));
  const tub = reading.lookUp(shelves.tubs, value.tub ?? guide.tubId, "tub", yaml.placeOf(["tub"]));
  namedOnce(read, reading);
  checkSizes(value.loading, scale, yaml.placeOf, reading);
  if (!float || !bait || !hook || !tub) return undefined;
  const { feed } = value;
  const rig: Rig = {
    id,
    title: value.title,
    purpose: value.purpose,
    water: value.water,
    float: float.float,
    mainLine: { strengthG: value["main-line"].strength, diameterMm: value["main-line"].diameter },
    hookLine: { strengthG: value["hook-length"].strength, diameterMm: value["hook-length"].diameter },
    hookLengthMm: value["hook-length"].length,
    hook,
    bait: bait.bait,
    feed: {
      what: feed.what,
      portionMl: feed.portion,
      everyS: feed.every,
      forS: feed.for,
      ...(feed.note && { note: feed.note }),
      ...(feed.groundbait && { groundbait: true as const }),
    },
    setting: value.setting,
    overdepthMm: value.overdepth,
    depthsMm: value.depths,
    pattern: patternOf(value.loading),
    lockShareMin: "lock-share" in value.loading ? value.loading["lock-share"] : 0,
    tub: tub.tub,
    scaleId: scale.id,
    scaleTitle: scale.title,
    scaleSizes: scale.sizes,
    conditions: guide.conditions,
    pacesMs: value.paces,
    outfit: value.whip === undefined ? "rod and reel" : "whip",
    rodLengthMm: value.whip ?? guide.rodLengthMm,
    ...(value["held-back"] !== undefined && { heldBackShare: value["held-back"] }),
    knots: tiedKnots(read, shelves, reading),
    leadRule: guide.leadRule,
    plummets: guide.plummets,
  };
  return {
    id,
    path: read.source.file,
    title: value.title,
    summary: value.purpose,
    body: read.body,
    rig,
    placeOf: yaml.placeOf,
    level: value.level,
    catches: value.catches,
    useWhen: value["use-when"],
    notWhen: value["not-when"],
    changeFirst: value["change-first"],
  };
}

/** Says which depth or fish of a rig stands there twice, in another unit or case perhaps. */
function namedOnce({ value, yaml }: ReadProse<z.output<typeof rigSchema>>, reading: Reading): void {
  const { depths } = yaml.data as { readonly depths: readonly unknown[] };
  const fish = value.catches.map((name) => name.toLowerCase());
  eachOnce(
    reading,
    value.depths,
    (at) => yaml.placeOf(["depths", at]),
    (at) => String(depths[at]),
  );
  eachOnce(
    reading,
    fish,
    (at) => yaml.placeOf(["catches", at]),
    (at) => String(value.catches[at]),
  );
}

/** Looks up the names in rigs whose other keys are wrong: all that is wrong with one is told at once. */
export function lookUpNames(shelves: Shelves, reading: Reading): void {
  for (const { path, yaml } of reading.broken)
    if (path.startsWith("rigs/")) lookUpNamesIn(yaml, shelves, reading);
}

function lookUpNamesIn(
  { data, placeOf }: YamlSource,
  { floats, baits, tubs, lines }: Shelves,
  reading: Reading,
): void {
  const look = <T>(key: string, what: string, shelf: ReadonlyMap<string, T>) => {
    const typed = (data as Readonly<Record<string, unknown>> | null)?.[key];
    if (typeof typed === "string" && typed !== "") reading.lookUp(shelf, typed, what, placeOf([key]));
  };
  look("float", "float", floats);
  look("bait", "bait", baits);
  look("tub", "tub", tubs);
  const fish = (data as Readonly<Record<string, unknown>> | null)?.catches;
  if (!lines || !Array.isArray(fish)) return;
  for (const [at, name] of fish.entries()) {
    if (typeof name === "string" && !lineOfFish(lines, name))
      reading.messages.push(fishWithoutLine(lines, name, placeOf(["catches", at])));
  }
}

/** The knots that the line's strength hangs on; one whose share of strength nobody gave is left out. */
function tiedKnots(
  { value, yaml }: ReadProse<z.output<typeof rigSchema>>,
  { knots }: Shelves,
  reading: Reading,
): readonly TiedKnot[] {
  const tied = (name: "hook" | "loop", ...places: KnotPlace[]): TiedKnot[] => {
    const knot = reading.lookUp(knots, value.knots[name], "knot", yaml.placeOf(["knots", name]));
    if (!knot?.strengthShare) return [];
    const {
      id,
      title,
      strengthShare: { low, high, basis },
    } = knot;
    return places.map((where) => ({
      where,
      knot: { id, title, strengthShareLow: low, strengthShareHigh: high, basis },
    }));
  };
  return [...tied("hook", "hook"), ...tied("loop", "hook length loop", "main line loop")];
}

type Loading = z.output<typeof loadingSchema>;

/** Patterns that no front matter can be written for; there must be none, or what follows does not compile. */
type Unwritten = Exclude<PatternKind, Loading["pattern"]>;

/** The loading as the core knows it. */
function patternOf(loading: Loading): [Unwritten] extends [never] ? PatternSpec : never {
  switch (loading.pattern) {
    case "strung out":
      return { kind: "strung out", size: loading.size, gapMm: loading.gap, telltale: telltaleOf(loading) };
    case "bulk":
      return { kind: "bulk", ...bulkOf(loading) };
    case "spread bulk":
      return { kind: "spread bulk", ...bulkOf(loading), overMm: loading.over };
    case "shirt button":
    case "tapered shirt button":
      return { kind: loading.pattern, sizes: loading.sizes, telltale: telltaleOf(loading) };
    case "lift":
      return { kind: "lift", anchor: loading.anchor, fromHookMm: loading["from-hook"] };
    case "all at the float":
      return { kind: "all at the float" };
  }
}

type WithTelltale = Extract<Loading, { telltale: unknown }>;

function telltaleOf({ telltale }: WithTelltale) {
  const fromHookMm = telltale["from-hook"];
  return { size: telltale.size, ...(fromHookMm !== undefined && { fromHookMm }) };
}

function bulkOf(loading: Extract<Loading, { droppers: unknown }>) {
  return {
    sizes: loading.sizes,
    share: loading.share ?? 1,
    fromHookMm: loading["from-hook"],
    droppers: loading.droppers,
    telltale: telltaleOf(loading),
  };
}

/** Every size a loading names must be in the scale. */
function checkSizes(loading: Loading, scale: ScaleEntry, placeOf: PlaceOf, reading: Reading): void {
  const sizes = new Map(scale.sizes.map((size) => [size.name, size]));
  const check = (name: string, ...path: (string | number)[]): void => {
    reading.lookUp(sizes, name, `shot in the scale "${scale.title}" called`, placeOf(["loading", ...path]));
  };
  if ("size" in loading) check(loading.size, "size");
  if ("sizes" in loading) for (const [at, name] of loading.sizes.entries()) check(name, "sizes", at);
  if ("droppers" in loading) for (const [at, name] of loading.droppers.entries()) check(name, "droppers", at);
  if ("anchor" in loading) check(loading.anchor, "anchor");
  if ("telltale" in loading) check(loading.telltale.size, "telltale", "size");
}
