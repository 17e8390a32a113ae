import convert from "convert";
import { describe, expect, it } from "vitest";
import type { G, Mm } from "../../src/core/units.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";

const words = makeWords({
  figures: {
    "imperial-ounces": "{ounces} fl oz",
    teaspoons: "{amount}{spoons, plural, one { teaspoon} other { teaspoons}}",
    "imperial-pints": "{pints, plural, one {# imperial pint} other {# imperial pints}}",
    "us-ounces": "{ounces} US fl oz",
    "us-pints": "{pints, plural, one {# US pint} other {# US pints}}",
    "us-quarts": "{quarts, plural, one {# US quart} other {# US quarts}}",
    pace: "{way} in {time}",
    "at-the-bed": "just touching the bed",
    "off-the-bed": "{gap} off the bed",
    "over-depth": "{gap} over depth",
    "from-to": "{from} to {to}",
  },
});
const both = makeFigures("metric first", words, "en");
const metric = makeFigures("metric", words, "en");
const imperial = makeFigures("imperial", words, "en");
const us = makeFigures("us", words, "en");

describe("figures in the units of the guide", () => {
  it("puts imperial beside metric where the guide is metric first", () => {
    expect(both.depth(1500)).toBe("1.5 m (4 ft 11 in)");
    expect(both.gap(300)).toBe("30 cm (12 in)");
    expect(both.gap(1040)).toBe("104 cm (41 in)");
    expect(both.gap(4790)).toBe("479 cm (15 ft 9 in)");
    // Beside centimetres, inches from four on are whole: 106 mm are 4.17 in.
    expect(both.gap(106)).toBe("11 cm (4 in)");
    expect(both.gap(96)).toBe("10 cm (3.75 in)");
    expect(both.temperature(10)).toBe("10 °C (50 °F)");
  });

  it("tells no time of a moment as none, and no minute as sixty seconds", () => {
    expect([0.3, 0.96, 59.4, 59.7, 3599.7].map((s) => metric.time(s))).toEqual([
      "0.3 s",
      "1 s",
      "59 s",
      "1 min",
      "1 h",
    ]);
    expect(metric.time(0)).toBe("0 s");
  });

  it("shows one system where the guide asks for one", () => {
    expect(metric.depth(1500)).toBe("1.5 m");
    expect(imperial.depth(convert(6, "feet").to("millimeters"))).toBe("6 ft");
    expect(imperial.gap(convert(3.5, "inches").to("millimeters"))).toBe("3.5 in");
    expect([72, 72.6].map((inches) => imperial.gap(inches * 25.4))).toEqual(["72 in", "6 ft 1 in"]);
    expect([600, 620].map(imperial.about)).toEqual(["24 in", "2 ft"]);
  });

  it("marks feet and inches where room is short, to the half inch, in inches as far as a tape goes and, beside depths, in feet", () => {
    const { compact } = imperial;
    const told = (count: number) => compact.shortGap(convert(count, "inches").to("millimeters"));
    expect([0.25, 3.75, 4.1, 29.5, 36.4, 96, 144].map(told)).toEqual([
      "¼″",
      "3¾″",
      "4″",
      "29½″",
      "36½″",
      "96″",
      "12′0″",
    ]);
    const beside = (count: number) => compact.besideDepth(convert(count, "inches").to("millimeters"));
    expect([3.75, 11.5, 12, 29.5, 36.4, 96].map(beside)).toEqual([
      "3¾″",
      "11½″",
      "1′0″",
      "2′5½″",
      "3′0½″",
      "8′0″",
    ]);
    expect([compact.shortDepth(1500), compact.shortDepth(1829)]).toEqual(["4′11″", "6′0″"]);
    expect([-76.2, -1.27].map(compact.shortGap)).toEqual(["−3″", "0″"]);
    expect([compact.tip(15), compact.size(6)]).toEqual(["0.6″", "0.24″"]);
    expect(compact.shortGaps(750, 1000)).toBe("29½\u00A0to\u00A039½″");
    expect(compact.compact).toBe(compact);
    expect(metric.compact.shortGap(570)).toBe("57 cm");
  });

  it("tells a length where room is short to within a quarter of an inch of what it is", () => {
    for (let mm = 5; mm < 3000; mm += 7) {
      const [, feet, whole, fraction] = /^(?:(\d+)′)?(?:(\d+)?([¼½¾])?″)?$/.exec(
        imperial.compact.shortGap(mm),
      )!;
      const parts = fraction ? "¼½¾".indexOf(fraction) + 1 : 0;
      const told = 12 * Number(feet ?? 0) + Number(whole ?? 0) + parts / 4;
      expect(Math.abs(told - convert(mm, "millimeters").to("inches")), `${mm} mm`).toBeLessThan(0.2501);
    }
  });

  it("speaks of line in pounds, as spools do", () => {
    expect(both.strength(convert(4, "pounds").to("grams"))).toBe("4 lb (1.8 kg)");
    expect(both.strength(convert(12, "ounces").to("grams"))).toBe("12 oz (0.3 kg)");
    expect(both.shortStrength(convert(4, "pounds").to("grams"))).toBe("4 lb");
    expect(imperial.shortStrength(convert(4, "pounds").to("grams"))).toBe("4 lb");
    expect(metric.shortStrength(convert(4, "pounds").to("grams"))).toBe("1.81 kg");
  });

  it("gives a pinch of feed in millilitres alone, a session's in pints too", () => {
    expect(both.volume(5)).toBe("5 ml");
    expect(both.volume(convert(2, "imperial pints").to("milliliters"))).toBe("1.1 l (2 imperial pints)");
    expect(both.volume(568.26125)).toBe("568 ml (1 imperial pint)");
    expect([999, 1000, 1040, 4500].map(metric.volume)).toEqual(["999 ml", "1 l", "1 l", "4.5 l"]);
  });

  it("rounds the tip to 5 mm and no finer", () => {
    expect(both.tip(12.4)).toBe("10 mm");
    expect(both.tip(12.6)).toBe("15 mm");
    // No tip is told to the millimetre, so none is sure to nothing.
    expect([0, 2.4, 7, 8].map((mm) => both.tipBand(mm))).toEqual(["5 mm", "5 mm", "5 mm", "10 mm"]);
  });

  it("states a weight as finely as a scale or a rule does", () => {
    expect([0.0635, 0.06, 1.6, 28.35].map(both.statedMass)).toEqual([
      "0.0635 g",
      "0.06 g",
      "1.6 g",
      "28.35 g",
    ]);
  });

  it("tells a time in seconds below a minute, in hours from one on", () => {
    expect([45, 60, 150, 3540, 3600, 5400].map(metric.time)).toEqual([
      "45 s",
      "1 min",
      "2 min 30 s",
      "59 min",
      "1 h",
      "1.5 h",
    ]);
  });

  it("gives a pace as the time over ten metres or yards", () => {
    expect(both.pace(0.4)).toBe("10 m in 25 s");
    expect(imperial.pace(0.36576)).toBe("10 yd in 25 s");
  });

  it("says where a hook is set in one phrase, with each system once", () => {
    expect(both.hookSet(0, 0)).toBe("just touching the bed");
    expect(both.hookSet(50, 50)).toBe("5 cm (2 in) over depth");
    expect(both.hookSet(-600, -100)).toBe("60 cm to 10 cm (24 in to 4 in) off the bed");
    expect(metric.hookSet(320, 500)).toBe("32 cm to 50 cm over depth");
    expect(metric.hookSet(-20, 20)).toBe("2 cm off the bed to 2 cm over depth");
    // 315 mm and 318 mm are both read as 32 cm.
    expect(metric.hookSet(315, 318)).toBe("32 cm over depth");
  });

  it("writes a length below nothing with a minus sign and no zero below nothing", () => {
    expect(metric.gap(-100)).toBe("−10 cm");
    expect(metric.gap(-1)).toBe("0 cm");
  });
});

/**
 * Sources: UK Units of Measurement Regulations 1995 (pint 568.26125 ml, of 20 fluid ounces); NIST Handbook 44, Appendix C
 * (liquid pint 473.1765 ml, of 16 fluid ounces; liquid quart 946.353 ml); inch of 25.4 mm.
 */
describe("figures in one system alone", () => {
  it.each([
    [473.1765, "0.8 imperial pints", "1 US pint"],
    [946.353, "1.7 imperial pints", "1 US quart"],
    [2 * 568.26125, "2 imperial pints", "1.2 US quarts"],
    [29.5735, "1 fl oz", "1 US fl oz"],
    // By the level teaspoon of 5 ml, in halves: common practice, no source.
    [1, "½ teaspoon", "½ teaspoon"],
    [3, "½ teaspoon", "½ teaspoon"],
    [5, "1 teaspoon", "1 teaspoon"],
    [12, "2½ teaspoons", "2½ teaspoons"],
  ])("measures %d ml by the pint of its own country", (ml, british, american) => {
    expect([imperial.volume(ml), us.volume(ml)]).toEqual([british, american]);
  });

  it.each([imperial, us])("tells no length in millimetres, and each tip apart from the next", (figures) => {
    expect([5, 10, 15, 20, 25].map(figures.tip)).toEqual(["0.2 in", "0.4 in", "0.6 in", "0.8 in", "1 in"]);
    expect([0.16, 0.5, 0.52, 3.1, 43].map(figures.diameter)).toEqual([
      "0.0063 in",
      "0.0197 in",
      "0.02 in",
      "0.122 in",
      "1.7 in",
    ]);
    expect(figures.about(3000)).toBe("10 ft");
    expect(figures.area(3)).toBe("0.47 in²");
    expect(figures.speed(0.3048)).toBe("1 ft/s");
    expect(figures.kitchenRange(300, 430, "g")).toBe("10.5 to 15 oz");
  });

  it("measures dough with the jug of its country", () => {
    expect(imperial.kitchenRange(568.26125, 568.26125, "ml")).toBe("20 fl oz");
    expect(us.kitchenRange(473.1765, 946.353, "ml")).toBe("16 to 32 US fl oz");
  });

  it("has rulers of that system, the bar to check a print by among them", () => {
    expect(metric.small(metric.ruler.check.lengthMm)).toBe("100 mm");
    expect(us.small(us.ruler.check.lengthMm)).toBe("4 in");
    // In centimetres, and in half inches.
    expect([metric, us].map(({ ruler }) => ruler.check.lengthMm / ruler.check.parts)).toEqual([10, 12.7]);
  });
});

describe("days", () => {
  /** Source: Unicode CLDR, long dates of the locales. */
  it.each([
    ["en", "20 November 2026"],
    ["en-US", "November 20, 2026"],
    ["de", "20. November 2026"],
    ["fr", "20 novembre 2026"],
  ])("are written as in %s", (language, day) => {
    expect(makeFigures("metric", words, language).date("2026-11-20")).toBe(day);
  });
});

/** Decimal signs. Source: Unicode CLDR, numbers of the locales `de` and `fr`. */
describe("settings a centimetre apart", () => {
  it.each(["metric", "imperial", "metric first", "us"] as const)("never read alike in %s units", (units) => {
    const figures = makeFigures(units, words, "en");
    for (let mm = -1700; mm <= 1700; mm += 1)
      if (Math.abs(mm) >= 5 && Math.abs(mm + 10) >= 5)
        expect(figures.hookSet(mm, mm), `${mm} mm`).not.toBe(figures.hookSet(mm + 10, mm + 10));
  });
});

describe("figures in the language of the guide", () => {
  it.each([
    ["en", "0.16 mm"],
    ["de", "0,16 mm"],
    ["fr", "0,16 mm"],
  ])("has the decimal sign of %s", (language, shown) => {
    expect(makeFigures("metric", words, language).diameter(0.16)).toBe(shown);
  });

  it("parts no thousands and writes a true minus", () => {
    expect(metric.number(-12345.678, 1)).toBe("−12345.7");
  });

  it("writes no minus before nothing", () => {
    expect(metric.number(-0.004, 2)).toBe("0");
  });
});

/** The compiler holds this: without the error that it expects, `npm run types` fails. */
describe("units at the joints between rooms", () => {
  it("lets no length stand for a weight, no weight for a time", () => {
    const long: Mm = 1000;
    const heavy: G = 1;
    // @ts-expect-error a length is no weight
    expect(metric.mass(long)).toBe("1000 g");
    // @ts-expect-error a weight is no time
    expect(metric.time(heavy)).toBe("1 s");
    expect(metric.depth(long + 500)).toBe("1.5 m");
  });
});
