import type { Question } from "../core/as-written.ts";
import type { UnitChoice } from "./unit-choice.ts";

/** What a reader is asked. */
export type QuestionName = "depth" | "tip" | "temperature" | "pace" | "rod";

/** A question with what a good answer looks like. */
export interface AskedQuestion extends Question {
  readonly example: string;
}

type Questions = Readonly<Record<QuestionName, AskedQuestion>>;

/** What may be the answer: wide enough for any water that is fished with a float. */
const depth = { kind: "length", least: 200, most: 12_000 } as const;
const temperature = { kind: "temperature", least: 0, most: 40 } as const;
const pace = {
  kind: "pace",
  least: 0.01,
  most: 3,
  own: [],
  other: [{ unit: "m/s", least: 0.01, most: 3 }],
} as const;
const rod = { kind: "length", least: 1000, most: 20_000 } as const;
const tip = { kind: "length", least: 1, most: 100 } as const;

/** For somebody who thinks in metres: a bare number is one of them, and may have been meant for feet. */
const metric: Questions = {
  depth: {
    ...depth,
    own: [
      { unit: "m", least: 0.2, most: 12 },
      { unit: "cm", least: 20, most: 1200 },
      { unit: "mm", least: 1201, most: 12_000 },
    ],
    other: [{ unit: "ft", least: 3, most: 39, only: "whole or half" }],
    example: "1.7 m",
  },
  tip: { ...tip, own: [{ unit: "mm", least: 1, most: 100 }], other: [], example: "15 mm" },
  temperature: {
    ...temperature,
    own: [{ unit: "C", least: 0, most: 40 }],
    other: [{ unit: "F", least: 41, most: 104 }],
    example: "12 C",
  },
  pace: { ...pace, example: "10 m in 25 s" },
  rod: {
    ...rod,
    own: [{ unit: "m", least: 1, most: 20 }],
    other: [{ unit: "ft", least: 6, most: 20, only: "whole or half" }],
    example: "3.6 m",
  },
};

/** For somebody who thinks in feet: a bare number is one of them, and may have been meant for metres. */
const imperial: Questions = {
  depth: {
    ...depth,
    own: [
      { unit: "ft", least: 1, most: 39 },
      { unit: "in", least: 40, most: 144 },
    ],
    other: [
      { unit: "m", least: 0.2, most: 12, only: "with decimals" },
      { unit: "cm", least: 40, most: 1200 },
    ],
    example: "5 ft 6 in",
  },
  tip: {
    ...tip,
    own: [{ unit: "in", least: 0.04, most: 1 }],
    other: [{ unit: "mm", least: 2, most: 100, only: "whole or half" }],
    example: "0.6 in",
  },
  temperature: {
    ...temperature,
    own: [{ unit: "F", least: 32, most: 104 }],
    other: [{ unit: "C", least: 0, most: 31 }],
    example: "54 F",
  },
  pace: { ...pace, example: "10 yd in 25 s" },
  rod: {
    ...rod,
    own: [{ unit: "ft", least: 4, most: 65 }],
    other: [{ unit: "m", least: 2, most: 20, only: "with decimals" }],
    example: "12 ft",
  },
};

/** What a reader is asked, by the units of the guide or of his own choice. */
export const questions: Readonly<Record<UnitChoice, Questions>> = {
  "metric first": metric,
  metric,
  imperial,
  us: imperial,
};

/** A step of a slider of depths, round in those units [mm]: 5 cm or 2 in. */
export const depthStepMm: Readonly<Record<UnitChoice, number>> = {
  "metric first": 50,
  metric: 50,
  imperial: 50.8,
  us: 50.8,
};
