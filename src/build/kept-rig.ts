import { digestOnce } from "../model/digest.ts";
import type { InWater } from "../model/in-water.ts";
import { inMemory, type Keep } from "../model/kept.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { solveWholly } from "../solve/solve-wholly.ts";

/** Rigs whose sums are not looked up again: those of the depths take some 200 kB each, how it sinks and hangs several times as much. */
const depthsAtHand = 100;
const waterAtHand = 30;

/** The last ones at hand, of those that are kept elsewhere. */
const atHand = new WeakMap<Keep, { readonly depths: Keep; readonly water: Keep }>();

function atHandOver(keep: Keep) {
  const found = atHand.get(keep) ?? {
    depths: inMemory(depthsAtHand),
    water: inMemory(waterAtHand, keep),
  };
  atHand.set(keep, found);
  return found;
}

/** The sums of a depth without how the rig sinks and hangs there, and whether that is known. */
interface DryDepth {
  readonly depth: Omit<SolvedDepth, "inWater">;
  readonly isWet: boolean;
}

/**
 * A rig with all its sums, where it can be had, and all that was found on the way. The sums of its depths, and how it is in the
 * water, are looked up when somebody asks for them, and held no longer, as a guide may have thousands of rigs.
 */
export function wholly(rig: Rig, keep: Keep) {
  const hand = atHandOver(keep);
  const from = digestOnce(rig);
  const water = (of = () => solved(rig)) => hand.water("water of rig", from, () => of().water);
  const depths = (of = () => solved(rig)) =>
    hand.depths("depths of rig", from, () =>
      keep("depths of rig", from, () => of().depths).map(({ depth, isWet }, at) =>
        isWet ? withWater(depth, () => water()[at]) : depth,
      ),
    );
  const { value, findings } = keep("rig", from, () => {
    const made = solved(rig);
    water(() => made);
    depths(() => made);
    return { value: made.value, findings: made.findings };
  });
  if (!value) return { value, findings };
  const whole: SolvedRig = {
    ...value,
    rig,
    get depths() {
      return depths();
    },
  };
  return { value: whole, findings };
}

const withWater = (depth: DryDepth["depth"], water: () => InWater | undefined): SolvedDepth =>
  Object.defineProperty({ ...depth }, "inWater", { get: water, enumerable: true });

/** All that a rig's sums give, in the parts in which it is asked for. */
function solved(rig: Rig) {
  const whole = solveWholly(rig);
  const { findings } = whole;
  if (!whole.ok) return { value: undefined, depths: [], water: [], findings };
  // The rig itself is at hand.
  const { rig: _, depths, ...value } = whole.value;
  const water = depths.map(({ inWater }) => inWater);
  const dry = depths.map(({ inWater, ...depth }): DryDepth => ({ depth, isWet: inWater !== undefined }));
  return { value, depths: dry, water, findings };
}
