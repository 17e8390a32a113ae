import type { Finding } from "../core/finding.ts";
import type { Message, Place } from "../model/message.ts";
import type { Figures } from "./figures.ts";
import type { Words } from "./words.ts";

/** A length as it is told on the bank: a thickness in millimetres, a gap in centimetres, a long line in metres. */
function lengthShown(mm: number, figures: Figures): string {
  if (Math.abs(mm) < 20) return figures.diameter(mm);
  return Math.abs(mm) < 1000 ? figures.gap(mm) : figures.depth(mm);
}

/** How a value is shown, by the unit at the end of its name. */
const shownByUnit: readonly (readonly [RegExp, (value: number, figures: Figures) => string])[] = [
  [/DensityKgM3$|^densityKgM3$/, (value) => `${(value / 1000).toFixed(2)} g/cm³`],
  [/DepthMm$|^depthMm$/, (value, figures) => figures.depth(value)],
  [/Mm$/, lengthShown],
  [/G$/, (value, figures) => figures.mass(value)],
  [/Ms$/, (value, figures) => figures.pace(value)],
  [/C$/, (value, figures) => figures.temperature(value)],
  [/Ml$/, (value, figures) => figures.volume(value)],
  [/S$/, (value, figures) => figures.time(value)],
  [/[sS]hare$/, (value, figures) => figures.share(value)],
];

/** What the core found, as a sentence with its figures rounded and in the units of the guide. */
export function reasonText(finding: Finding, words: Words, figures: Figures): string {
  const values = Object.fromEntries(
    Object.entries(finding.values).map(([name, value]) => {
      const show = typeof value === "number" && shownByUnit.find(([unit]) => unit.test(name))?.[1];
      return [name, show ? show(value as number, figures) : value];
    }),
  );
  return words(`reason.${finding.code}`, values);
}

/** What the core found, as a message at the place of the figure that it is about. */
export function findingMessage(finding: Finding, place: Place, words: Words, figures: Figures): Message {
  const reason = reasonText(finding, words, figures);
  return { severity: finding.severity, place, code: finding.code, values: { reason } };
}
