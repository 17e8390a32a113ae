import type { rigData } from "../../../src/build/data.ts";

export type RigJson = ReturnType<typeof rigData>;
export type DepthJson = RigJson["depths"][number];

/** How many of each size. */
export type Counts = Readonly<Record<string, number>>;

/** Shot told as one, and where: each place, the two ends of a stretch, or the lowest of shot pinched on together. */
export interface ToldGroup {
  readonly counts: Counts;
  readonly placesCm: readonly number[];
  readonly stretch?: "even" | "uneven";
}

/** One thing that an output says of a rig. */
export type Statement = { readonly teller: string; readonly depthCm?: number } & (
  | { readonly of: "setting"; readonly cm: number; readonly moved?: string }
  | { readonly of: "tip"; readonly mm: number }
  /** In running water that of a float held back by a share of the first pace. */
  | { readonly of: "hook over bed"; readonly cm: number; readonly heldBackShare: number }
  | { readonly of: "start here"; readonly overdepthCm: number; readonly toCm: number }
  | { readonly of: "lock"; readonly above: Counts; readonly below: Counts }
  | { readonly of: "line counted"; readonly counts: Counts }
  | { readonly of: "line placed"; readonly groups: readonly ToldGroup[] }
  /** A line of a depth guide: from one setting to another the tip shows so much, with that on the bed. */
  | {
      readonly of: "guide";
      readonly fromCm: number;
      readonly toCm: number;
      readonly tip: number | "flat" | "under";
      readonly onBed: Counts;
    }
  /** How the bait hangs in a stream: ahead of the float, or behind it with a minus. */
  | {
      readonly of: "hang";
      readonly paceMs: number;
      readonly heldBackShare: number;
      readonly leadCm: number;
      readonly offBedCm: number;
    }
  /** The depths of a table that tells of all of them. */
  | { readonly of: "all depths"; readonly cm: readonly number[] }
  | { readonly of: "whip"; readonly tipToWaterCm: number; readonly reachCm: number }
  | { readonly of: "session feed"; readonly ml: number }
  | { readonly of: "weakest"; readonly lb: number }
  | { readonly of: "role"; readonly group: ToldGroup; readonly role: string }
  | { readonly of: "shot drawn"; readonly count: number }
  | { readonly of: "tip set by"; readonly what: string }
  | { readonly of: "lock share"; readonly percent: number }
  | { readonly of: "draught"; readonly cm: number }
  | { readonly of: "session"; readonly hours: number }
  | { readonly of: "metals"; readonly metals: readonly string[] }
  | { readonly of: "feed"; readonly ml: number; readonly everyS: number }
  /** A drawing of the rig with its float, or stop knot, moved away from where it is set; up the line above 0. */
  | {
      readonly of: "moved";
      readonly cm: number;
      readonly movedCm: number;
      readonly overBedCm: number;
      readonly tipMm: number;
    }
  /** Lock shot that stay on the float for plumbing. */
  | { readonly of: "kept"; readonly above: Counts; readonly below: Counts }
  /** The plummet to take, or without a metal the mass that is missing from the box. */
  | { readonly of: "plummet"; readonly g: number; readonly metal?: string }
  | {
      readonly of: "plumbing try";
      readonly at: number;
      readonly cm: number;
      readonly sign: string;
      /** Deeper above 0. */
      readonly moveCm: number;
    }
  /** What the float does when it is set much too deep, and what is then moved. */
  | { readonly of: "too deep"; readonly sign: string; readonly moved: string }
  /** One shot of a size more or fewer at the float; null for a float that it takes under. */
  | { readonly of: "one shot"; readonly size: string; readonly more: boolean; readonly tipMm: number | null }
  /** A fish that takes the weight of the lowest shot that hangs. */
  | { readonly of: "lift"; readonly size: string; readonly riseMm: number }
  | { readonly of: "laid on"; readonly cm: number; readonly onBed: Counts; readonly tipMm: number }
  /** The share of holding back that the float's words are for. */
  | { readonly of: "held back"; readonly share: number }
  /** How much too deep a rig is set where its float begins to say so in running water. */
  | { readonly of: "too deep by"; readonly cm: number; readonly state: string; readonly onBed: Counts }
  | { readonly of: "hook length"; readonly cm: number }
  /** What a learner is told to bring for it. */
  | {
      readonly of: "kit";
      readonly floats: readonly string[];
      readonly sizes: readonly string[];
      readonly hooks: readonly number[];
      readonly mainLb: number;
      readonly hookLb: number;
      readonly baits: readonly string[];
    }
  | { readonly of: "tackle"; readonly hook: number; readonly hookLengthCm: number }
);

/** Half of the step to which a figure is rounded for a reader, and a little for the last digit. */
const halfCm = 0.501;
const halfTipStepMm = 2.501;
/** Shot pinched on together are less than this apart [cm]. */
const togetherCm = 2;

const countsOf = (sizes: readonly string[]): Counts =>
  Object.fromEntries([...new Set(sizes)].map((size) => [size, sizes.filter((one) => one === size).length]));

const same = (a: Counts, b: Counts) =>
  JSON.stringify(Object.entries(a).sort()) === JSON.stringify(Object.entries(b).sort());
const near = (a: number, b: number, within = halfCm) => Math.abs(a - b) <= within;
const total = (counts: Counts) => Object.values(counts).reduce((sum, count) => sum + count, 0);

type Placed = Pick<DepthJson["shot"][number], "size" | "fromHookCm">;

/** Whether told groups, from the hook up, are the shot of the line in their places. */
function placedAgree(line: readonly Placed[], groups: readonly ToldGroup[]): boolean {
  let at = 0;
  for (const group of groups) {
    const own = line.slice(at, at + total(group.counts));
    at += own.length;
    if (!groupAgrees(own, group)) return false;
  }
  return at === line.length;
}

function groupAgrees(own: readonly Placed[], { counts, placesCm, stretch }: ToldGroup): boolean {
  if (own.length === 0 || !same(countsOf(own.map(({ size }) => size)), counts)) return false;
  const cm = own.map(({ fromHookCm }) => fromHookCm);
  const gaps = cm.slice(1).map((here, i) => here - cm[i]!);
  if (stretch) {
    const even = stretch === "uneven" || gaps.every((gap) => near(gap, gaps[0]!, 2 * halfCm));
    return near(cm[0]!, placesCm[0]!) && near(cm.at(-1)!, placesCm.at(-1)!) && even;
  }
  if (placesCm.length === own.length) return cm.every((here, i) => near(here, placesCm[i]!));
  return placesCm.length === 1 && near(cm[0]!, placesCm[0]!) && gaps.every((gap) => gap < togetherCm);
}

/** Whether every step of a depth guide between two settings, which are steps of it themselves, says what a line says. */
function guideAgrees({ depthGuide, shot }: DepthJson, told: Extract<Statement, { of: "guide" }>): boolean {
  const steps = depthGuide.filter(
    ({ overdepthCm }) => overdepthCm > told.fromCm - halfCm && overdepthCm < told.toCm + halfCm,
  );
  const ends = [steps[0], steps.at(-1)].map((step) => step?.overdepthCm ?? Number.NaN);
  const size = (names: readonly string[]) => names.filter((name) => shot.some((one) => one.size === name));
  return (
    near(ends[0]!, told.fromCm) &&
    near(ends[1]!, told.toCm) &&
    steps.every(({ tipShowingMm, floatLiesFlat, shotOnBed }) => {
      const tip = tipShowingMm === null ? (floatLiesFlat ? "flat" : "under") : tipShowingMm;
      const tips =
        typeof tip === "number" && typeof told.tip === "number"
          ? near(tip, told.tip, halfTipStepMm)
          : tip === told.tip;
      return tips && same(countsOf(size(shotOnBed)), told.onBed);
    })
  );
}

/** Where the hook is set in still water, and where a current leaves it at the rig's first pace. */
function hookOverBedCm({ water }: RigJson, depth: DepthJson, share: number): number {
  const hangs = water === "flowing" ? (depth.flow ?? []) : [];
  const hang = hangs.find(
    ({ paceMs, heldBackShare }) => paceMs === hangs[0]!.paceMs && near(heldBackShare, share, 0.01),
  );
  return hang ? -hang.offBedCm : depth.overdepthCm;
}

function lockAgrees(
  { aboveEye, belowEye }: DepthJson["lock"],
  told: { above: Counts; below: Counts },
): boolean {
  return same(countsOf(aboveEye), told.above) && same(countsOf(belowEye), told.below);
}

/** Whether what an output says is what the rig's data say. */
export function agrees(rig: RigJson, statement: Statement): boolean {
  // What names no depth is of the shallowest.
  const ofDepth = statement.depthCm ?? rig.depths[0]!.depthCm;
  const depth = rig.depths.find(({ depthCm }) => near(depthCm, ofDepth, 0.1));
  const line = depth?.shot.filter(({ role }) => role !== "lock") ?? [];
  switch (statement.of) {
    case "setting":
      return near(depth!.floatToHookCm, statement.cm) && (statement.moved ?? rig.moved) === rig.moved;
    case "tip":
      return near(depth!.tipAsSetMm, statement.mm, halfTipStepMm);
    case "hook over bed":
      return near(hookOverBedCm(rig, depth!, statement.heldBackShare), statement.cm);
    case "start here": {
      // The rig's own setting, or the nearest one at which it can be fished.
      const start = depth!.depthGuide.find(({ advice }) => advice === "start-here")!;
      return near(start.overdepthCm, statement.overdepthCm) && near(start.overdepthCm, statement.toCm);
    }
    case "lock":
      return lockAgrees(depth!.lock, statement);
    case "line counted":
      return same(countsOf(line.map(({ size }) => size)), statement.counts);
    case "line placed":
      return placedAgree(line, statement.groups);
    case "guide":
      return guideAgrees(depth!, statement);
    case "hang": {
      const near5 = (a: number, b: number) => near(a, b, 0.05 * b);
      const hang = depth!.flow!.find(
        (one) =>
          near5(one.paceMs, statement.paceMs) && near(one.heldBackShare, statement.heldBackShare, 0.006),
      );
      return (
        hang !== undefined && near(hang.leadCm, statement.leadCm) && near(hang.offBedCm, statement.offBedCm)
      );
    }
    case "all depths":
      return (
        rig.depths.length === statement.cm.length &&
        rig.depths.every(({ depthCm }, at) => near(depthCm, statement.cm[at]!))
      );
    case "whip": {
      const { tipToWaterCm, reachCm } = depth!.whip!;
      return near(tipToWaterCm, statement.tipToWaterCm) && near(reachCm, statement.reachCm);
    }
    case "session feed":
      return near(rig.session.feedMl, statement.ml);
    case "weakest":
      return near(rig.lineChain.parts[0]!.lowG / 453.592, statement.lb, 0.051);
    case "role": {
      const own = depth!.shot.filter(({ role }) => role === statement.role);
      if (statement.role === "lock")
        return same(countsOf(own.map(({ size }) => size)), statement.group.counts);
      const from = own.findIndex(({ fromHookCm }) => near(fromHookCm, statement.group.placesCm[0]!));
      return from >= 0 && groupAgrees(own.slice(from, from + total(statement.group.counts)), statement.group);
    }
    case "shot drawn":
      return depth!.shot.length === statement.count;
    case "tip set by":
      return (statement.depthCm === undefined ? rig.depths : [depth!]).every(
        ({ tipSetBy }) => tipSetBy === statement.what,
      );
    case "lock share":
      return near(100 * depth!.lockShare, statement.percent);
    case "draught":
      return near(depth!.draughtCm, statement.cm);
    case "session":
      return near(rig.session.hours, statement.hours, 0.051);
    case "metals": {
      const metals = rig.depths.flatMap(({ shot }) => shot.map(({ metal }) => metal as string));
      return [...new Set(metals)].sort().join() === [...new Set(statement.metals)].sort().join();
    }
    case "feed":
      return near(rig.feed.portionMl, statement.ml, 0.501) && near(rig.feed.everyS, statement.everyS, 0.501);
    case "moved": {
      const { cm, movedCm, overBedCm, tipMm } = statement;
      const overdepthCm = depth!.overdepthCm + movedCm;
      const there = depth!.depthGuide.filter((step) => near(step.overdepthCm, overdepthCm, 2 * halfCm));
      // Off the bed everything hangs.
      const tips = overdepthCm < 0 ? [depth!.tipShowingMm] : there.map(({ tipShowingMm }) => tipShowingMm);
      return (
        near(depth!.floatToHookCm + movedCm, cm, 2 * halfCm) &&
        near(overdepthCm, overBedCm, 2 * halfCm) &&
        tips.some((tip) => tip !== null && near(tip, tipMm, halfTipStepMm))
      );
    }
    case "kept":
      return lockAgrees(depth!.plumbing.keptOnFloat, statement);
    case "plummet": {
      const { plummet, plummetNeededG } = depth!.plumbing;
      if (statement.metal === undefined) return !plummet && near(plummetNeededG, statement.g, 0.0501);
      return plummet?.massG === statement.g && plummet.metal === statement.metal;
    }
    case "plumbing try": {
      const { settingCm, sign, moveCm } = depth!.plumbing.steps[statement.at]!;
      return near(settingCm, statement.cm) && sign === statement.sign && near(moveCm, statement.moveCm);
    }
    case "too deep":
      return depth!.plumbing.tooDeep === statement.sign && rig.moved === statement.moved;
    case "one shot": {
      const effect = depth!.shotEffects.find(({ size }) => size === statement.size)!;
      const tip = statement.more ? effect.oneMoreMm : effect.oneFewerMm;
      if (typeof tip !== "number" || statement.tipMm === null) return (tip ?? null) === statement.tipMm;
      return near(tip, statement.tipMm, halfTipStepMm);
    }
    case "lift": {
      const hangs = line.find(({ fromHookCm }) => fromHookCm > depth!.overdepthCm);
      return hangs?.size === statement.size && statement.riseMm > 0;
    }
    case "laid on":
      return depth!.depthGuide.some(
        ({ overdepthCm, tipShowingMm, shotOnBed }) =>
          near(overdepthCm, statement.cm, 2 * halfCm) &&
          near(tipShowingMm ?? Number.NaN, statement.tipMm, halfTipStepMm) &&
          same(countsOf(shotOnBed), statement.onBed),
      );
    case "held back":
      return near(depth!.guidedFlow!.heldBackShare, statement.share, 0.006);
    case "too deep by": {
      const step = depth!.depthGuide.find(({ state }) => state === statement.state)!;
      return near(-step.moveCm, statement.cm) && same(countsOf(step.shotOnBed), statement.onBed);
    }
    case "hook length":
      return near(rig.hookLengthCm, statement.cm);
    case "kit": {
      const { floats, sizes, hooks, mainLb, hookLb, baits } = statement;
      const lb = (grams: number, told: number) => near(grams / 453.592, told, 0.051);
      return (
        floats.includes(rig.float.title) &&
        rig.depths.every(({ shot }) => shot.every(({ size }) => sizes.includes(size))) &&
        hooks.includes(rig.hook.size) &&
        lb(rig.mainLine.strengthG, mainLb) &&
        lb(rig.hookLength.strengthG, hookLb) &&
        baits.includes(rig.bait.title)
      );
    }
    case "tackle":
      return rig.hook.size === statement.hook && near(rig.hookLengthCm, statement.hookLengthCm);
  }
}
