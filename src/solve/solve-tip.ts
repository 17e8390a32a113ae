import type { GuideReading } from "../core/depth/guide-step.ts";
import type { Finding } from "../core/finding.ts";
import { type ShotEffect, shotEffects, tipStates } from "../core/float/shot-effects.ts";
import { tipShowingMm } from "../core/float/tip.ts";
import { checkTipMark } from "../core/float/tip-off-mark.ts";
import { first } from "../core/lists.ts";
import { tubWithout } from "../core/loading/loading.ts";
import type { Shot } from "../core/tackle/shot.ts";
import type { G, Mm } from "../core/units.ts";
import { tipUncertaintyMm } from "../core/water/surface-tension.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth } from "../model/solved.ts";

/** Least change of the tip that is seen from the bank [mm]. Common practice, no source. */
const seenTipMm = 5;

type TipFigures = Pick<
  SolvedDepth,
  "tipAsSetMm" | "tipUncertaintyMm" | "tipSetBy" | "tipStates" | "shotEffects"
>;

/**
 * What the tip shows, what sets it, and what a shot more or less would do. A rig whose setting lays shot on the bed takes
 * its tip from the depth: a shot added there only lies down or tightens the line.
 *
 * @param hangingG pull of everything that hangs from the float while nothing rests [g]
 * @param wantedMm tip wanted while nothing rests [mm]
 * @param set what the float says where the rig is set
 * @param shot all of it
 */
export function solveTip(
  rig: Rig,
  hangingG: G,
  wantedMm: Mm,
  set: GuideReading,
  shot: readonly Shot[],
): { readonly figures: TipFigures; readonly findings: readonly Finding[] } {
  const { float, conditions, tub } = rig;
  const showingMm = tipShowingMm(float, hangingG, conditions) ?? 0;
  const uncertaintyMm = tipUncertaintyMm(float, conditions, showingMm);
  const common = { tipAsSetMm: set.tipShowingMm ?? 0, tipUncertaintyMm: uncertaintyMm };
  if (set.shotOnBed.length > 0) {
    return { figures: { ...common, tipSetBy: "depth", tipStates: [], shotEffects: [] }, findings: [] };
  }
  const effects = shotEffects(float, hangingG, tub, shot, conditions);
  const seen = seenShot(shotEffects(float, hangingG, tub, tub, conditions), showingMm);
  const left = tubWithout(tub, shot);
  const forSale = rig.scaleSizes
    .filter(({ name }) => tub.every(({ size }) => size !== name))
    .map(({ name, massG }): Shot => ({ size: name, massG, metal: first(tub).metal }));
  const findings = checkTipMark({
    float,
    water: conditions,
    loadPullG: hangingG,
    wantedMm,
    uncertaintyMm,
    left,
    forSale,
  });
  const states = seen ? tipStates(float, hangingG, seen, conditions) : [];
  return { figures: { ...common, tipSetBy: "shot", tipStates: states, shotEffects: effects }, findings };
}

/** The lightest shot of the tub that is missed when it is not there, and without which the float still stands. */
function seenShot(effects: readonly ShotEffect[], showingMm: Mm): Shot | undefined {
  const rising = [...effects].sort((a, b) => a.massG - b.massG);
  return rising.find(({ oneFewerMm }) => (oneFewerMm ?? 0) - showingMm >= seenTipMm);
}
