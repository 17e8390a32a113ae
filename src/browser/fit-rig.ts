import type { Float } from "../core/float/float.ts";
import { parseQuantity, type QuantityKind } from "../core/quantity.ts";
import { parseLoad } from "../core/tackle/load-notation.ts";
import { type Metal, metals, type ShotScale, type StockedShot } from "../core/tackle/shot.ts";
import type { Rig } from "../model/rig.ts";

/** What the reader typed, field by field; a field that is missing or empty leaves the rig as it is. */
type FitAnswers = ReadonlyMap<string, string>;

/** Why a field cannot be used: `code` names the words below `page.fit.`. */
export interface FieldProblem {
  readonly field: string;
  readonly code: "not-a-quantity" | "out-of-range" | "not-a-load" | "not-a-count";
  readonly values: Readonly<Record<string, string>>;
}

interface FittedRig {
  readonly rig: Rig;
  readonly problems: readonly FieldProblem[];
}

/** Names of the fields for a size in the shot box: `count-No 8`, `metal-No 8`. */
export const countField = (size: string): string => `count-${size}`;
export const metalField = (size: string): string => `metal-${size}`;

/** What may be typed [core's unit of the kind], wide enough for any water that is fished with a float. */
const ranges = {
  depth: { kind: "length", least: 200, most: 12_000 },
  tip: { kind: "length", least: 1, most: 100 },
  temperature: { kind: "temperature", least: 0, most: 40 },
  pace: { kind: "pace", least: 0.01, most: 3 },
  rod: { kind: "length", least: 1000, most: 20_000 },
} as const satisfies Record<string, { kind: QuantityKind; least: number; most: number }>;

/**
 * The rig with a reader's own figures put in. A field that cannot be read is told and left as the rig has it, so that
 * the rest can still be seen.
 */
export function fitRig(rig: Rig, scale: ShotScale, answers: FitAnswers): FittedRig {
  const problems: FieldProblem[] = [];
  const quantity = (field: keyof typeof ranges): number | undefined => {
    const typed = answers.get(field)?.trim();
    if (!typed) return undefined;
    const { kind, least, most } = ranges[field];
    const read = parseQuantity(kind, typed);
    if (!read.ok) {
      const examples = read.examples.join(", ");
      problems.push({ field, code: "not-a-quantity", values: { typed, examples } });
      return undefined;
    }
    if (read.value < least || read.value > most) {
      problems.push({ field, code: "out-of-range", values: { typed } });
      return undefined;
    }
    return read.value;
  };
  const depthMm = quantity("depth");
  const tempC = quantity("temperature");
  const paceMs = quantity("pace");
  const rodLengthMm = quantity("rod");
  const float = fitFloat(rig.float, scale, answers, quantity("tip"), problems);
  const fitted: Rig = {
    ...rig,
    depthsMm: depthMm === undefined ? rig.depthsMm.slice(0, 1) : [depthMm],
    conditions: { ...rig.conditions, tempC: tempC ?? rig.conditions.tempC },
    pacesMs: paceMs === undefined ? rig.pacesMs : [paceMs],
    rodLengthMm: rodLengthMm ?? rig.rodLengthMm,
    float,
    tub: fitTub(rig, scale, answers, problems),
  };
  return { rig: fitted, problems };
}

function fitFloat(
  float: Float,
  scale: ShotScale,
  answers: FitAnswers,
  tipMm: number | undefined,
  problems: FieldProblem[],
): Float {
  const typed = answers.get("capacity")?.trim();
  const load = typed ? parseLoad(typed, scale) : undefined;
  if (typed && !load?.ok) problems.push({ field: "capacity", code: "not-a-load", values: { typed } });
  const capacityG = load?.ok ? load.value.massG : float.capacityG;
  const capacityMetal = metalFrom(answers.get("capacity-metal")) ?? float.capacityMetal;
  const capacityBasis = bases.find((basis) => basis === answers.get("capacity-basis")) ?? float.capacityBasis;
  const tipShowingMm = tipMm ?? float.tipShowingMm;
  const isSame =
    capacityG === float.capacityG &&
    capacityMetal === float.capacityMetal &&
    tipShowingMm === float.tipShowingMm;
  // Another load means another float of the same shape: the weight of the old one says nothing of it.
  const { weighedMassG, ...shape } = float;
  const weighed = isSame && weighedMassG !== undefined ? { weighedMassG } : {};
  const profile = capacityBasis === "marked" ? thickened(float, capacityG) : float.profile;
  return { ...shape, ...weighed, profile, capacityG, capacityMetal, capacityBasis, tipShowingMm };
}

/**
 * A float marked for another load is taken to be as long and as thick in proportion, so that what it pushes aside
 * grows with its load. A load measured on the float itself leaves its shape alone.
 */
function thickened({ profile, capacityG: ownG }: Float, capacityG: number): Float["profile"] {
  if (capacityG === ownG) return profile;
  const factor = Math.sqrt(capacityG / ownG);
  return profile.map(({ atMm, diameterMm }) => ({ atMm, diameterMm: diameterMm * factor }));
}

const bases = ["marked", "measured"] as const;

/** The sizes of the scale with what the reader has of each: a number, or plenty where nothing is typed. */
function fitTub(rig: Rig, scale: ShotScale, answers: FitAnswers, problems: FieldProblem[]): StockedShot[] {
  return scale.sizes.flatMap(({ name, massG }) => {
    const own = rig.tub.find(({ size }) => size === name);
    const typed = answers.get(countField(name))?.trim();
    const count = typed ? Number(typed) : (own?.count ?? 0);
    if (!Number.isInteger(count) && count !== Number.POSITIVE_INFINITY) {
      problems.push({ field: countField(name), code: "not-a-count", values: { typed: typed ?? "" } });
      return own ? [own] : [];
    }
    if (count <= 0) return [];
    const metal = metalFrom(answers.get(metalField(name))) ?? own?.metal ?? "tin";
    return [{ size: name, massG, metal, count }];
  });
}

function metalFrom(text: string | undefined): Metal | undefined {
  return metals.find((metal) => metal === text);
}
