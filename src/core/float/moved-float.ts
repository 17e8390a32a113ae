import type { GuideStep } from "../depth/guide-step.ts";
import { wholeSettingMm } from "../depth/setting.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import type { Mm } from "../units.ts";
import type { WaterKind } from "../water/water.ts";

/** The rig as it is set, or the same rig with its float moved on the line. */
export const rigVariants = ["set", "over depth", "up in the water"] as const;
export type RigVariant = (typeof rigVariants)[number];

/** A rig set for one depth, as far as moving its float goes. */
interface SetRig {
  readonly depthMm: Mm;
  readonly overdepthMm: Mm;
  /** Surface to the float's lower eye at the tip shown. */
  readonly draughtMm: Mm;
  readonly floatToHookMm: Mm;
  readonly lineShot: readonly Pick<PlacedShot, "fromHookMm">[];
  /** Tip above the water while everything hangs clear. */
  readonly tipShowingMm: Mm;
  /** Tip as the rig is fished. */
  readonly tipAsSetMm: Mm;
  readonly depthGuide: readonly GuideStep[];
  /** What was reckoned of the rig in its water. */
  readonly inWater?: unknown;
}

/** Bare line that stays between the highest shot and a float that is moved down [mm]. */
const leastBareMm = 100;

/**
 * The depth of still water with the float moved on the line, which moves no shot below it; in running water the line
 * hangs otherwise at every setting, and the rig stays as it is. Over depth: so far that the lowest shot comes to rest on
 * the bed; a rig set that far already stays as it is. Up in the water: the bait at half depth, or as near to it as the
 * highest shot allows.
 */
export function moveFloat<T extends SetRig>(depth: T, water: WaterKind, variant: RigVariant): T {
  const move = moveTo(depth, water, variant);
  if (!move) return asSet(depth);
  const moved = setTo(depth, move.overdepthMm);
  return move.tipShowingMm === undefined ? moved : { ...moved, ...risen(depth, move.tipShowingMm) };
}

/** To where a variant has the float moved, and the tip that it then shows where that is another; nothing where the rig stays as it is. */
function moveTo(
  depth: SetRig,
  water: WaterKind,
  variant: RigVariant,
): { readonly overdepthMm: Mm; readonly tipShowingMm?: Mm } | undefined {
  if (water === "flowing" || variant === "set") return undefined;
  if (variant === "over depth") {
    const step = lowestRests(depth.depthGuide);
    if (!step || step.overdepthMm <= depth.overdepthMm) return undefined;
    return { overdepthMm: step.overdepthMm, tipShowingMm: step.tipShowingMm ?? depth.tipShowingMm };
  }
  const highestMm = Math.max(0, ...depth.lineShot.map((shot) => shot.fromHookMm));
  const leastMm = highestMm + leastBareMm + depth.draughtMm - depth.depthMm;
  const upMm = wholeSettingMm(Math.max(-depth.depthMm / 2, leastMm));
  return { overdepthMm: Math.min(depth.overdepthMm, upMm) };
}

/**
 * The variants that a rig has at a depth: over depth where that is farther than it is set, up in the water where its
 * shot leaves room to get there and the float can carry what hangs below it.
 */
export function variantsOf(depth: SetRig, water: WaterKind): RigVariant[] {
  const up = moveTo(depth, water, "up in the water");
  const has: Readonly<Record<RigVariant, boolean>> = {
    set: true,
    "over depth": moveTo(depth, water, "over depth") !== undefined,
    "up in the water":
      up !== undefined && up.overdepthMm < Math.min(0, depth.overdepthMm) && depth.tipShowingMm > 0,
  };
  return rigVariants.filter((variant) => has[variant]);
}

/**
 * Where the guide first has the lowest shot wholly on the bed, and the tip as high as that takes it; none where the float
 * then lies flat.
 */
function lowestRests(guide: readonly GuideStep[]): GuideStep | undefined {
  const first = guide.find((one) => one.shotOnBed.length > 0);
  const same = guide.filter(
    (one) => one.shotOnBed.length === first?.shotOnBed.length && one.tipShowingMm !== null,
  );
  const highestMm = Math.max(...same.map((one) => one.tipShowingMm!));
  return same.find((one) => one.tipShowingMm! > highestMm - 1);
}

/** The depth with the float as it stands when it is fished: what lies on the bed is off it. */
export function asSet<T extends SetRig>(depth: T): T {
  return { ...depth, ...risen(depth, depth.tipAsSetMm) };
}

function risen(depth: SetRig, tipShowingMm: Mm) {
  return { tipShowingMm, draughtMm: depth.draughtMm + depth.tipShowingMm - tipShowingMm };
}

/**
 * The depth with the float moved to another overdepth; what was reckoned of the rig in its water holds no longer.
 *
 * @param overdepthMm line beyond the depth, below 0 off the bed [mm]
 */
export function setTo<T extends SetRig>(depth: T, overdepthMm: Mm): T {
  const floatToHookMm = depth.floatToHookMm + overdepthMm - depth.overdepthMm;
  return { ...depth, overdepthMm, floatToHookMm, inWater: undefined };
}
