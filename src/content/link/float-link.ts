import type { z } from "zod";
import type { Float } from "../../core/float/float.ts";
import { parseLoad } from "../../core/tackle/load-notation.ts";
import type { FloatEntry, ScaleEntry } from "../../model/library.ts";
import { parseNotes } from "../markdown-source.ts";
import type { Read, Reading } from "../reading.ts";
import type { floatSchema } from "../schema/tackle-schema.ts";

/** A float with its capacity in grams: measured where somebody measured it, else as it is marked. */
export function linkFloat(
  read: Read<z.output<typeof floatSchema>>,
  scale: ScaleEntry,
  reading: Reading,
): FloatEntry | undefined {
  const { id, value, yaml, source } = read;
  const loadG = (text: string, ...path: string[]): number | undefined => {
    const load = parseLoad(text, scale);
    if (load.ok) return load.value.massG;
    for (const finding of load.findings) reading.finding(finding, yaml.placeOf(path));
    return undefined;
  };
  value.profile.forEach(({ at }, index) => {
    const before = value.profile[index - 1]?.at ?? Number.NEGATIVE_INFINITY;
    if (at <= before) {
      reading.error(yaml.placeOf(["profile", index, "at"]), "falling-profile", { at, before });
    }
  });
  const markedG = loadG(value.marking, "marking");
  const measuredG = value.measured && loadG(value.measured.load, "measured", "load");
  if (markedG === undefined || (value.measured && measuredG === undefined)) return undefined;
  const float: Float = {
    id,
    title: value.title,
    kind: value.kind,
    attachment: value.attachment,
    heldByShot: value["held-by"] === "shot",
    profile: value.profile.map(({ at, diameter }) => ({ atMm: at, diameterMm: diameter })),
    capacityG: measuredG ?? markedG,
    capacityMetal: value.measured?.metal ?? value["marked-metal"],
    capacityBasis: value.measured ? "measured" : "marked",
    selfLoadG: value["self-load"],
    tipShowingMm: value.measured?.["tip-showing"] ?? value["tip-showing"],
    ...(value.mass !== undefined && { weighedMassG: value.mass }),
  };
  return {
    id,
    path: source.file,
    title: value.title,
    summary: value.summary,
    body: parseNotes(value.notes, yaml.placeOf(["notes"]), reading.keep),
    float,
    placeOf: yaml.placeOf,
    marking: value.marking,
    basis: value.basis,
  };
}
