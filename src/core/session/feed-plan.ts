import { type Feed, feedForSession } from "../feed/feed.ts";
import { type Groundbait, groundbait } from "../feed/groundbait.ts";
import { type Answer, answer } from "../finding.ts";
import { first } from "../lists.ts";
import type { Ml, Mm } from "../units.ts";
import type { FishedSpan } from "./places.ts";

/** Rods that are fished with one rig for a while, and what each of them is fed. */
export interface FedSpan extends FishedSpan {
  /** Which of the session's places they stand at, from 0. */
  readonly place: number;
  readonly rods: number;
  readonly feed: Omit<Feed, "forS" | "note">;
  /** Whether a portion is a ball of groundbait. */
  readonly asBalls: boolean;
}

/** The same with what it uses up. */
export interface FeedRow extends FedSpan {
  /** Of each rod. */
  readonly portions: number;
  /** Of all of them together. */
  readonly volumeMl: Ml;
}

/** What is thrown in of one kind in a session. */
interface FeedTotal {
  readonly what: string;
  readonly volumeMl: Ml;
  /** What to mix, where it is thrown in balls. */
  readonly mix?: Groundbait;
}

export interface FeedPlan {
  /** By the clock. */
  readonly rows: readonly FeedRow[];
  /** What the rows come to, each kind once. */
  readonly totals: readonly FeedTotal[];
}

/**
 * What is thrown in by the clock, and what it comes to: the sum of a kind is the sum of its rows.
 *
 * @returns no answer for a feed or a span that cannot be
 */
export function feedPlan(spans: readonly FedSpan[]): Answer<FeedPlan> {
  const rows: FeedRow[] = [];
  for (const span of spans) {
    const used = feedForSession({ ...span.feed, forS: (span.toMin - span.fromMin) * 60 });
    if (!used.ok) return used;
    const { portions, volumeMl } = used.value;
    rows.push({ ...span, portions, volumeMl: volumeMl * span.rods });
  }
  rows.sort((a, b) => a.fromMin - b.fromMin);
  const kinds = [...new Set(rows.map(({ feed, asBalls }) => `${asBalls}|${feed.what}`))];
  const totals: FeedTotal[] = [];
  const findings = [];
  for (const kind of kinds) {
    const ofKind = rows.filter(({ feed, asBalls }) => `${asBalls}|${feed.what}` === kind);
    const { feed, asBalls } = first(ofKind);
    const volumeMl = ofKind.reduce((sum, row) => sum + row.volumeMl, 0);
    const mix = asBalls ? mixOf(ofKind) : undefined;
    if (mix && !mix.ok) return mix;
    if (mix) findings.push(...mix.findings);
    totals.push({ what: feed.what, volumeMl, ...(mix && { mix: mix.value }) });
  }
  return answer({ rows, totals }, findings);
}

/** The mix for all balls of a kind, of the one size that has the volume of them all. */
function mixOf(rows: readonly FeedRow[]): Answer<Groundbait> {
  const balls = rows.reduce((sum, { portions, rods }) => sum + portions * rods, 0);
  const volumeMl = rows.reduce((sum, row) => sum + row.volumeMl, 0);
  return groundbait(balls, ballDiameterMm(volumeMl / balls));
}

/** Diameter of a ball from its volume: `(6V/π)^⅓`. */
const ballDiameterMm = (volumeMl: Ml): Mm => Math.cbrt((6 * volumeMl * 1000) / Math.PI);
