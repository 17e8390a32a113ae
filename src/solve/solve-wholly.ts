import type { Answer } from "../core/finding.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import { withWater } from "./in-water.ts";
import { solveRig } from "./solve-rig.ts";

/** A rig with all its sums, those of the water too. Some of what was found on the way may be told twice. */
export function solveWholly(rig: Rig): Answer<SolvedRig> {
  const dry = solveRig(rig);
  const solved = dry.ok ? withWater(dry.value) : dry;
  return { ...solved, findings: [...dry.findings, ...solved.findings] };
}
