import { readWritten } from "../core/as-written.ts";
import type { Finding } from "../core/finding.ts";
import type { Float } from "../core/float/float.ts";
import { metalIn, parseBox } from "../core/tackle/box-notation.ts";
import { parseLoad } from "../core/tackle/load-notation.ts";
import { type Metal, metals, type ShotScale, type Tub } from "../core/tackle/shot.ts";
import { type AskedQuestion, type QuestionName, questions } from "../model/questions.ts";
import type { Rig } from "../model/rig.ts";
import type { UnitChoice } from "../model/unit-choice.ts";

/** What the reader typed, field by field; a field that is missing leaves the rig as it is. */
type FitAnswers = ReadonlyMap<string, string>;

/** Why a field cannot be used: `code` names the words below `page.fit.`. */
export type FieldProblem =
  | {
      readonly field: QuestionName;
      readonly code: "not-understood" | "out-of-range" | "missing";
      readonly typed: string;
      /** What it was likely meant to say. */
      readonly meant: readonly string[];
      readonly question: AskedQuestion;
    }
  | { readonly field: string; readonly code: "not-a-load"; readonly typed: string }
  | { readonly field: "box"; readonly code: "not-a-box"; readonly findings: readonly Finding[] };

interface FittedRig {
  readonly rig: Rig;
  /** The reader's own shot, where they were told. */
  readonly box?: Tub;
  readonly problems: readonly FieldProblem[];
}

/**
 * The rig with a reader's own figures put in. Whoever shows it must ask for `problems` first: a figure that cannot be
 * read is left as the rig has it, and a rig for another water than was meant is worse than none.
 */
export function fitRig(rig: Rig, scale: ShotScale, answers: FitAnswers, units: UnitChoice): FittedRig {
  const problems: FieldProblem[] = [];
  const quantity = (field: QuestionName): number | undefined => {
    const typed = answers.get(field)?.trim();
    if (typed === undefined) return undefined;
    const question = questions[units][field];
    if (typed === "") {
      problems.push({ field, code: "missing", typed, meant: [], question });
      return undefined;
    }
    const read = readWritten(typed, question);
    if (read.ok) return read.value;
    problems.push({ field, code: read.code, typed, meant: read.meant, question });
    return undefined;
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
  };
  const box = fitBox(rig, scale, answers, problems);
  return { rig: fitted, problems, ...(box && { box }) };
}

function fitBox(rig: Rig, scale: ShotScale, answers: FitAnswers, problems: FieldProblem[]): Tub | undefined {
  const typed = answers.get("box")?.trim();
  if (!typed) return undefined;
  const box = parseBox(typed, scale, metalIn(rig.tub));
  if (box.ok) return box.value;
  problems.push({ field: "box", code: "not-a-box", findings: box.findings });
  return undefined;
}

function fitFloat(
  float: Float,
  scale: ShotScale,
  answers: FitAnswers,
  tipMm: number | undefined,
  problems: FieldProblem[],
): Float {
  const typed = answers.get("capacity")?.trim();
  // A comma between two figures can only be a decimal one.
  const load = typed ? parseLoad(typed.replace(/(?<=\d),(?=\d)/g, "."), scale) : undefined;
  if (typed && !load?.ok) problems.push({ field: "capacity", code: "not-a-load", typed });
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

function metalFrom(text: string | undefined): Metal | undefined {
  return metals.find((metal) => metal === text);
}
