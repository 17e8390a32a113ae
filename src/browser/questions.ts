import type { BareReading, Question } from "../core/as-written.ts";
import type { UnitChoice } from "../model/unit-choice.ts";

/** Bare numbers by the system of units that a reader thinks in. */
type BareIn = Readonly<Record<"metric" | "imperial", readonly BareReading[]>>;

/** What people write for the depth of a water without its unit. */
const bareDepth: BareIn = {
  metric: [
    { unit: "m", least: 0.2, most: 12 },
    { unit: "cm", least: 20, most: 1200 },
    { unit: "mm", least: 1201, most: 12_000 },
  ],
  imperial: [
    { unit: "ft", least: 1, most: 39 },
    { unit: "in", least: 40, most: 144 },
  ],
};
/** What else a number may have been meant for by somebody who thinks in the other system. */
const otherDepth: BareIn = {
  metric: [{ unit: "ft", least: 3, most: 39, only: "whole or half" }],
  imperial: [
    { unit: "m", least: 0.2, most: 12, only: "with decimals" },
    { unit: "cm", least: 40, most: 1200 },
  ],
};

const bareRod: BareIn = {
  metric: [{ unit: "m", least: 1, most: 20 }],
  imperial: [{ unit: "ft", least: 4, most: 65 }],
};
const otherRod: BareIn = {
  metric: [{ unit: "ft", least: 6, most: 20, only: "whole or half" }],
  imperial: [{ unit: "m", least: 2, most: 20, only: "with decimals" }],
};

const celsius: BareReading = { unit: "C", least: 0, most: 40 };
const fahrenheit: BareReading = { unit: "F", least: 32, most: 104 };

/** What the reader is asked, and what may be the answer: wide enough for any water that is fished with a float. */
export const questions = {
  depth: (units) => ({
    kind: "length",
    least: 200,
    most: 12_000,
    own: bareDepth[systemOf(units)],
    other: otherDepth[systemOf(units)],
  }),
  tip: () => ({
    kind: "length",
    least: 1,
    most: 100,
    own: [{ unit: "mm", least: 1, most: 100 }],
    other: [],
  }),
  temperature: (units) => ({
    kind: "temperature",
    least: 0,
    most: 40,
    own: [systemOf(units) === "metric" ? celsius : fahrenheit],
    other: [systemOf(units) === "metric" ? { ...fahrenheit, least: 41 } : { ...celsius, most: 31 }],
  }),
  pace: () => ({
    kind: "pace",
    least: 0.01,
    most: 3,
    own: [],
    other: [{ unit: "m/s", least: 0.01, most: 3 }],
  }),
  rod: (units) => ({
    kind: "length",
    least: 1000,
    most: 20_000,
    own: bareRod[systemOf(units)],
    other: otherRod[systemOf(units)],
  }),
} as const satisfies Record<string, (units: UnitChoice) => Question>;

/** What a good answer looks like. */
export const examples: Readonly<Record<keyof typeof questions, (units: UnitChoice) => string>> = {
  depth: (units) => (systemOf(units) === "metric" ? "1.7 m" : "5 ft 6 in"),
  tip: () => "15 mm",
  temperature: (units) => (systemOf(units) === "metric" ? "12 C" : "54 F"),
  pace: (units) => (systemOf(units) === "metric" ? "10 m in 25 s" : "10 yd in 25 s"),
  rod: (units) => (systemOf(units) === "metric" ? "3.6 m" : "12 ft"),
};

function systemOf(units: UnitChoice): "metric" | "imperial" {
  return units === "imperial" ? "imperial" : "metric";
}
