import type { C, G, Ml, Mm, Ms } from "../core/units.ts";
import {
  fahrenheitFromCelsius,
  gPerOunce,
  gPerPound,
  mlPerImperialPint,
  mlPerUsPint,
  mmPerFoot,
  mmPerInch,
  mmPerYard,
} from "../core/units.ts";
import type { NumberText } from "./number-text.ts";
import type { Words } from "./words.ts";

/** Quantities as one system of units alone tells them. */
export interface UnitSystem {
  depth(mm: Mm): string;
  gap(mm: Mm): string;
  /** A length that is read beside a depth, such as the line to the hook: in feet where that is. */
  besideDepth(mm: Mm): string;
  /** Steps in which a depth, and what the line to the hook is more or less, are told [mm]. */
  readonly settingSteps: { readonly depthMm: Mm; readonly moreMm: Mm };
  /** To the millimetre, or so near to it as a tape in inches is read. */
  small(mm: Mm): string;
  /** A size by which things are known: the same, but finer where that says another. */
  size(mm: Mm): string;
  /** To the hundredth of a millimetre, or as fine. */
  diameter(mm: Mm): string;
  /** A length that need not be exact: `3 m`. */
  about(mm: Mm): string;
  area(cm2: number): string;
  strength(g: G): string;
  /** A strength beside that of the other system. */
  strengthBeside(g: G): string;
  pace(ms: Ms): string;
  speed(ms: Ms): string;
  temperature(c: C): string;
  volume(ml: Ml): string;
  /** A weight or a volume, whatever it is, from one to another, as kitchen scales and jugs show it. */
  kitchen(from: number, to: number, unit: "g" | "ml"): string;
  /** How a ruler in true size is divided. */
  readonly ruler: Ruler;
}

/** A ruler of these units: centimetres in ten parts, or inches in eight. */
export interface Ruler {
  readonly unit: "cm" | "in";
  readonly unitMm: Mm;
  readonly parts: number;
  /** Units of the ruler along the edge of a card. */
  readonly cardUnits: number;
  /** Along a strip for a whole rig: from one tick to the next, how many to a figure, and to what places are told on it. */
  readonly strip: { readonly tickMm: Mm; readonly ticksAFigure: number; readonly toldMm: Mm };
  /** Beside a float's tip, in what a tip is told in: from one tick to the next, how many to a figure, and to one of its unit. */
  readonly tip: TipScale;
  /** The bar that a print is checked by, and in how many it is divided. */
  readonly check: CheckedBar;
}

export interface TipScale {
  readonly tickMm: Mm;
  readonly ticksAFigure: number;
  readonly ticksAUnit: number;
  readonly unit: "mm" | "in";
}

export interface CheckedBar {
  readonly lengthMm: Mm;
  readonly parts: number;
}

export const centimetreRuler: Ruler = {
  unit: "cm",
  unitMm: 10,
  parts: 10,
  cardUnits: 8,
  strip: { tickMm: 10, ticksAFigure: 5, toldMm: 10 },
  tip: { tickMm: 1, ticksAFigure: 10, ticksAUnit: 1, unit: "mm" },
  check: { lengthMm: 100, parts: 10 },
};

const inchRuler: Ruler = {
  unit: "in",
  unitMm: mmPerInch,
  parts: 8,
  cardUnits: 3,
  strip: { tickMm: mmPerInch / 2, ticksAFigure: 2, toldMm: mmPerInch / 4 },
  tip: { tickMm: mmPerInch / 10, ticksAFigure: 5, ticksAUnit: 10, unit: "in" },
  check: { lengthMm: 4 * mmPerInch, parts: 8 },
};

/** The pace as an angler takes it: how long a float needs for ten metres or yards. */
function paceOver(ms: Ms, wayMm: Mm, unit: string, words: Words, number: NumberText): string {
  const time = `${number((10 * wayMm) / 1000 / ms, 0)} s`;
  return words("figures.pace", { way: `10 ${unit}`, time });
}

/** A range of whole steps, with its unit once. */
function stepped(range: readonly number[], step: number, unit: string, words: Words, number: NumberText) {
  const [from, to] = range.map((amount) => number(Math.round(amount / step) * step, 1)) as [string, string];
  return `${from === to ? from : words("figures.from-to", { from, to })} ${unit}`;
}

export function metricUnits(words: Words, number: NumberText): UnitSystem {
  const metres = (mm: Mm) => `${number(mm / 1000, 2)} m`;
  const centimetres = (mm: Mm) => `${number(mm / 10, 0)} cm`;
  return {
    depth: metres,
    gap: centimetres,
    besideDepth: centimetres,
    settingSteps: { depthMm: 10, moreMm: 10 },
    small: (mm) => `${number(mm, 0)} mm`,
    size: (mm) => `${number(mm, 0)} mm`,
    diameter: (mm) => `${number(mm, 2)} mm`,
    about: metres,
    area: (cm2) => `${number(cm2, 1)} cm²`,
    strength: (g) => `${number(g / 1000, 2)} kg`,
    strengthBeside: (g) => `${number(g / 1000, 1)} kg`,
    pace: (ms) => paceOver(ms, 1000, "m", words, number),
    speed: (ms) => `${number(ms, 2)} m/s`,
    temperature: (c) => `${number(c, 0)} °C`,
    volume: (ml) => (ml < 1000 ? `${number(ml, 0)} ml` : `${number(ml / 1000, 1)} l`),
    kitchen: (from, to, unit) => stepped([from, to], 10, unit, words, number),
    ruler: centimetreRuler,
  };
}

/** A pint and what it has of ounces: British and American ones differ in both. */
const pints = {
  imperial: { pintMl: mlPerImperialPint, ounces: 20, ounce: "figures.imperial-ounces" },
  us: { pintMl: mlPerUsPint, ounces: 16, ounce: "figures.us-ounces" },
} as const;

/** A level teaspoon: common practice, no source. */
const mlPerTeaspoon = 5;

/** Less than this is measured by the spoon: nobody has a hundredth of an ounce to measure with. */
const leastOunceMl = 25;

/** So many halves of a teaspoon, one at the least: `½ teaspoon`, `1½ teaspoons`. */
function spoons(ml: Ml, words: Words): string {
  const halves = Math.max(1, Math.round((2 * ml) / mlPerTeaspoon));
  const whole = Math.floor(halves / 2);
  const amount = `${whole > 0 ? whole : ""}${halves % 2 === 1 ? "½" : ""}`;
  return words("figures.teaspoons", { amount, spoons: Math.ceil(halves / 2) });
}

/** Whether tenths of an inch tell a length to a fiftieth: those of each five millimetres. */
const isOfTenths = (mm: Mm) => Math.abs(Math.round((10 * mm) / mmPerInch) * (mmPerInch / 10) - mm) <= mm / 50;

/** Feet, inches and pounds, with the pints of Britain or of America. */
export function feetAndPounds(whose: "imperial" | "us", words: Words, number: NumberText): UnitSystem {
  const { pintMl, ounces, ounce } = pints[whose];
  const fluidOunces = (ml: Ml) => (ml * ounces) / pintMl;
  const pounds = (g: G) =>
    g < gPerPound ? `${number(g / gPerOunce, 0)} oz` : `${number(g / gPerPound, 1)} lb`;
  // Rows of a guide stand a centimetre apart or more: where inches stand alone, quarters tell them apart.
  const gap = (mm: Mm) => inchesAlong(mm, number, tapeInches);
  return {
    depth: feetAndInches,
    gap,
    besideDepth: gap,
    settingSteps: { depthMm: mmPerInch, moreMm: mmPerInch / 2 },
    // Five millimetres are a fifth of an inch: what is read to them is told as apart in tenths.
    small: (mm) => `${number(mm / mmPerInch, 1)} in`,
    size: (mm) => `${number(mm / mmPerInch, isOfTenths(mm) ? 1 : 2)} in`,
    diameter: (mm) => `${number(mm / mmPerInch, mm < mmPerInch / 50 ? 4 : mm < mmPerInch ? 3 : 1)} in`,
    about: (mm) => (mm < mmPerFoot * 2 ? inchesAlong(mm, number, 4) : `${number(mm / mmPerFoot, 0)} ft`),
    area: (cm2) => `${number((100 * cm2) / mmPerInch ** 2, 2)} in²`,
    strength: pounds,
    strengthBeside: pounds,
    pace: (ms) => paceOver(ms, mmPerYard, "yd", words, number),
    speed: (ms) => `${number((1000 * ms) / mmPerFoot, 1)} ft/s`,
    temperature: (c) => `${number(fahrenheitFromCelsius(c), 0)} °F`,
    volume: (ml) => {
      if (ml < leastOunceMl) return spoons(ml, words);
      // A quarter of a pint is the least that a pint's measure shows.
      if (ml < pintMl / 4) return words(ounce, { ounces: number(fluidOunces(ml), 1) });
      const rounded = (perMl: number) => Math.round((10 * ml) / perMl) / 10;
      if (whose === "imperial") return words("figures.imperial-pints", { pints: rounded(pintMl) });
      if (ml < 2 * pintMl) return words("figures.us-pints", { pints: rounded(pintMl) });
      return words("figures.us-quarts", { quarts: rounded(2 * pintMl) });
    },
    kitchen: (from, to, unit) =>
      unit === "g"
        ? stepped([from / gPerOunce, to / gPerOunce], 0.5, "oz", words, number)
        : words(ounce, {
            ounces: stepped([fluidOunces(from), fluidOunces(to)], 0.5, "", words, number).trimEnd(),
          }),
    ruler: inchRuler,
  };
}

/**
 * The same where room is short: lengths by the marks of a rule, to the half inch. Depths and all that is set or told against them
 * are in feet from one on; places along the line alone are in inches, as a tape has them.
 */
export function shortFeet(feet: UnitSystem): UnitSystem {
  const partsOf = (mm: Mm) => (Math.abs(mm) < 4 * mmPerInch ? 4 : 2);
  const marked = (text: string) => text.replace(/ in$/, "″");
  return {
    ...feet,
    depth: (mm) => inMarks(mm, 1, mmPerFoot - 1),
    gap: (mm) => inMarks(mm, partsOf(mm), tapeMm),
    besideDepth: (mm) => inMarks(mm, partsOf(mm), mmPerFoot - 1),
    small: (mm) => marked(feet.small(mm)),
    size: (mm) => marked(feet.size(mm)),
  };
}

/** As far as a short tape goes. */
const tapeMm = 10 * mmPerFoot;

const fractions = ["", "¼", "½", "¾"] as const;

/**
 * A length to so many parts of an inch: `¾″`, `29½″`, `4′9″`, `3′0½″`, whose 0 keeps it from being read as `3½″`, and `19′0″`, whose
 * 0 keeps it from being read as `19″`; in feet where it is more than `inchesUpToMm`.
 */
function inMarks(mm: Mm, parts: 1 | 2 | 4, inchesUpToMm: Mm): string {
  const quarters = Math.round((Math.abs(mm) / mmPerInch) * parts) * (4 / parts);
  const sign = mm < 0 && quarters > 0 ? "−" : "";
  const feet = quarters > (4 * inchesUpToMm) / mmPerInch ? Math.floor(quarters / 48) : 0;
  const rest = quarters - 48 * feet;
  const fraction = fractions[rest % 4] ?? "";
  const whole = feet > 0 || rest >= 4 || fraction === "" ? String(Math.floor(rest / 4)) : "";
  const inches = `${whole}${fraction}″`;
  return feet === 0 ? `${sign}${inches}` : `${sign}${feet}′${inches}`;
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

/** A length in inches, in quarters of one below so many. */
export function inchesAlong(mm: Mm, number: NumberText, quartersBelow: number): string {
  const inches = mm / mmPerInch;
  if (Math.abs(inches) > tapeInches) return feetAndInches(mm);
  return Math.abs(inches) < quartersBelow
    ? `${number(Math.round(inches * 4) / 4, 2)} in`
    : `${number(inches, 0)} in`;
}
