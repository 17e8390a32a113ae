import { type Answer, answer, type Finding, noAnswer, type ToldShot, warning } from "../core/finding.ts";
import { tipStepMm } from "../core/float/tip.ts";
import { paired } from "../core/lists.ts";
import { forbiddenLead } from "../core/tackle/lead-rule.ts";
import type { Shot, StockedShot, Tub } from "../core/tackle/shot.ts";
import { countSizes } from "../core/tackle/shot-groups.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { withWater } from "./in-water.ts";
import { compared, nearestMade, nearestOf } from "./nearest-making.ts";
import { solveRig } from "./solve-rig.ts";

/** A rig made up from somebody's own box, and as the guide has it. */
export interface FromBox {
  /** Its depths' findings say what is other than the guide's. */
  readonly made: SolvedRig;
  readonly own: SolvedRig;
}

/**
 * A rig made up from somebody's own box: exactly where it can be, else with the nearest shot that keep its pattern and its
 * lock. Each depth's findings then say which shot are others, and what that does to the tip.
 *
 * @returns no answer where the guide's own shot give none either, and `box.cannot-be-made` where no shot of the box keep
 *   the pattern, or where the float would not stand
 */
export function fromBox(rig: Rig, box: Tub): Answer<FromBox> {
  const own = solveRig(rig);
  if (!own.ok) return own;
  const { usable, leftOut } = withoutForbidden(rig, box);
  const made = nearestMade(rig, usable, own.value);
  if (!made) {
    const { findings } = noAnswer("box.cannot-be-made", { sizes: listed(usable.map(({ size }) => size)) });
    return { ok: false, findings: [...findings, ...leftOut] };
  }
  const depths = paired(made.depths, own.value.depths).map(([depth, ownDepth]) => {
    const changed = isSame(depth, ownDepth) ? [] : changes(depth, ownDepth);
    // Which size to buy is said once, by `worthBuying`.
    const found = depth.findings.filter(({ code }) => changed.length === 0 || code !== "tip-off-mark-buy");
    return { ...depth, findings: [...leftOut, ...changed, ...found] };
  });
  return answer({ made: { ...made, depths }, own: own.value }, [
    ...made.findings,
    ...depths.flatMap(({ findings }) => findings),
  ]);
}

/**
 * The one size that is worth buying for a rig: of the guide's own shot the one that, added to the box, brings the rig
 * nearest to the guide's. It tries each of them, so it waits until nobody is typing.
 *
 * @param made what `fromBox` answered; nothing where the box cannot make the rig
 * @returns nothing where the box makes the rig as the guide has it, or where no one size betters it
 */
export function worthBuying(rig: Rig, box: Tub, made?: FromBox): readonly Finding[] {
  const own = made?.own ?? valueOrNone(solveRig(rig));
  if (!own) return [];
  if (made && paired(made.made.depths, own.depths).every(([one, other]) => isSame(one, other))) return [];
  const { usable } = withoutForbidden(rig, box);
  const now = made && nearestOf(rig, usable, own)[0]?.nearness;
  const wanted = new Map(own.depths.flatMap((depth) => allShot(depth).map((shot) => [shot.size, shot])));
  const tried = [...wanted.values()]
    .filter(({ size }) => !usable.some((one) => one.size === size && one.count === Number.POSITIVE_INFINITY))
    .map((shot) => ({ size: shot.size, box: withPlenty(usable, shot) }))
    .flatMap((one) => {
      const nearness = nearestOf(rig, one.box, own)[0]?.nearness;
      return nearness && (!now || compared(nearness, now) < 0) ? [{ ...one, nearness }] : [];
    })
    .sort((a, b) => compared(a.nearness, b.nearness));
  const buy = tried.find((one) => nearestMade(rig, one.box, own));
  return buy ? [warning(made ? "box.buy" : "box.buy-to-make", { size: buy.size })] : [];
}

const valueOrNone = <T>(got: Answer<T>): T | undefined => (got.ok ? got.value : undefined);

function withPlenty(box: Tub, { size, massG, metal }: Shot): Tub {
  const bought: StockedShot = { size, massG, metal, count: Number.POSITIVE_INFINITY };
  return [...box.filter((shot) => shot.size !== size), bought].sort((a, b) => b.massG - a.massG);
}

/** What the law lets be used, and what is left in the box for it. */
function withoutForbidden({ leadRule }: Rig, box: Tub) {
  const barred = new Set(forbiddenLead(box, leadRule).map(({ size }) => size));
  const usable = box.filter(({ size, metal }) => !(metal === "lead" && barred.has(size)));
  const { place } = leadRule;
  const leftOut = barred.size > 0 ? [warning("box.lead-left-out", { sizes: listed(barred), place })] : [];
  return { usable, leftOut };
}

/** The made rig with the water's part, which says what becomes of the fall, and with the size that is worth buying. */
export function boxInWater(rig: Rig, box: Tub, { made, own }: FromBox): Answer<SolvedRig> {
  const [wet, ownWet] = [withWater(made), withWater(own)];
  if (!wet.ok || !ownWet.ok) return wet;
  const buy = worthBuying(rig, box, { made, own });
  const depths = paired(wet.value.depths, ownWet.value.depths).map(([depth, ownDepth]) => ({
    ...depth,
    findings: toldLater(depth.findings, [
      ...fallFromBox(depth, ownDepth),
      ...(isSame(depth, ownDepth) ? [] : buy),
    ]),
  }));
  return answer({ ...wet.value, depths }, [...wet.findings, ...depths.flatMap(({ findings }) => findings)]);
}

/** What is known later of a box stands after what was known of it at once, and before all else. */
export function toldLater(found: readonly Finding[], later: readonly Finding[]): readonly Finding[] {
  const [ofBox, others] = [true, false].map((is) =>
    found.filter(({ code }) => code.startsWith("box.") === is),
  );
  return [...(ofBox ?? []), ...later, ...(others ?? [])];
}

/** What another shotting does to the fall of the bait; nothing where it is the guide's own, or the fall is not known. */
export function fallFromBox(made: SolvedDepth, own: SolvedDepth): readonly Finding[] {
  const fallS = made.inWater?.sink[0]?.tenthsS.at(-1);
  const ownS = own.inWater?.sink[0]?.tenthsS.at(-1);
  if (isSame(made, own) || fallS === undefined || ownS === undefined) return [];
  const isTold = Math.abs(fallS - ownS) >= Math.max(leastFallS, leastFallShare * ownS);
  return [isTold ? warning("box.fall-changed", { fallS, ownS }) : warning("box.fall-kept", { fallS })];
}

/** Times are told to the second, and the fall is known to a few hundredths. */
const leastFallS = 1;
const leastFallShare = 0.05;

/** The first of some rigs that a box can make, and how that is told. */
export function rigThatCan(rigs: readonly Rig[], boxFor: (rig: Rig) => Tub | undefined) {
  const rig = rigs.find((one) => {
    const box = boxFor(one);
    return box && fromBox(one, box).ok;
  });
  return rig && { rig, finding: warning("box.rig-that-can", { rig: rig.title }) };
}

/** The same shot in their places, and a tip that shows the same; another lock of the same pull is no other rig. */
function isSame(depth: SolvedDepth, own: SolvedDepth): boolean {
  const onLine = ({ lineShot }: SolvedDepth) => lineShot.map(({ size }) => size).join();
  return onLine(depth) === onLine(own) && Math.abs(depth.tipShowingMm - own.tipShowingMm) < tipStepMm;
}

function changes(depth: SolvedDepth, own: SolvedDepth): readonly Finding[] {
  const [tipMm, ownMm] = [depth.tipAsSetMm, own.tipAsSetMm];
  return [
    ...(isSameLoad(depth.lineShot, own.lineShot)
      ? []
      : [warning("box.other-line-shot", { used: told(depth.lineShot), own: told(own.lineShot) })]),
    ...(isSameLoad(depth.lockShot, own.lockShot)
      ? []
      : [warning("box.other-lock", { used: told(depth.lockShot), own: told(own.lockShot) })]),
    Math.round(tipMm / tipStepMm) === Math.round(ownMm / tipStepMm)
      ? warning("box.tip-kept", { tipMm })
      : warning("box.tip-changed", { tipMm, ownMm }),
  ];
}

const told = (shots: readonly Shot[]): ToldShot[] => shots.map(({ size, massG }) => ({ size, massG }));

function isSameLoad(shots: readonly Shot[], others: readonly Shot[]): boolean {
  const [one, other] = [countSizes(shots), countSizes(others)];
  return (
    one.length === other.length &&
    paired(one, other).every(([a, b]) => a.size === b.size && a.count === b.count)
  );
}

const listed = (sizes: Iterable<string>) => [...new Set(sizes)].join(", ");
