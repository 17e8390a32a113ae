import { entry, first, last, neighbours } from "../lists.ts";
import type { Mm } from "../units.ts";
import { type Cubic, heightOf, monotoneCubic } from "./monotone-cubic.ts";

/** A depth that somebody plumbed. */
export interface Sounding {
  readonly fromBankMm: Mm;
  readonly depthMm: Mm;
}

/** The bed along one line of soundings. */
export interface Bed {
  /** At least two, from the bank out. */
  readonly soundings: readonly Sounding[];
  readonly curve: Cubic;
  /** The steepest that the bed can be taken to be, down for across. */
  readonly steepest: number;
}

/** How deep the water is at a place, and how sure that is. */
export interface BedDepth {
  readonly depthMm: Mm;
  /** Between these it lies, if the bed is nowhere steeper than where it was plumbed. */
  readonly shallowestMm: Mm;
  readonly deepestMm: Mm;
  /** To the nearest sounding. */
  readonly nearestMm: Mm;
  readonly isNear: boolean;
}

/** A part of a line of soundings, from the bank out. */
interface Stretch {
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** A steep stretch of the bed with shallower water on one side of it. */
interface Ledge extends Stretch {
  readonly shallowMm: Mm;
  readonly deepMm: Mm;
  /** Whether the deep side is the one away from the bank. */
  readonly isDrop: boolean;
}

/** So well is a depth plumbed from the bank; common practice, no source. */
const plumbedWithinMm = 30;
/** A bed of which little is known may be as steep as this, down for across; common practice, no source. */
const usualSlope = 0.2;
/** A depth is known from a sounding no further off than this; common practice, no source. */
const nearMm = 1500;
/** What is at least as steep and as high as this is a ledge; common practice, no source. */
const ledgeSlope = 0.35;
const ledgeMm = 250;

/** @param soundings at two or more places, in any order, no two at one */
export function bedOf(soundings: readonly Sounding[]): Bed {
  const sorted = [...soundings].sort((a, b) => a.fromBankMm - b.fromBankMm);
  const steepest = Math.max(usualSlope, ...neighbours(sorted).map(([a, b]) => Math.abs(slopeOf(a, b))));
  const curve = monotoneCubic(sorted.map(({ fromBankMm, depthMm }) => ({ x: fromBankMm, y: depthMm })));
  return { soundings: sorted, curve, steepest };
}

const slopeOf = (a: Sounding, b: Sounding) => (b.depthMm - a.depthMm) / (b.fromBankMm - a.fromBankMm);

/**
 * Depth at a distance from the bank, by the monotone cubic through the soundings; nothing nearer than the first of them or
 * beyond the last. The most and the least are those of any bed through the soundings that is no steeper than `steepest`.
 */
export function bedDepth({ soundings, curve, steepest }: Bed, fromBankMm: Mm): BedDepth | undefined {
  if (fromBankMm < first(soundings).fromBankMm || fromBankMm > last(soundings).fromBankMm) return undefined;
  const depthMm = heightOf(curve, fromBankMm);
  const off = (one: Sounding) => Math.abs(one.fromBankMm - fromBankMm);
  const least = Math.max(...soundings.map((one) => one.depthMm - steepest * off(one)));
  const most = Math.min(...soundings.map((one) => one.depthMm + steepest * off(one)));
  const nearestMm = Math.min(...soundings.map(off));
  return {
    depthMm,
    shallowestMm: Math.max(0, Math.min(least, depthMm) - plumbedWithinMm),
    deepestMm: Math.max(most, depthMm) + plumbedWithinMm,
    nearestMm,
    isNear: nearestMm <= nearMm,
  };
}

/** Depths of places are told, and rigs made up for them, to so much; common practice, no source. */
const toldToMm = 10;

/** How deep it is at a distance from the bank, as it is told and as rigs are made up for it; nothing beyond the soundings. */
export function depthToFishMm(bed: Bed, fromBankMm: Mm): Mm | undefined {
  const depth = bedDepth(bed, fromBankMm);
  return depth && Math.max(toldToMm, Math.round(depth.depthMm / toldToMm) * toldToMm);
}

/** Stretches, from the bank out, in which no sounding is near. */
export function gapsOf({ soundings }: Bed): readonly Stretch[] {
  return neighbours(soundings)
    .map(([a, b]) => ({ fromMm: a.fromBankMm + nearMm, toMm: b.fromBankMm - nearMm }))
    .filter(({ fromMm, toMm }) => toMm > fromMm);
}

/** Ledges from the bank out. What is steep from the first sounding on is the bank itself. */
export function ledgesOf({ soundings }: Bed): readonly Ledge[] {
  const ledges: Ledge[] = [];
  for (let at = 1; at < soundings.length - 1; ) {
    const to = endOfSlope(soundings, at);
    const [a, b] = [entry(soundings, at), entry(soundings, to)];
    const isBank = at === 1 && isSteep(soundings, 0) && isSameWay(soundings, 0, 1);
    const isHigh = Math.abs(b.depthMm - a.depthMm) >= ledgeMm;
    if (to > at && isHigh && !isBank) ledges.push(ledgeBetween(a, b));
    at = Math.max(to, at + 1);
  }
  return ledges;
}

/**
 * The shelf beside a ledge: how far the bed goes on nearly level from its shallow end, by soundings; nothing where that begins
 * to slope at once.
 */
export function shelfOf({ soundings }: Bed, { fromMm, toMm, isDrop }: Ledge): Stretch | undefined {
  const endMm = isDrop ? fromMm : toMm;
  const away = isDrop
    ? soundings.filter(({ fromBankMm }) => fromBankMm <= endMm).reverse()
    : soundings.filter(({ fromBankMm }) => fromBankMm >= endMm);
  const level = neighbours(away).findIndex(([a, b]) => Math.abs(slopeOf(a, b)) >= usualSlope);
  const farMm = entry(away, level < 0 ? away.length - 1 : level).fromBankMm;
  return farMm === endMm ? undefined : { fromMm: Math.min(endMm, farMm), toMm: Math.max(endMm, farMm) };
}

function ledgeBetween(a: Sounding, b: Sounding): Ledge {
  return {
    fromMm: a.fromBankMm,
    toMm: b.fromBankMm,
    shallowMm: Math.min(a.depthMm, b.depthMm),
    deepMm: Math.max(a.depthMm, b.depthMm),
    isDrop: b.depthMm > a.depthMm,
  };
}

const riseAt = (soundings: readonly Sounding[], at: number) =>
  slopeOf(entry(soundings, at), entry(soundings, at + 1));
const isSteep = (soundings: readonly Sounding[], at: number) => Math.abs(riseAt(soundings, at)) >= ledgeSlope;
const isSameWay = (soundings: readonly Sounding[], one: number, other: number) =>
  riseAt(soundings, one) * riseAt(soundings, other) > 0;

/** The sounding at which the steep slope that begins at one ends; that one itself where none does. */
function endOfSlope(soundings: readonly Sounding[], from: number): number {
  let to = from;
  while (to < soundings.length - 1 && isSteep(soundings, to) && isSameWay(soundings, from, to)) to++;
  return to;
}
