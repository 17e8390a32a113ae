import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import type { PatternKind } from "../patterns/pattern.ts";
import type { Ml, S } from "../units.ts";
import { mlPerImperialPint, mlPerUsPint } from "../units.ts";
import type { WaterKind } from "../water/water.ts";

/** A session as feed is reckoned for it, where a rig does not say another [s]. Common practice, no source. */
export const usualSessionS = 4 * 3600;

/** Loose feed: what, how much at a time, how often. */
export interface Feed {
  readonly what: string;
  readonly portionMl: Ml;
  readonly everyS: S;
  /** Length of the session that it is meant for. */
  readonly forS: S;
  readonly note?: string;
  /** A portion is a ball of groundbait. */
  readonly groundbait?: true;
}

/** Bait for a session. */
export interface SessionFeed {
  readonly portions: number;
  readonly volumeMl: Ml;
  readonly imperialPints: number;
  readonly usPints: number;
}

/**
 * Bait that a rate of feeding uses up in its session: one portion at the start, and one each time the interval is over
 * before the end.
 */
export function feedForSession({ portionMl, everyS, forS }: Feed): Answer<SessionFeed> {
  if (!(portionMl > 0 && portionMl < Infinity && everyS > 0 && everyS < Infinity)) {
    return noAnswer("feed-rate");
  }
  if (!(forS > 0 && forS < Infinity)) return noAnswer("session-length");
  // A share of the interval too small to measure keeps rounding from adding a portion.
  const portions = Math.ceil(forS / everyS - 1e-9);
  const volumeMl = portions * portionMl;
  return answer({
    portions,
    volumeMl,
    imperialPints: volumeMl / mlPerImperialPint,
    usPints: volumeMl / mlPerUsPint,
  });
}

/** How each pattern wants its feed: a falling bait little and often, a bait on the bed seldom and more. */
const feedWanted: Readonly<Record<PatternKind, "often" | "seldom" | "either">> = {
  "strung out": "often",
  bulk: "seldom",
  "spread bulk": "seldom",
  "shirt button": "often",
  "tapered shirt button": "often",
  lift: "either",
  "all at the float": "often",
};

/** Between often and seldom [s]. Common practice, no source: a pinch every half minute, or a handful or two an hour. */
const feedOftenS = 300;

/**
 * Whether the feed suits the pattern. In running water each run down the swim wants its feed, so a bulk may be fed
 * often there.
 *
 * @returns a warning where it does not
 */
export function checkFeed(feed: Feed, pattern: PatternKind, water: WaterKind): readonly Finding[] {
  const wanted = feedWanted[pattern];
  const { everyS } = feed;
  if (wanted === "often" && everyS > feedOftenS) return [warning("feed-too-seldom", { pattern, everyS })];
  if (wanted === "seldom" && water === "still" && everyS < feedOftenS) {
    return [warning("feed-too-often", { pattern, everyS })];
  }
  return [];
}
