import {
  celsiusFromFahrenheit,
  gPerGrain,
  gPerOunce,
  gPerPound,
  mlPerImperialPint,
  mlPerUsPint,
  mmPerFoot,
  mmPerInch,
  mmPerYard,
} from "./units.ts";

/** Kinds of quantity a person types; each is read into the core's own unit, named here. */
const coreUnits = {
  length: "mm",
  mass: "g",
  time: "s",
  temperature: "°C",
  volume: "ml",
  pace: "m/s",
  density: "kg/m³",
  share: "of one",
} as const;
export type QuantityKind = keyof typeof coreUnits;

/** Why a text is not a quantity; the words are the reader's business. */
export type QuantityProblem =
  | "no number"
  | "no unit"
  | "unknown unit"
  | "pint of which country"
  | "not understood"
  | "beyond measure";

/** No water runs as fast by far [m/s]. */
export const paceMostMs = 100;

/**
 * The most of each kind, in the core's unit, either way from nothing; whatever is less than a thousand-millionth of it, and not
 * nothing, is no measure either. Far beyond what is fished, and near enough for every sum to have an end.
 */
const quantityMost: Readonly<Record<QuantityKind, number>> = {
  length: 1_000_000, // a kilometre
  mass: 1_000_000, // a tonne
  time: 1_000_000, // eleven days
  temperature: 1000,
  volume: 1_000_000, // a cubic metre
  pace: paceMostMs,
  density: 100_000,
  share: 1000,
};
const leastShare = 1e-9;

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly problem: QuantityProblem;
      readonly unit: string;
      readonly examples: readonly string[];
    };

type UnitTable = Readonly<Record<string, number>>;

const lengthUnits: UnitTable = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: mmPerInch,
  inch: mmPerInch,
  inches: mmPerInch,
  '"': mmPerInch,
  ft: mmPerFoot,
  foot: mmPerFoot,
  feet: mmPerFoot,
  "'": mmPerFoot,
  yd: mmPerYard,
  yard: mmPerYard,
  yards: mmPerYard,
};

const massUnits: UnitTable = {
  mg: 0.001,
  g: 1,
  kg: 1000,
  gr: gPerGrain,
  grain: gPerGrain,
  grains: gPerGrain,
  oz: gPerOunce,
  lb: gPerPound,
  lbs: gPerPound,
};

const timeUnits: UnitTable = { s: 1, sec: 1, min: 60, h: 3600, hour: 3600, hours: 3600 };

const volumeUnits: UnitTable = {
  ml: 1,
  cl: 10,
  l: 1000,
  litre: 1000,
  litres: 1000,
  "imperial pint": mlPerImperialPint,
  "imperial pints": mlPerImperialPint,
  "us pint": mlPerUsPint,
  "us pints": mlPerUsPint,
};

const paceUnits: UnitTable = {
  "m/s": 1,
  "cm/s": 0.01,
  "ft/s": mmPerFoot / 1000,
  "km/h": 1 / 3.6,
  mph: (1760 * mmPerYard) / 1000 / 3600,
};

const densityUnits: UnitTable = { "g/cm3": 1000, "g/cm³": 1000, "kg/m3": 1, "kg/m³": 1 };

/** What a good entry looks like, for hints. */
export const quantityExamples: Readonly<Record<QuantityKind, readonly string[]>> = {
  length: ["30 cm", "1.5 m", "6 ft", "4 ft 6 in"],
  mass: ["0.4 g", "4 lb", "2 oz"],
  time: ["45 s", "2 min", "4 h"],
  temperature: ["12 C", "54 F"],
  volume: ["10 ml", "1 l", "2 imperial pints", "2 US pints"],
  pace: ["10 m in 25 s", "10 yd in 25 s", "0.4 m/s"],
  density: ["1.02 g/cm3", "1020 kg/m3"],
  share: ["70 %", "2/3"],
};

const numberPattern = /^([+-]?(?:\d+\s+\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?|\.\d+))\s*/;

/** A number at the start of a text (`1.5`, `1/2`, `1 1/2`) and what follows it. */
function takeNumber(text: string): { value: number; rest: string } | undefined {
  const found = numberPattern.exec(text);
  if (!found) return undefined;
  const [whole, digits = ""] = found;
  const sign = digits.startsWith("-") ? -1 : 1;
  const size = digits
    .replace(/^[+-]/, "")
    .split(/\s+/)
    .map((part) => {
      const [top, bottom] = part.split("/");
      return bottom === undefined ? Number(top) : Number(top) / Number(bottom);
    })
    .reduce((sum, part) => sum + part, 0);
  if (!Number.isFinite(size)) return undefined;
  return { value: sign * size, rest: text.slice(whole.length) };
}

/** One number and its unit from the front of a text; a longer unit name wins over its own beginning. */
function takeMeasure(text: string, units: UnitTable): { value: number; rest: string } | ParsedProblem {
  const number = takeNumber(text);
  if (!number) return { problem: "no number", unit: "" };
  const unit = /^(?:imperial pints?|us pints?|["']|[a-z°³/%]+3?)/i.exec(number.rest)?.[0] ?? "";
  if (unit === "") return { problem: number.rest === "" ? "no unit" : "not understood", unit: number.rest };
  const factor = Object.hasOwn(units, unit.toLowerCase()) ? units[unit.toLowerCase()] : undefined;
  if (factor === undefined) {
    const pint = units === volumeUnits && /^pints?$/i.test(unit);
    return { problem: pint ? "pint of which country" : "unknown unit", unit };
  }
  return { value: number.value * factor, rest: number.rest.slice(unit.length).trimStart() };
}

interface ParsedProblem {
  readonly problem: QuantityProblem;
  readonly unit: string;
}

/** A sum of measures such as `4 ft 6 in`; later parts must be positive, and a minus counts for the whole. */
function takeSum(text: string, units: UnitTable): { value: number; rest: string } | ParsedProblem {
  const first = takeMeasure(text, units);
  if ("problem" in first) return first;
  let { value, rest } = first;
  while (/^\d/.test(rest)) {
    const next = takeMeasure(rest, units);
    if ("problem" in next) return next;
    value += value < 0 ? -next.value : next.value;
    rest = next.rest;
  }
  return { value, rest };
}

function readPace(text: string): number | ParsedProblem {
  const [length = "", duration, more] = text.split(/\s+in\s+(?=[\d.])/i);
  if (duration !== undefined && more === undefined) {
    const way = readWhole(length, lengthUnits);
    if (typeof way !== "number") return way;
    const time = readWhole(duration, timeUnits);
    if (typeof time !== "number") return time;
    return time > 0 ? way / 1000 / time : { problem: "not understood", unit: text };
  }
  return readWhole(text, paceUnits);
}

function readTemperature(text: string): number | ParsedProblem {
  const number = takeNumber(text);
  if (!number) return { problem: "no number", unit: "" };
  const unit = number.rest.replace("°", "").trim();
  if (unit === "") return { problem: "no unit", unit };
  if (/^c$/i.test(unit)) return number.value;
  if (/^f$/i.test(unit)) return celsiusFromFahrenheit(number.value);
  return { problem: "unknown unit", unit };
}

function readShare(text: string): number | ParsedProblem {
  const number = takeNumber(text);
  if (!number) return { problem: "no number", unit: "" };
  if (number.rest === "%") return number.value / 100;
  if (number.rest !== "") return { problem: "unknown unit", unit: number.rest };
  return text.includes("/") ? number.value : { problem: "no unit", unit: "" };
}

function readWhole(text: string, units: UnitTable): number | ParsedProblem {
  const sum = takeSum(text, units);
  if ("problem" in sum) return sum;
  return sum.rest === "" ? sum.value : { problem: "not understood", unit: sum.rest };
}

const readers: Readonly<Record<QuantityKind, (text: string) => number | ParsedProblem>> = {
  length: (text) => readWhole(text, lengthUnits),
  mass: (text) => readWhole(text, massUnits),
  time: (text) => readWhole(text, timeUnits),
  temperature: readTemperature,
  volume: (text) => readWhole(text, volumeUnits),
  pace: readPace,
  density: (text) => readWhole(text, densityUnits),
  share: readShare,
};

/**
 * A quantity as a person types it, in either system of units: `30 cm`, `4 ft 6 in`, `10 m in 25 s`, `50 F`.
 *
 * @returns the value in the core's unit for the kind (`coreUnits`), or what is wrong with the text and examples of
 *   what is right. A bare number is a problem, and so is a pint that does not say whose.
 */
export function parseQuantity(kind: QuantityKind, text: string): ParsedQuantity {
  const read = readers[kind](text.trim());
  if (typeof read === "number") {
    const size = Math.abs(read) / quantityMost[kind];
    if (size === 0 || (size >= leastShare && size <= 1)) return { ok: true, value: read };
    return { ok: false, problem: "beyond measure", unit: "", examples: quantityExamples[kind] };
  }
  return { ok: false, problem: read.problem, unit: read.unit, examples: quantityExamples[kind] };
}
