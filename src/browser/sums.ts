import { type Answer, answer, type Finding } from "../core/finding.ts";
import { first } from "../core/lists.ts";
import type { Sink } from "../core/sink/sink-of-rig.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { Conditions, RigShelf } from "../model/choosing.ts";
import type { ChoosingRules } from "../model/choosing-rules.ts";
import { inMemory } from "../model/kept.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { chooseRigs } from "../solve/choosing/choose.ts";
import { drawnThrough } from "../solve/drawn-through.ts";
import { type FromBox, fallFromBox, fromBox, rigThatCan, toldLater, worthBuying } from "../solve/from-box.ts";
import { solveInWater } from "../solve/in-water.ts";
import { type SunkInWay, sinkInWay, type WayToSink } from "../solve/sink-in-way.ts";
import { solveRig } from "../solve/solve-rig.ts";

/** A rig for a reader's water, and the reader's own shot where they were told. */
interface ToMake {
  readonly rig: Rig;
  readonly box?: Tub;
}

interface ToSink {
  readonly rig: Rig;
  readonly ways: readonly WayToSink[];
}

/** A rig made up, as it is in still air. */
export interface Made {
  readonly solved: SolvedRig;
  /** Where it was made from a box. */
  readonly boxed?: { readonly rig: Rig; readonly box: Tub; readonly from: FromBox };
}

/** The last rigs: a page asks for one after the other of the same, and to send one made up takes it longer than to make it. */
const lately = inMemory(2);
const solvedOf = (rig: Rig): Answer<SolvedRig> => lately("solved", JSON.stringify(rig), () => solveRig(rig));

/** The rig of the figures, from the reader's box where one was told. */
function make({ rig, box }: ToMake): Answer<Made> {
  if (!box) {
    const solved = solvedOf(rig);
    return solved.ok ? answer({ solved: solved.value }) : solved;
  }
  const from = fromBox(rig, box);
  return from.ok ? answer({ solved: from.value.made, boxed: { rig, box, from: from.value } }) : from;
}

/** The rig's depth with the water's part and what its box lacks; nothing where the fall cannot be had. */
function inWater({ solved, boxed }: Made): SolvedDepth | undefined {
  const [depth] = solved.depths;
  const made = depth && wet(solved, depth);
  if (!made?.ok) return undefined;
  if (!boxed) return made.value;
  const { rig, box, from } = boxed;
  const [ownDepth] = from.own.depths;
  const own = ownDepth && wet(from.own, ownDepth);
  const fall: readonly Finding[] = own?.ok ? fallFromBox(made.value, own.value) : [];
  const later = [...fall, ...worthBuying(rig, box, from)];
  return { ...made.value, findings: toldLater(made.value.findings, later) };
}

function wet(solved: SolvedRig, depth: SolvedDepth): Answer<SolvedDepth> {
  const water = solveInWater(solved, depth);
  return water.ok ? answer({ ...depth, inWater: water.value }) : water;
}

/** What a rig's films show of its first depth. */
interface Filmed {
  readonly solved: SolvedRig;
  readonly depth: SolvedDepth;
}

/** Nothing where the rig cannot be made. */
function firstDepth<T>(rig: Rig, of: (filmed: Filmed) => T | undefined): T | undefined {
  const solved = solvedOf(rig);
  const depth = solved.ok ? solved.value.depths[0] : undefined;
  return solved.ok && depth ? of({ solved: solved.value, depth }) : undefined;
}

/** Without the line's way down but its end: a page that is sent thousands of places has its engine clear them up between frames. */
function lightened(depth: SolvedDepth | undefined): SolvedDepth | undefined {
  if (!depth?.inWater) return depth;
  const endAlone = (one: Sink): Sink => ({
    ...one,
    line: { ...one.line, moments: one.line.moments.slice(-1) },
  });
  const { sink, sister } = depth.inWater;
  const light = {
    sink: sink.map(endAlone),
    ...(sister && { sister: { ...sister, sink: sister.sink.map(endAlone) } }),
  };
  return { ...depth, inWater: { ...depth.inWater, ...light } };
}

/** The first depth of a rig sinking in several ways; nothing where one of them cannot be had. */
function sinkInWays({ rig, ways }: ToSink): readonly SunkInWay[] | undefined {
  return firstDepth(rig, ({ solved, depth }) => {
    const sunk = ways.flatMap((way) => {
      const one = sinkInWay(solved, depth, way);
      return one.ok && one.value ? [one.value] : [];
    });
    return sunk.length === ways.length ? sunk : undefined;
  });
}

/** What rigs are chosen by, and for which water. */
interface ToChoose {
  readonly rules: ChoosingRules;
  readonly conditions: Conditions;
  readonly shelf: RigShelf;
}

/** Rigs for a water, the best first, each with how it is set, and what rules out the others. */
function choose({ rules, conditions, shelf }: ToChoose) {
  const { offered, ruledOut } = chooseRigs(rules, conditions, shelf);
  return {
    offered: offered.map(({ entry, made, points, because }) => {
      const { floatToHookMm } = first(made.depths);
      return { id: entry.id, points, because, floatToHookMm };
    }),
    ruledOut: ruledOut.map(({ entry, because }) => ({ id: entry.id, because })),
  };
}

/** All that a page has reckoned, by name: in a worker where there is one, as a phone takes longer for it than a tap may. */
const sums = {
  make,
  inWater,
  worthBuying: ({ rig, box = [] }: ToMake) => worthBuying(rig, box),
  /** The rig's depth in steps small enough to be drawn through by hand. */
  drawnThrough: (rig: Rig) => firstDepth(rig, ({ solved, depth }) => lightened(drawnThrough(solved, depth))),
  /** The rig's depth with the water's part. */
  sunk: (rig: Rig) => firstDepth(rig, ({ solved }) => lightened(inWater({ solved }))),
  sinkInWays,
  choose,
  /** How it is told that this rig can be made of the box, where it can. */
  canBeMade: ({ rig, box }: ToMake) => rigThatCan([rig], () => box)?.finding,
};

export type SumName = keyof typeof sums;
export type Asked<N extends SumName> = Parameters<(typeof sums)[N]>[0];
export type Told<N extends SumName> = ReturnType<(typeof sums)[N]>;

/** What a page sends to its worker. */
export type SumAsked = { readonly [N in SumName]: { readonly name: N; readonly asked: Asked<N> } }[SumName];

/** Does the sum that is asked for. */
export function sumOf({ name, asked }: SumAsked): Told<SumName> {
  return (sums[name] as (of: typeof asked) => Told<SumName>)(asked);
}
