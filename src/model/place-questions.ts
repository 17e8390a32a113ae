import type { AskedQuestion } from "./questions.ts";
import type { UnitChoice } from "./unit-choice.ts";

/** From the bank to where the float stands; how much higher or lower the water stands than on another day. */
const distance = { kind: "length", least: 200, most: 60_000 } as const;
const level = { kind: "length", least: 0, most: 3000 } as const;

type PlaceQuestions = Readonly<Record<"distance" | "level", AskedQuestion>>;

const metricPlace: PlaceQuestions = {
  distance: { ...distance, own: [{ unit: "m", least: 0.2, most: 60 }], other: [], example: "8 m" },
  level: { ...level, own: [{ unit: "cm", least: 0, most: 300 }], other: [], example: "-10 cm" },
};
const imperialPlace: PlaceQuestions = {
  distance: { ...distance, own: [{ unit: "ft", least: 1, most: 196 }], other: [], example: "26 ft" },
  level: { ...level, own: [{ unit: "in", least: 0, most: 118 }], other: [], example: "-4 in" },
};

/** What a reader is asked of the place, besides; the level without its sign. */
export const placeQuestions: Readonly<Record<UnitChoice, PlaceQuestions>> = {
  "metric first": metricPlace,
  metric: metricPlace,
  imperial: imperialPlace,
  us: imperialPlace,
};
