import { type Answer, answer, noAnswer } from "../finding.ts";
import { paired } from "../lists.ts";
import type { Sink } from "../sink/sink-of-rig.ts";
import type { Ms, S, Share } from "../units.ts";

/** The bait against loose feed: it overtakes it, keeps with it, or is left behind. */
type Against = "through the feed" | "with the feed" | "behind the feed";

export interface FeedAndBait {
  /** Time of the feed to each tenth of the bait's hang, in still water. */
  readonly feedTenthsS: readonly S[];
  /** How much sooner than feed thrown in with it the bait is at each tenth; below 0 is later. */
  readonly soonerS: readonly S[];
  /** Bait against feed in the upper, middle and lower third. */
  readonly thirds: readonly [Against, Against, Against];
}

/** Paces within this share of each other go together. */
const sameShare = 0.15;

/**
 * How the hook bait's fall compares with that of loose feed in still water.
 *
 * @param feedFallMs steady fall of the feed [m/s], above 0
 * @returns an error `feed-drift` for a feed that does not fall
 */
export function feedAndBait(sink: Sink, feedFallMs: Ms): Answer<FeedAndBait> {
  if (!(feedFallMs > 0)) return noAnswer("feed-drift");
  const feedTo = (share: Share) => (share * sink.hangMm) / 1000 / feedFallMs;
  const feedTenthsS = sink.tenthsS.map((_, i) => feedTo(i < 9 ? (i + 1) / 10 : sink.lastShare));
  const [upper, middle, lower] = sink.thirdsS;
  return answer({
    feedTenthsS,
    soonerS: paired(feedTenthsS, sink.tenthsS).map(([feedS, baitS]) => feedS - baitS),
    thirds: [
      against(upper, feedTo(1 / 3)),
      against(middle, feedTo(1 / 3)),
      against(lower, feedTo(sink.lastShare - 2 / 3)),
    ],
  });
}

function against(baitS: S, feedS: S): Against {
  if (baitS < feedS / (1 + sameShare)) return "through the feed";
  return baitS <= feedS * (1 + sameShare) ? "with the feed" : "behind the feed";
}
