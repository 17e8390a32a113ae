import type { Answer, Finding } from "../../core/finding.ts";
import { first } from "../../core/lists.ts";
import { parseQuantity, type QuantityKind } from "../../core/quantity.ts";
import type { InWater } from "../../model/in-water.ts";
import type { BaitEntry, FloatEntry, LessonPlan, Library, Species } from "../../model/library.ts";
import type { MessageCode, MessageValues } from "../../model/message-table.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { Figures } from "../figures.ts";
import type { Words } from "../words.ts";

/** What of a guide live figures are taken from, besides the sums of its rigs and its words: nothing that its texts say. */
export interface LiveLibrary extends Pick<Library, "guide" | "lent" | "scales" | "kits" | "lines"> {
  readonly floats: readonly Omit<FloatEntry, "body">[];
  readonly baits: readonly Omit<BaitEntry, "notes">[];
  readonly species: readonly Omit<Species, "notes">[];
  readonly plans: readonly Omit<LessonPlan, "body">[];
  readonly rigs: readonly { readonly id: string }[];
  readonly pages: readonly { readonly id: string }[];
  readonly knots: readonly { readonly id: string }[];
  readonly images: ReadonlyMap<string, unknown>;
}

/** Rigs by their names, with their sums. */
export type LiveRigs = Pick<ReadonlyMap<string, SolvedRig>, "get" | "keys" | "values">;

/** What live figures are taken from. */
export interface LiveContext {
  readonly library: LiveLibrary;
  readonly solved: LiveRigs;
  readonly words: Words;
  readonly figures: Figures;
}

/** What a directive may say is wrong with it. */
export class Wrong<C extends MessageCode = MessageCode> extends Error {
  constructor(
    readonly code: C,
    readonly values: MessageValues[C],
  ) {
    super(code);
  }
}

/** What a directive asks for has no answer, and why; nothing of that where the error is told in its own file. */
export class NoAnswer extends Error {
  constructor(readonly findings: readonly Finding[] = []) {
    super(findings.map(({ code }) => code).join(", "));
  }
}

/** The value of an answer. @throws NoAnswer where there is none */
export function answered<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new NoAnswer(answer.findings);
  return answer.value;
}

/** What a directive says of itself, by name; an attribute that is missing is an error, unless something stands in for it. */
export type Attributes = (name: string, otherwise?: string) => string;

/** As many as a picture or a table has room for. */
const abreastMax = 12;

/** Names with commas or spaces between them; at least one. */
export function list(at: Attributes, name: string): readonly string[] {
  const names = at(name)
    .split(/[\s,]+/)
    .filter(Boolean);
  if (names.length === 0) throw new Wrong("not-valid", { key: name, problem: "name at least one" });
  return fewEnough(names, name);
}

function fewEnough<T>(values: readonly T[], name: string): readonly T[] {
  if (values.length <= abreastMax) return values;
  throw new Wrong("out-of-range", {
    key: name,
    found: `${values.length} long`,
    bound: `more than ${abreastMax}`,
  });
}

export function oneOf<T extends string>(allowed: readonly T[], typed: string, what: string): T {
  const found = allowed.find((known) => known === typed);
  if (!found) throw unknown(what, typed, allowed);
  return found;
}

export function unknown(what: string, found: string, allowed: readonly string[]): Wrong<"unknown-name"> {
  return new Wrong("unknown-name", { what, found, allowed });
}

export function named<T extends { readonly id: string }>(entries: readonly T[], id: string, what: string): T {
  const found = entries.find((entry) => entry.id === id);
  if (found) return found;
  throw unknown(
    what,
    id,
    entries.map((entry) => entry.id),
  );
}

/** @throws NoAnswer for a rig of the guide's own that cannot be made up: that is told at its file */
export function rigOf(at: Attributes, { library, solved }: LiveContext): SolvedRig {
  const id = at("rig");
  const found = solved.get(id);
  if (found) return found;
  const isOwn = library.rigs.some((rig) => rig.id === id) && !library.lent.has(`rigs/${id}`);
  throw isOwn ? new NoAnswer() : unknown("rig", id, [...solved.keys()]);
}

/** Stops at a rig for still water, of which the water's flow says nothing. */
export function mustFlow({ id, water }: Rig, { solved }: LiveContext): void {
  if (water === "flowing") return;
  const flowing = [...solved.values()].filter(({ rig }) => rig.water === "flowing");
  throw unknown(
    "rig for running water",
    id,
    flowing.map(({ rig }) => rig.id),
  );
}

/** Stands for the first of a rig's depths, whichever that is. */
const firstDepth = "first";

export function depthOf(at: Attributes, context: LiveContext): SolvedDepth {
  const rig = rigOf(at, context);
  const typed = at("depth");
  if (typed === firstDepth) return first(rig.depths);
  const wanted = parseQuantity("length", typed);
  const found = wanted.ok && rig.depths.find(({ depthMm }) => Math.abs(depthMm - wanted.value) < 1);
  if (!found) {
    // With a point, as texts have it whatever their language.
    const depths = rig.depths.map(({ depthMm }) =>
      context.figures.shortDepth(depthMm).replace(/(?<=\d),(?=\d)/, "."),
    );
    throw unknown(`depth of "${rig.rig.id}"`, typed, [...depths, firstDepth]);
  }
  return found;
}

export function inWaterOf(at: Attributes, context: LiveContext): InWater {
  const { inWater } = depthOf(at, context);
  if (!inWater) throw unknown("rig whose bait sinks", at("rig"), []);
  return inWater;
}

/** A quantity more than nothing. */
export function quantity(at: Attributes, kind: QuantityKind, name: string): number {
  return aboveNothing(at(name).trim(), kind, name);
}

/** Quantities more than nothing, typed one after another, parted by commas. */
export function quantities(at: Attributes, kind: QuantityKind, name: string): readonly number[] {
  const values = at(name)
    .split(",")
    .map((part) => aboveNothing(part.trim(), kind, name));
  return fewEnough(values, name);
}

function aboveNothing(typed: string, kind: QuantityKind, name: string): number {
  const read = parseQuantity(kind, typed);
  if (!read.ok) {
    const { problem, unit, examples } = read;
    throw new Wrong("quantity", { problem, unit, kind, examples, found: typed });
  }
  if (read.value > 0) return read.value;
  throw new Wrong("out-of-range", { key: name, found: typed, bound: "not above nothing" });
}
