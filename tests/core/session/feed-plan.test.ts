import convert from "convert";
import fc from "fast-check";
import { expect, test } from "vitest";
import { type FedSpan, feedPlan } from "../../../src/core/session/feed-plan.ts";
import { mlPerImperialPint, mlPerUsPint } from "../../../src/core/units.ts";

const span = (fromMin: number, toMin: number, rods: number, what = "maggots"): FedSpan => ({
  fromMin,
  toMin,
  place: 0,
  rods,
  feed: { what, portionMl: 3, everyS: 45 },
  asBalls: false,
});

const balls = (fromMin: number, toMin: number, rods: number): FedSpan => ({
  ...span(fromMin, toMin, rods, "balls"),
  feed: { what: "balls", portionMl: 150, everyS: 1800 },
  asBalls: true,
});

function plan(spans: readonly FedSpan[]) {
  const made = feedPlan(spans);
  if (!made.ok) throw new Error("no plan");
  return made.value;
}

// By hand: 3 ml every 45 s are 80 portions an hour, 240 ml a rod; four rods for an hour and a half take 1440 ml.
test("feed is portions by the clock for every rod", () => {
  const { rows, totals } = plan([span(600, 690, 4)]);
  expect(rows).toMatchObject([{ portions: 120, volumeMl: 1440 }]);
  expect(totals).toEqual([{ what: "maggots", volumeMl: 1440 }]);
});

// By hand: a ball at once and one each half hour are 3 in an hour and a half begun, for each of two rods.
// 6 balls of 150 ml are 900 ml; at 1.1 g/ml with 0.6 water 619 g dry, at 1.4 g/ml with 0.4 water 900 g.
test("balls of groundbait are counted, and mixed at once for all rods", () => {
  const [total] = plan([balls(600, 690, 2)]).totals;
  expect(total?.mix).toMatchObject({ balls: 6 });
  expect(total?.mix?.wetMl).toBeCloseTo(900, 6);
  expect(total?.mix?.dryLowG).toBeCloseTo(618.75, 6);
  expect(total?.mix?.dryHighG).toBeCloseTo(900, 6);
});

test("rows stand by the clock, and each kind is added up once", () => {
  const { rows, totals } = plan([span(660, 690, 2), balls(600, 660, 1), span(600, 660, 2)]);
  expect(rows.map(({ fromMin }) => fromMin)).toEqual([600, 600, 660]);
  expect(totals.map(({ what }) => what).sort()).toEqual(["balls", "maggots"]);
});

const someSpans = fc.array(
  fc.record({
    fromMin: fc.nat(700),
    minutes: fc.integer({ min: 1, max: 300 }),
    rods: fc.integer({ min: 1, max: 12 }),
    what: fc.constantFrom("maggots", "hemp", "pellets"),
    portionMl: fc.integer({ min: 1, max: 60 }),
    everyS: fc.integer({ min: 20, max: 1800 }),
  }),
  { minLength: 1, maxLength: 8 },
);

test("what is to be brought is what the rows throw in, to the millilitre and to the pint", () => {
  fc.assert(
    fc.property(someSpans, (spans) => {
      const { rows, totals } = plan(
        spans.map(({ fromMin, minutes, rods, ...feed }) => ({
          fromMin,
          toMin: fromMin + minutes,
          place: 0,
          rods,
          feed,
          asBalls: false,
        })),
      );
      for (const { what, volumeMl } of totals) {
        const thrown = rows.filter(({ feed }) => feed.what === what);
        const ml = thrown.reduce(
          (sum, { portions, rods, feed }) => sum + portions * rods * feed.portionMl,
          0,
        );
        expect(volumeMl).toBeCloseTo(ml, 6);
        expect(volumeMl / mlPerImperialPint).toBeCloseTo(convert(ml, "ml").to("l") / 0.568_261_25, 6);
        expect(volumeMl / mlPerUsPint).toBeCloseTo(convert(ml, "ml").to("pints"), 6);
      }
      expect(new Set(totals.map(({ what }) => what))).toEqual(new Set(spans.map(({ what }) => what)));
    }),
    { seed: 20 },
  );
});

test("a feed or a time that cannot be has no plan", () => {
  expect(feedPlan([span(600, 600, 2)]).ok).toBe(false);
  expect(feedPlan([{ ...span(600, 660, 2), feed: { what: "maggots", portionMl: 0, everyS: 45 } }]).ok).toBe(
    false,
  );
});
