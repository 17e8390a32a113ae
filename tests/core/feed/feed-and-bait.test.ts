import { expect, test } from "vitest";
import { feedAndBait } from "../../../src/core/feed/feed-and-bait.ts";
import { bulked, rigWith, sinks, strungOut, valueIn } from "../sink/rigs.ts";

test("a bulk takes the bait down through slow feed, and behind stones", () => {
  const sink = sinks(rigWith(bulked), "heap");
  const slow = valueIn(feedAndBait(sink, 0.05));
  expect(slow.thirds).toEqual(["through the feed", "through the feed", "through the feed"]);
  expect(slow.feedTenthsS[4]).toBeCloseTo(1000 / 50, 9);
  expect(slow.soonerS[9]).toBeCloseTo((0.98 * 2000) / 50 - sink.tenthsS[9]!, 9);
  expect(valueIn(feedAndBait(sink, 2)).thirds).toEqual([
    "behind the feed",
    "behind the feed",
    "behind the feed",
  ]);
});

test("in the lower third a strung-out bait keeps nearer to the feed than a bulked one", () => {
  const ratio = (shot: typeof strungOut) => {
    const sink = sinks(rigWith(shot), "straight");
    return valueIn(feedAndBait(sink, 0.1)).soonerS[9]!;
  };
  expect(ratio(strungOut)).toBeLessThan(ratio(bulked));
});

// The hang is 2 m; its lower third is taken to 98 %, since its end is approached ever slower.
test.each([
  [0, 2000 / 3],
  [1, 2000 / 3],
  [2, 0.98 * 2000 - (2 / 3) * 2000],
] as const)(
  "in third %i feed within 15 %% of the bait's pace goes with it, no other does",
  (third, wayMm) => {
    const sink = sinks(rigWith(strungOut), "heap");
    const against = (share: number) => {
      const feedMs = (share * wayMm) / 1000 / sink.thirdsS[third];
      return valueIn(feedAndBait(sink, feedMs)).thirds[third];
    };
    expect(against(1.149)).toBe("with the feed");
    expect(against(1.151)).toBe("behind the feed");
    expect(against(1 / 1.149)).toBe("with the feed");
    expect(against(1 / 1.151)).toBe("through the feed");
  },
);

test("feed at the bait's own pace goes with it", () => {
  const sink = sinks(rigWith(strungOut), "heap");
  const lowerPaceMs = ((0.98 - 2 / 3) * 2000) / 1000 / sink.thirdsS[2];
  expect(valueIn(feedAndBait(sink, lowerPaceMs)).thirds[2]).toBe("with the feed");
  expect(feedAndBait(sink, 0).ok).toBe(false);
});
