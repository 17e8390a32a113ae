import { type Finding, type FindingValue, kindedValues } from "../core/finding.ts";
import { findingTable, type ValueKind } from "../core/finding-table.ts";
import type { Guide } from "../model/library.ts";
import type { Message, Place } from "../model/message.ts";
import type { Figures } from "./figures.ts";
import type { Words } from "./words.ts";

/** A length as it is told on the bank: a thickness in millimetres, along the line in centimetres. */
function lengthShown(mm: number, figures: Figures): string {
  return Math.abs(mm) < 20 ? figures.diameter(mm) : figures.gap(mm);
}

/** How each kind of value is shown. */
const shown: Readonly<
  Record<Exclude<ValueKind, "text" | "shot">, (value: number, figures: Figures) => string>
> = {
  number: (value, figures) => figures.number(value, 3),
  length: lengthShown,
  depth: (mm, figures) => figures.depth(mm),
  tip: (mm, figures) => figures.tip(mm),
  mass: (g, figures) => figures.mass(g),
  "stated mass": (g, figures) => figures.statedMass(g),
  density: (kgM3, figures) => `${figures.number(kgM3 / 1000, 2)} g/cm³`,
  time: (s, figures) => figures.time(s),
  share: (share, figures) => figures.share(share),
  pace: (ms, figures) => figures.pace(ms),
  temperature: (c, figures) => figures.temperature(c),
};

function valueText(kind: ValueKind, value: FindingValue, figures: Figures): string {
  if (typeof value === "object") return figures.shot(value);
  return typeof value === "string" || kind === "text" || kind === "shot"
    ? `${value}`
    : shown[kind](value, figures);
}

/** What the core found, as a sentence with its figures rounded and in the units of the guide. */
export function reasonText(finding: Finding, words: Words, figures: Figures): string {
  const values = kindedValues(finding).map(([name, kind, value]) => [name, valueText(kind, value, figures)]);
  return words(`reason.${finding.code}`, Object.fromEntries(values));
}

/** As bad as the guide says where its rules decide, else what the core makes of it. */
export function severityOf(finding: Finding, guide: Pick<Guide, "leadBreach">): Finding["severity"] {
  const { severity } = findingTable[finding.code];
  return severity === undefined ? finding.severity : guide[severity];
}

/** What the core found, as a message at the place of the figure that it is about. */
export function findingMessage(finding: Finding, place: Place, words: Words, figures: Figures): Message {
  const reason = reasonText(finding, words, figures);
  return { severity: finding.severity, place, code: finding.code, values: { reason } };
}
