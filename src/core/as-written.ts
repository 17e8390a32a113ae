import { parseQuantity, type QuantityKind } from "./quantity.ts";

/** What a bare number may stand for: a unit, for numbers from `least` to `most`. */
interface BareReading {
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** Only for numbers such as these; any where it is missing. */
  readonly only?: "whole or half" | "with decimals";
}

/** What one question takes for an answer, in the core's unit of the kind. */
export interface Question {
  readonly kind: QuantityKind;
  readonly least: number;
  readonly most: number;
  /** What a bare number stands for in the reader's own units; where only one of them fits, it is taken. */
  readonly own: readonly BareReading[];
  /** What it may have been meant for otherwise: offered, never taken. */
  readonly other: readonly BareReading[];
}

type Written =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly code: "not-understood" | "out-of-range";
      /** What was likely meant, as it should have been written; each is in range. */
      readonly meant: readonly string[];
    };

const mostMeant = 3;

/**
 * A quantity as people write it at the water: `1,7 m`, `170cm`, `5'7"`, `5 foot 7`, `1 m 70`, `1½ m`, or a bare number where the question
 * leaves only one unit for it. Whatever can be read in two ways is not read: the likely readings come back to choose
 * from.
 *
 * @returns the value in the core's unit of the question's kind, between `least` and `most`
 */
export function readWritten(text: string, question: Question): Written {
  const tidy = tidied(text);
  const whole = inRange(tidy, question) ?? inRange(withTail(tidy), question);
  if (whole !== undefined && !isOddSum(tidy)) return { ok: true, value: whole };
  const bare = /^\d*\.?\d+$/.test(tidy) ? tidy : undefined;
  if (bare !== undefined) return readBare(bare, question);
  const understood = parseQuantity(question.kind, tidy).ok && !isOddSum(tidy);
  return { ok: false, code: understood ? "out-of-range" : "not-understood", meant: meantBy(tidy, question) };
}

function inRange(text: string | undefined, { kind, least, most }: Question): number | undefined {
  const read = text === undefined ? undefined : parseQuantity(kind, text);
  // A thousandth of a millimetre beyond is a rounding, not a reader.
  const slack = 1e-6 * most;
  return read?.ok && read.value >= least - slack && read.value <= most + slack ? read.value : undefined;
}

function readBare(number: string, question: Question): Written {
  const own = readings(number, question.own, question);
  const other = readings(number, question.other, question);
  if (own.length === 1 && other.length === 0) {
    return { ok: true, value: inRange(own[0], question)! };
  }
  const meant = [...own, ...other].slice(0, mostMeant);
  return { ok: false, code: meant.length > 0 ? "not-understood" : "out-of-range", meant };
}

function readings(number: string, bare: readonly BareReading[], question: Question): string[] {
  const size = Number(number);
  return bare
    .filter(({ least, most }) => size >= least && size <= most)
    .filter(({ only }) => only !== "whole or half" || Number.isInteger(2 * size))
    .filter(({ only }) => only !== "with decimals" || number.includes("."))
    .map(({ unit }) => `${size} ${unit}`)
    .filter((text) => inRange(text, question) !== undefined);
}

/** The likely readings of a text that as a whole has none. */
function meantBy(tidy: string, question: Question): string[] {
  const tails = tailMeant(tidy, question);
  if (tails.length > 0) return tails;
  const found = [...tidy.matchAll(/(?<![\w.])(\d*\.?\d+)(?![\d.])\s*([a-z'"°/%]*)(?!\w)/g)];
  const meant = found.flatMap(({ 1: number = "", 2: unit = "" }, at) => {
    // In `1.5–2 m` the unit counts for both.
    const next = found[at + 1]?.[2] ?? "";
    for (const asIs of [`${Number(number)} ${unit}`, `${Number(number)} ${next}`]) {
      if (inRange(asIs, question) !== undefined) return [asIs];
    }
    if (found.length > 1 || unit.length > 2) return [];
    return [...readings(number, question.own, question), ...readings(number, question.other, question)];
  });
  return [...new Set(meant)].slice(0, mostMeant);
}

/** Parts that nobody adds up, such as `1.7 m 1.8 m` or `5 ft 13 in`: two figures more likely than one. */
function isOddSum(tidy: string): boolean {
  if (/ in \d/.test(tidy)) return false;
  const units = tidy.match(/(?<=[\d] )[a-z]+/g) ?? [];
  if (units.length < 2 && !/[a-z] \d/.test(tidy)) return false;
  return !/^\+?\d+ (?:m \d\d?(?: cm)?|ft (?:\d|1[01])(?:\.5)?(?: in)?)$/.test(tidy);
}

/** `1 m 7` may be 1.7 m or 7 cm more than one. */
function tailMeant(tidy: string, question: Question): string[] {
  const parts = /^(\d+) m (\d)$/.exec(tidy);
  if (!parts) return [];
  const both = [`${parts[1]}.${parts[2]} m`, `${parts[1]} m ${parts[2]} cm`];
  return both.filter((text) => inRange(text, question) !== undefined);
}

/** `1 m 70` and `5 ft 7` with the unit that people leave out; none where the number cannot be one of it. */
function withTail(tidy: string): string | undefined {
  const metres = /^(\d+) m (\d\d)$/.exec(tidy);
  if (metres) return `${tidy} cm`;
  const feet = /^(\d+) ft (\d+(?:\.5)?)$/.exec(tidy);
  return feet && Number(feet[2]) < 12 ? `${tidy} in` : undefined;
}

const vulgarFractions: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** What people write for a unit, by how the strict reader knows it. */
const unitSpellings: readonly (readonly [RegExp, string])[] = [
  [/millimet(?:re|er)s?|mms/g, "mm"],
  [/centimet(?:re|er)s?|cms/g, "cm"],
  [/met(?:re|er)s?|mtrs?/g, "m"],
  [/foot|feet|ft\.|fts/g, "ft"],
  [/inch(?:es)?|in\.|ins/g, "in"],
  [/(?:degrees?|deg)\s*/g, "°"],
  [/celsius|centigrade/g, "c"],
  [/fahrenheit/g, "f"],
];

/** A text in the strict reader's own way of writing: small letters, points, one space between number and unit. */
function tidied(text: string): string {
  let tidy = text
    .trim()
    .replace(/''|[“”″]|[’′]{2}/g, '"')
    .replace(/[’‘′´`]/g, "'")
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign]} `)
    .normalize("NFKC")
    .toLowerCase()
    // A comma before three digits of millimetres parts thousands; any other stands for a point.
    .replace(/^(\d+),(\d{3})(?=\s*m(?:m|illi))/, "$1$2")
    .replace(/(?<=\d),(?=\d)/g, ".")
    .replace(/[.,;!?]+$/, "");
  for (const [spelling, unit] of unitSpellings) tidy = tidy.replace(spelling, unit);
  return tidy
    .replace(/(?<=\d)(?=[a-z'"])/g, " ")
    .replace(/(?<=[a-z'"])(?=\d)/g, " ")
    .replace(/(?<=\d)\s*'/g, " ft ")
    .replace(/(?<=\d)\s*"/g, " in")
    .replace(/(?<=ft|m)(?:\s+and|,)\s+(?=\d)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}
