import convert from "convert";
import { describe, expect, it } from "vitest";
import { checkFeed, feedForSession } from "../../../src/core/feed/feed.ts";
import { groundbait } from "../../../src/core/feed/groundbait.ts";

const feed = (portionMl: number, everyS: number, hours = 4) => ({
  what: "maggots",
  portionMl,
  everyS,
  forS: hours * 3600,
});

describe("feed for a session", () => {
  // A 3 ml pinch every 45 s is 80 an hour: 4 h take 320 pinches, 960 ml; 960/568.26125 = 1.689 imperial pints,
  // 960/473.176473 = 2.029 US pints.
  it("is rate times hours, in millilitres and both pints", () => {
    const session = feedForSession(feed(3, 45));
    expect(session).toMatchObject({ ok: true, value: { portions: 320, volumeMl: 960 } });
    expect(session.ok && session.value.imperialPints).toBeCloseTo(1.689, 3);
    expect(session.ok && session.value.usPints).toBeCloseTo(2.029, 3);
    expect(session.ok && session.value.usPints).toBeCloseTo(convert(960, "ml").to("pints"), 6);
  });

  it("counts the portion that an interval begun still wants", () => {
    expect(feedForSession(feed(250, 1800))).toMatchObject({ value: { portions: 8 } });
    expect(feedForSession(feed(250, 1800, 4.1))).toMatchObject({ value: { portions: 9 } });
  });

  it.each([
    [0, 45, 4, "feed-rate"],
    [Number.POSITIVE_INFINITY, 45, 4, "feed-rate"],
    [3, 0, 4, "feed-rate"],
    [3, Number.NaN, 4, "feed-rate"],
    [3, 45, -1, "session-length"],
  ])("of %d ml every %d s for %d h says %s", (portionMl, everyS, hours, code) => {
    expect(feedForSession(feed(portionMl, everyS, hours)).findings[0]!.code).toBe(code);
  });
});

describe("feed and pattern (common practice, no source)", () => {
  it.each([
    ["strung out", "still", 45, []],
    ["strung out", "still", 1800, ["feed-too-seldom"]],
    ["shirt button", "flowing", 1800, ["feed-too-seldom"]],
    ["bulk", "still", 1800, []],
    ["bulk", "still", 45, ["feed-too-often"]],
    ["bulk", "flowing", 60, []],
    ["spread bulk", "still", 45, ["feed-too-often"]],
    ["lift", "still", 45, []],
    ["lift", "still", 3600, []],
  ] as const)("%s in %s water fed every %d s: %j", (pattern, water, everyS, codes) => {
    expect(checkFeed(feed(3, everyS), pattern, water).map(({ code }) => code)).toEqual(codes);
  });
});

describe("groundbait", () => {
  // A ball of 65 mm holds π/6 · 65³ = 143 793 mm³ = 143.79 ml; four of them 575.17 ml. Dry from 575.17 · 1.1/1.6 =
  // 395 g with 158 ml of water to 575.17 · 1.4/1.4 = 575 g with 345 ml.
  it("of four balls takes 0.4 to 0.6 kg dry", () => {
    const mix = groundbait(4);
    if (!mix.ok) throw new Error("no mix");
    expect(mix.value.wetMl).toBeCloseTo(575.17, 2);
    expect(mix.value.dryLowG).toBeCloseTo(395.43, 1);
    expect(mix.value.dryHighG).toBeCloseTo(575.17, 1);
    expect(mix.value.waterLowMl).toBeCloseTo(158.17, 1);
    expect(mix.value.waterHighMl).toBeCloseTo(345.1, 1);
    expect(mix.value.heldBackG).toBeCloseTo(143.79, 1);
    expect(mix.findings).toEqual([]);
  });

  it("warns beyond a kilogram dry", () => {
    expect(groundbait(12).findings[0]!.code).toBe("groundbait-too-much");
  });

  it("wants a ball to mix for", () => {
    expect(groundbait(0).findings[0]!.code).toBe("groundbait-balls");
    expect(groundbait(1).ok).toBe(true);
    expect(groundbait(4, Number.NaN).findings[0]!.code).toBe("groundbait-balls");
  });
});
