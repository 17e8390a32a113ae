import type { LockGroups } from "../core/loading/loading.ts";
import type { CountedShot, GroupedShot } from "../core/tackle/shot-groups.ts";
import type { C, G, Ml, Mm, Ms, S, Share } from "../core/units.ts";
import {
  fahrenheitFromCelsius,
  gPerOunce,
  gPerPound,
  mlPerImperialPint,
  mmPerInch,
  mmPerYard,
} from "../core/units.ts";
import type { UnitChoice } from "../model/unit-choice.ts";
import { makeNumberText, type NumberText } from "./number-text.ts";
import { lockText, placesText, shotText, unbroken } from "./shot-text.ts";
import type { Words } from "./words.ts";

/**
 * Quantities as a reader sees them: rounded for the bank, in the units of the guide ("metric first" puts imperial
 * beside). Rounding happens here and nowhere earlier.
 */
export interface Figures {
  /** A water depth, the depth that a float is set for, a rod, a cast: `1.5 m (4 ft 11 in)`. */
  depth(mm: Mm): string;
  /**
   * A length along the line, however long, or another small one, to the centimetre: `30 cm (12 in)`. So the same place has
   * the same figure on page, card, sheet and drawing; water, rods, casts and drift are told in metres, by `depth`.
   */
  gap(mm: Mm): string;
  /** The same without the second system, for labels in drawings. */
  shortDepth(mm: Mm): string;
  shortGap(mm: Mm): string;
  /** A short length from one end of a range to the other: `10 cm to 20 cm`, or one where both are told alike. */
  gapRange(fromMm: Mm, toMm: Mm): string;
  /** From one distance along the line to another: `52–112 cm`; one alone where both are written the same. */
  shortGaps(fromMm: Mm, toMm: Mm): string;
  /** A load, heaviest size first: `AAA + 2 × No 1 + No 8`. */
  shot(shots: readonly CountedShot[]): string;
  /** What is pinched on either side of a float's eye: `2 × BB above, AAA below`. */
  lock(lock: LockGroups): string;
  /** Shot on the line with their places, from the hook up: `No 10 at 32 cm; 4 × No 8 at 52–112 cm`. */
  shotPlaces(line: readonly GroupedShot[]): string;
  /** Where a hook is set, from the overdepth of the shallowest such setting to that of the deepest: `5 cm over depth`. */
  hookSet(fromOverdepthMm: Mm, toOverdepthMm: Mm): string;
  /** The same in running water, where the line hangs in a curve and its length says nothing of the bed. */
  lineSet(fromOverdepthMm: Mm, toOverdepthMm: Mm): string;
  /** Tip showing, to 5 mm: `15 mm`. */
  tip(mm: Mm): string;
  /** A weight, to 0.01 g: `1.6 g`. */
  mass(g: G): string;
  /** A weight as a scale or a rule states it, which may be finer than the bank needs: `0.0635 g`. */
  statedMass(g: G): string;
  /** A breaking strain: `4 lb (1.8 kg)`. */
  strength(g: G): string;
  /** Breaking strains from one to another: `3 lb to 6 lb (1.4 kg to 2.7 kg)`. */
  strengthBand(fromG: G, toG: G): string;
  /** A small size such as a line's or shot's diameter: `0.16 mm`. */
  diameter(mm: Mm): string;
  /** A surface pace: `10 m in 25 s`. */
  pace(ms: Ms): string;
  temperature(c: C): string;
  volume(ml: Ml): string;
  /** As kitchen scales and jugs show it, to 10 g or 10 ml, from one to another: `300–430 g`. */
  kitchenRange(from: number, to: number, unit: "g" | "ml"): string;
  /** A share of one: `70 %`. */
  share(share: Share): string;
  /** A number without a unit, with at most so many decimals. */
  number(value: number, digits: number): string;
  /** A time: `45 s`, `2 min 30 s`. */
  time(s: S): string;
}

function feetAndInches(mm: Mm): string {
  const inches = Math.round(Math.abs(mm) / mmPerInch);
  const sign = mm < 0 && inches > 0 ? "−" : "";
  const feet = Math.floor(inches / 12);
  const rest = inches % 12;
  if (feet === 0) return `${sign}${rest} in`;
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${rest} in`;
}

/** Inches as far as a tape is read in them, feet beyond. */
const tapeInches = 72;

function inchesAlong(mm: Mm, number: NumberText, quartersBelow = 4): string {
  const inches = mm / mmPerInch;
  if (Math.abs(inches) > tapeInches) return feetAndInches(mm);
  return Math.abs(inches) < quartersBelow
    ? `${number(Math.round(inches * 4) / 4, 2)} in`
    : `${number(inches, 0)} in`;
}

/** The pace as an angler takes it: how long a float needs for ten metres or yards. */
function paceOver(ms: Ms, wayMm: Mm, unit: string, number: NumberText): string {
  return `10 ${unit} in ${number((10 * wayMm) / 1000 / ms, 0)} s`;
}

const minutes = (s: number): string => {
  const rest = Math.round(s) % 60;
  const min = Math.floor(Math.round(s) / 60);
  return rest === 0 ? `${min} min` : `${min} min ${rest} s`;
};

/** Figures in the units and the language (a BCP 47 tag) of a guide. */
export function makeFigures(units: UnitChoice, words: Words, language: string): Figures {
  const number = makeNumberText(language);
  const metres = (mm: Mm) => `${number(mm / 1000, 2)} m`;
  const centimetres = (mm: Mm) => `${number(mm / 10, 0)} cm`;
  const inches = (mm: Mm) => inchesAlong(mm, number);
  /** Both systems as the guide wants them. */
  const shown = (metric: string, imperial: string): string =>
    units === "metric" ? metric : units === "imperial" ? imperial : `${metric} (${imperial})`;
  // Rows of a guide stand a centimetre apart or more: where inches stand alone, quarters tell them apart.
  const gaps: Gaps = {
    words,
    shown,
    centimetres,
    inches: units === "imperial" ? (mm) => inchesAlong(mm, number, tapeInches) : inches,
  };
  const one = (metric: string, imperial: string): string => (units === "imperial" ? imperial : metric);
  const pounds = (g: G) =>
    g < gPerPound ? `${number(g / gPerOunce, 0)} oz` : `${number(g / gPerPound, 1)} lb`;
  const shortGap = (mm: Mm) => one(centimetres(mm), inches(mm));
  const shortGaps = (fromMm: Mm, toMm: Mm) => {
    if (shortGap(fromMm) === shortGap(toMm)) return shortGap(fromMm);
    const [from, to] = unitOnce([shortGap(fromMm), shortGap(toMm)]);
    return unbroken(words("figures.range", { from: from!, to: to! }));
  };
  return {
    number,
    depth: (mm) => shown(metres(mm), feetAndInches(mm)),
    gap: (mm) => shown(centimetres(mm), inches(mm)),
    shortDepth: (mm) => one(metres(mm), feetAndInches(mm)),
    gapRange: (from, to) => gapRange(from, to, gaps),
    shortGap,
    shortGaps,
    shot: (shots) => shotText(shots, words),
    lock: (lock) => lockText(lock, words),
    shotPlaces: (line) =>
      placesText(
        line,
        { range: shortGaps, list: (mm) => unitOnce(mm.map(shortGap)).map(unbroken).join(", ") },
        words,
      ),
    hookSet: (from, to) => hookSet(from, to, stillPlaces, gaps),
    lineSet: (from, to) => hookSet(from, to, flowPlaces, gaps),
    tip: (mm) => `${Math.round(mm / 5) * 5} mm`,
    mass: (g) => `${number(g, 2)} g`,
    statedMass: (g) => `${number(g, 4)} g`,
    // Spools and licences speak of pounds wherever float fishing is sold, so pounds come first.
    strength: (g) => {
      if (units === "metric") return `${number(g / 1000, 2)} kg`;
      return units === "imperial" ? pounds(g) : `${pounds(g)} (${number(g / 1000, 1)} kg)`;
    },
    strengthBand: (fromG, toG) => {
      const run = (shownAs: (g: G) => string) =>
        words("figures.from-to", { from: shownAs(fromG), to: shownAs(toG) });
      const kilograms = run((g) => `${number(g / 1000, 1)} kg`);
      if (units === "metric") return kilograms;
      return units === "imperial" ? run(pounds) : `${run(pounds)} (${kilograms})`;
    },
    diameter: (mm) => `${number(mm, 2)} mm`,
    pace: (ms) => one(paceOver(ms, 1000, "m", number), paceOver(ms, mmPerYard, "yd", number)),
    temperature: (c) => shown(`${number(c, 0)} °C`, `${number(fahrenheitFromCelsius(c), 0)} °F`),
    volume: (ml) => {
      const metric = ml < 1000 ? `${number(ml, 0)} ml` : `${number(ml / 1000, 1)} l`;
      // A hundredth of a pint tells nobody anything: a pinch of feed is given in millilitres alone.
      return ml < 100 ? metric : shown(metric, pints(ml, words, number));
    },
    kitchenRange: (from, to, unit) => kitchenRange([from, to], unit, words, number),
    share: (share) => `${number(share * 100, 0)} %`,
    time: (s) => (s < 60 ? `${number(s, 0)} s` : s < 3600 ? minutes(s) : `${number(s / 3600, 1)} h`),
  };
}

/** Plain figures in one unit name it once, at the last: `56` and `206 cm`; but `4 ft 2 in` and `5 ft`. */
function unitOnce(figures: readonly string[]): string[] {
  const plain = figures.map((figure) => /^([\d.,]+)(\s\D+)$/.exec(figure));
  const unit = plain[0]?.[2];
  if (!unit || plain.some((one) => one?.[2] !== unit)) return [...figures];
  return plain.map((one, at) => (at < figures.length - 1 ? one![1]! : one![0]));
}

function pints(ml: Ml, words: Words, number: NumberText): string {
  const count = number(ml / mlPerImperialPint, 1);
  return count === "1" ? words("figures.imperial-pint") : words("figures.imperial-pints", { pints: count });
}

function kitchenRange(range: readonly number[], unit: string, words: Words, number: NumberText): string {
  const [from, to] = range.map((amount) => number(Math.round(amount / 10) * 10, 0)) as [string, string];
  return `${from === to ? from : words("figures.range", { from, to })} ${unit}`;
}

/** What it takes to word a short length. */
interface Gaps {
  readonly words: Words;
  /** Both systems as the guide wants them. */
  readonly shown: (metric: string, imperial: string) => string;
  readonly centimetres: (mm: Mm) => string;
  readonly inches: (mm: Mm) => string;
}

/** A hook nearer to the bed than this touches it [mm]. */
const touchingMm = 5;

/** Names of a line that is too short, right, and too long for the depth. */
type Places = readonly [short: LinePlace, right: LinePlace, over: LinePlace];
type LinePlace = "off-the-bed" | "at-the-bed" | "over-depth" | "short-of-depth" | "to-the-depth";
const stillPlaces: Places = ["off-the-bed", "at-the-bed", "over-depth"];
const flowPlaces: Places = ["short-of-depth", "to-the-depth", "over-depth"];

function hookSet(fromMm: Mm, toMm: Mm, places: Places, gaps: Gaps): string {
  const { words } = gaps;
  const place = (mm: number) => places[Math.abs(mm) < touchingMm ? 1 : mm < 0 ? 0 : 2];
  if (place(fromMm) !== place(toMm)) {
    const end = (mm: number) => hookSet(mm, mm, places, gaps);
    return words("figures.from-to", { from: end(fromMm), to: end(toMm) });
  }
  const gap = gapRange(Math.abs(fromMm), Math.abs(toMm), gaps);
  return words(`figures.${place(fromMm)}`, { gap });
}

function gapRange(fromMm: Mm, toMm: Mm, { words, shown, centimetres, inches }: Gaps): string {
  const run = (length: (mm: Mm) => string): string => {
    const [from, to] = [length(fromMm), length(toMm)];
    return from === to ? from : words("figures.from-to", { from, to });
  };
  return shown(run(centimetres), run(inches));
}
