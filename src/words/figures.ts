import { toldBandMm, toldTipMm } from "../core/float/tip.ts";
import type { LockGroups } from "../core/loading/loading.ts";
import type { CountedShot, GroupedShot } from "../core/tackle/shot-groups.ts";
import type { C, G, Ml, Mm, Ms, S, Share } from "../core/units.ts";
import { once } from "../model/kept.ts";
import { inFeetAlone, type UnitChoice } from "../model/unit-choice.ts";
import { makeDateText } from "./date-text.ts";
import { makeNumberText, makeTypedText } from "./number-text.ts";
import { lockText, placesText, shotText, unbroken } from "./shot-text.ts";
import {
  feetAndPounds,
  inchesAlong,
  metricUnits,
  type Ruler,
  shortFeet,
  type UnitSystem,
} from "./unit-systems.ts";
import type { Words } from "./words.ts";

/**
 * Quantities as a reader sees them: rounded for the bank, in the units of the guide ("metric first" puts imperial
 * beside). Rounding happens here and nowhere earlier.
 */
export interface Figures {
  /** The same where room is short, as on cards: `4′9″` for `57 in`. */
  readonly compact: Figures;
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
  /** A length that is read beside a depth, such as the line to the hook. */
  besideDepth(mm: Mm): string;
  /** How much more than the depth the line to the hook is told to be [mm], below 0 less: alike for all depths where it is so. */
  moreThanDepthMm(set: LineSet): Mm;
  /**
   * The line to the hook [mm], for `gap`: the depth as it is told, and what is told to be more or less. So no rule
   * contradicts a table, however coarse their steps are.
   */
  settingMm(set: LineSet): Mm;
  /**
   * The line that lies on the bed [mm], for `besideDepth`: what is told of line and float, less the depth as it is told. So
   * whoever adds up the figures of a drawing finds no centimetre wanting.
   */
  lyingMm(set: LineSet & { readonly draughtMm: Mm }): Mm;
  /** A short length from one end of a range to the other: `10 cm to 20 cm`, or one where both are told alike. */
  gapRange(fromMm: Mm, toMm: Mm): string;
  /** From one distance along the line to another: `52 to 112 cm`; one alone where both are written the same. */
  shortGaps(fromMm: Mm, toMm: Mm): string;
  /** A load, heaviest size first: `AAA + 2 × No 1 + No 8`. */
  shot(shots: readonly CountedShot[]): string;
  /** What is pinched on either side of a float's eye: `2 × BB above, AAA below`. */
  lock(lock: LockGroups): string;
  /** Shot on the line with their places, from the hook up: `No 10 at 32 cm; 4 × No 8 at 52 to 112 cm`. */
  shotPlaces(line: readonly GroupedShot[]): string;
  /** Where a hook is set, from the overdepth of the shallowest such setting to that of the deepest: `5 cm over depth`. */
  hookSet(fromOverdepthMm: Mm, toOverdepthMm: Mm): string;
  /** The same in running water, where the line hangs in a curve and its length says nothing of the bed. */
  lineSet(fromOverdepthMm: Mm, toOverdepthMm: Mm): string;
  /** Tip showing, to 5 mm: `15 mm`. */
  tip(mm: Mm): string;
  /** How far a tip may stand from what is told of it, to either side; never nothing. */
  tipBand(mm: Mm): string;
  /** A small length, to the millimetre: `12 mm`. */
  small(mm: Mm): string;
  /** A size by which things are known, such as a pellet's: `6 mm`, `0.24 in`. */
  size(mm: Mm): string;
  /** A length that need not be exact: `3 m`, `10 ft`. */
  about(mm: Mm): string;
  /** A weight, to 0.01 g: `1.6 g`. */
  mass(g: G): string;
  /** A weight as a scale or a rule states it, which may be finer than the bank needs: `0.0635 g`. */
  statedMass(g: G): string;
  /** A breaking strain: `4 lb (1.8 kg)`. */
  strength(g: G): string;
  /** The same without the second system: `4 lb`. */
  shortStrength(g: G): string;
  /** Breaking strains from one to another: `3 lb to 6 lb (1.4 kg to 2.7 kg)`. */
  strengthBand(fromG: G, toG: G): string;
  /** A small size such as a line's or shot's diameter: `0.16 mm`. */
  diameter(mm: Mm): string;
  /** A surface that meets the water: `3 cm²`. */
  area(cm2: number): string;
  /** A surface pace: `10 m in 25 s`. */
  pace(ms: Ms): string;
  /** The same as a speed: `0.4 m/s`. */
  speed(ms: Ms): string;
  temperature(c: C): string;
  volume(ml: Ml): string;
  /** As kitchen scales and jugs show it, to 10 g or 10 ml, from one to another: `300 to 430 g`. */
  kitchenRange(from: number, to: number, unit: "g" | "ml"): string;
  /** A share of one: `70 %`. */
  share(share: Share): string;
  /** A number without a unit, with at most so many decimals. */
  number(value: number, digits: number): string;
  /** What is typed with a decimal point, such as `1.7 m`, with the language's own decimal sign. */
  typed(text: string): string;
  /** A title within a sentence: in small letters, unless the language writes nouns with capitals. */
  inSentence(title: string): string;
  /** A day, from its ISO date: `20 November 2026`. */
  date(iso: string): string;
  /** The same without its year: `20 November`. */
  day(iso: string): string;
  /** How a ruler in true size is divided. */
  readonly ruler: Ruler;
  /** A time: `45 s`, `2 min 30 s`. */
  time(s: S): string;
}

/** For which depth, and how far from float or stop knot to the hook, a rig is set. */
interface LineSet {
  readonly depthMm: Mm;
  readonly floatToHookMm: Mm;
}

/** The nearest whole number of steps. */
const inSteps = (mm: Mm, stepMm: Mm): Mm => Math.round(mm / stepMm) * stepMm;

/** Languages that write nouns with a capital: German and Luxembourgish. */
const capitalNouns = /^(?:de|lb)\b/;

const minutes = (s: number): string => {
  const rest = Math.round(s) % 60;
  const min = Math.floor(Math.round(s) / 60);
  return rest === 0 ? `${min} min` : `${min} min ${rest} s`;
};

/** Figures in the units and the language (a BCP 47 tag) of a guide. */
export function makeFigures(units: UnitChoice, words: Words, language: string): Figures {
  return figuresWith(units, words, language, (feet) => feet);
}

function figuresWith(
  units: UnitChoice,
  words: Words,
  language: string,
  asTold: (feet: UnitSystem) => UnitSystem,
): Figures {
  const number = makeNumberText(language);
  const date = once(() => makeDateText(language, { dateStyle: "long" }));
  const metric = metricUnits(words, number);
  const feet = asTold(feetAndPounds(units === "us" ? "us" : "imperial", words, number));
  /** Beside centimetres, which tell apart, inches from four on are whole. */
  const beside = { ...feet, gap: (mm: Mm) => inchesAlong(mm, number, 4) };
  const own = inFeetAlone(units) ? feet : metric;
  /** Both systems as the guide wants them. */
  const shown = (tell: (system: UnitSystem) => string): string =>
    units === "metric first" ? `${tell(metric)} (${tell(beside)})` : tell(own);
  const shortGaps = (fromMm: Mm, toMm: Mm) => {
    if (own.gap(fromMm) === own.gap(toMm)) return own.gap(fromMm);
    const [from, to] = unitOnce([own.gap(fromMm), own.gap(toMm)]);
    return unbroken(words("figures.from-to", { from: from!, to: to! }));
  };
  // Where a comma is the decimal sign, "32, 72 cm" would be read as one figure.
  const listed = number(0.5, 1).includes(",") ? (all: readonly string[]) => all : unitOnce;
  const gaps: Gaps = { words, shown };
  const moreThanDepthMm = ({ depthMm, floatToHookMm }: LineSet) =>
    inSteps(floatToHookMm - depthMm, own.settingSteps.moreMm);
  // Spools and licences speak of pounds wherever float fishing is sold, so pounds come first.
  const firstOnSpools = units === "metric first" ? feet : own;
  const pounds = (tell: (system: UnitSystem) => string) =>
    units === "metric first" ? `${tell(feet)} (${tell(metric)})` : tell(own);
  const inKilograms = units === "metric";
  return {
    get compact() {
      return inFeetAlone(units) && asTold !== shortFeet
        ? figuresWith(units, words, language, shortFeet)
        : this;
    },
    number,
    typed: makeTypedText(language),
    inSentence: (title) => (capitalNouns.test(language) ? title : title.toLowerCase()),
    // Few ask for them, and a format takes long to make.
    date: (iso) => date()(iso),
    day: (iso) => makeDateText(language, { day: "numeric", month: "long" })(iso),
    ruler: own.ruler,
    depth: (mm) => shown(({ depth }) => depth(mm)),
    gap: (mm) => shown(({ gap }) => gap(mm)),
    moreThanDepthMm,
    settingMm: (set) => inSteps(set.depthMm, own.settingSteps.depthMm) + moreThanDepthMm(set),
    lyingMm: (set) => moreThanDepthMm(set) + inSteps(set.draughtMm, own.settingSteps.moreMm),
    shortDepth: own.depth,
    about: own.about,
    gapRange: (from, to) => gapRange(from, to, gaps),
    shortGap: own.gap,
    besideDepth: own.besideDepth,
    shortGaps,
    shot: (shots) => shotText(shots, words),
    lock: (lock) => lockText(lock, words),
    shotPlaces: (line) =>
      placesText(
        line,
        { range: shortGaps, list: (mm) => listed(mm.map(own.gap)).map(unbroken).join(", ") },
        words,
      ),
    hookSet: (from, to) => hookSet(from, to, stillPlaces, gaps),
    lineSet: (from, to) => hookSet(from, to, flowPlaces, gaps),
    tip: (mm) => own.small(toldTipMm(mm)),
    tipBand: (mm) => own.small(toldBandMm(mm)),
    small: own.small,
    size: own.size,
    // Makers weigh shot and floats in grams, whatever a reader measures in.
    mass: (g) => `${number(g, 2)} g`,
    statedMass: (g) => `${number(g, 4)} g`,
    strength: (g) => (inKilograms ? metric.strength(g) : pounds(({ strengthBeside }) => strengthBeside(g))),
    shortStrength: (g) => (inKilograms ? metric.strength(g) : firstOnSpools.strengthBeside(g)),
    strengthBand: (fromG, toG) =>
      pounds(({ strengthBeside }) =>
        words("figures.from-to", { from: strengthBeside(fromG), to: strengthBeside(toG) }),
      ),
    diameter: own.diameter,
    area: own.area,
    pace: own.pace,
    speed: own.speed,
    temperature: (c) => shown(({ temperature }) => temperature(c)),
    volume: (ml) =>
      // A hundredth of a pint tells nobody anything: a pinch of feed is given in millilitres alone.
      units === "metric first" && ml < 100 ? metric.volume(ml) : shown(({ volume }) => volume(ml)),
    kitchenRange: own.kitchen,
    share: (share) => `${number(share * 100, 0)} %`,
    time: (s) => {
      const wholeS = Math.round(s);
      // What takes a moment does not take none.
      if (wholeS < 60) return `${number(s, wholeS === 0 ? 1 : 0)} s`;
      return wholeS < 3600 ? minutes(s) : `${number(s / 3600, 1)} h`;
    },
  };
}

/** Plain figures in one unit name it once, at the last: `56` and `206 cm`; but `4 ft 2 in` and `5 ft`. */
function unitOnce(figures: readonly string[]): string[] {
  const plain = figures.map((figure) => /^([\d.,¼½¾]+)(\s?[^\d¼½¾]+)$/.exec(figure));
  const unit = plain[0]?.[2];
  if (!unit || plain.some((one) => one?.[2] !== unit)) return [...figures];
  return plain.map((one, at) => (at < figures.length - 1 ? one![1]! : one![0]));
}

/** What it takes to word a short length. */
interface Gaps {
  readonly words: Words;
  /** Both systems as the guide wants them. */
  readonly shown: (tell: (system: UnitSystem) => string) => string;
}

/** A hook nearer to the bed than this touches it [mm]. */
export const touchingMm = 5;

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

function gapRange(fromMm: Mm, toMm: Mm, { words, shown }: Gaps): string {
  return shown(({ gap }) => {
    const [from, to] = [gap(fromMm), gap(toMm)];
    return from === to ? from : words("figures.from-to", { from, to });
  });
}
