import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/core/finding.ts";
import { moveFloat, variantsOf } from "../../src/core/float/moved-float.ts";
import { pullG, type Shot } from "../../src/core/tackle/shot.ts";
import type { Rig } from "../../src/model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../src/model/solved.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { floatAtRest, type Hung, type Stands } from "../support/still-float.ts";
import { randomStillRigs, shippedStillRigs } from "../support/still-rigs.ts";

/** How near the hook has to come to where the advice promised it [mm]. */
const hookWithinMm = 20;
/** The model's slices and the core's cones agree to this; far finer than any tip is told [mm]. */
const tipWithinMm = 0.5;

/** Advices followed so far, by kind. */
const held = new Map<string, number>();
const count = (kind: string) => held.set(kind, (held.get(kind) ?? 0) + 1);

/** Shot that stay on the float for plumbing. */
const keptOn = ({ plumbing: { kept } }: Pick<SolvedDepth, "plumbing">) => [...kept.above, ...kept.below];

const pullOf = ({ conditions }: Rig, shots: readonly Shot[]) =>
  shots.reduce((sum, { massG, metal }) => sum + pullG(massG, metal, conditions), 0);

/** What hangs on the line. */
function lineOf({ rig, hookAndBaitPullG }: SolvedRig, { lineShot }: SolvedDepth): readonly Hung[] {
  const line = lineShot.map((shot) => ({ fromHookMm: shot.fromHookMm, pullG: pullOf(rig, [shot]) }));
  return [{ fromHookMm: 0, pullG: hookAndBaitPullG }, ...line];
}

/** The float with its eye or stop knot so far from the hook, and with shot more or fewer at the float. */
function set(solved: SolvedRig, depth: SolvedDepth, floatToHookMm: number, moreG = 0): Stands {
  const { float, conditions } = solved.rig;
  const lockG = pullOf(solved.rig, depth.lockShot) + moreG;
  return floatAtRest(float, conditions, lockG, lineOf(solved, depth), floatToHookMm, depth.depthMm);
}

type Told = Pick<SolvedDepth["depthGuide"][number], "state" | "tipShowingMm">;

function expectState(stands: Stands, { state, tipShowingMm }: Told, what: string) {
  const said = { under: state === "drags under", flat: state === "lies flat" };
  expect({ under: stands.tipMm === null && !stands.flat, flat: stands.flat }, what).toEqual(said);
  if (tipShowingMm !== null) expect(Math.abs(stands.tipMm! - tipShowingMm), what).toBeLessThan(tipWithinMm);
}

/** Every line of the guide: what it says comes out, and so does the line to start at once its advice is followed. */
function followGuide(solved: SolvedRig, depth: SolvedDepth, what: string) {
  const starts = depth.depthGuide.filter(({ advice }) => advice === "start-here");
  expect(starts, what).toHaveLength(1);
  const start = starts[0]!;
  expect(start.tipShowingMm, what).toBeGreaterThan(0);
  const promisedHookMm = depth.depthMm + Math.min(0, start.overdepthMm);
  for (const step of depth.depthGuide) {
    const where = `${what}, ${step.overdepthMm} mm over depth`;
    const here = set(solved, depth, step.floatToHookMm);
    expectState(here, step, where);
    for (const { size, fromHookMm } of here.flat ? [] : depth.lineShot) {
      if (fromHookMm < here.slackMm - 1) expect(step.shotOnBed, where).toContain(size);
    }
    const there = set(solved, depth, step.floatToHookMm + step.moveMm);
    expectState(there, start, `${where}, moved ${step.moveMm} mm`);
    expect(Math.abs(there.hookMm - promisedHookMm), where).toBeLessThanOrEqual(hookWithinMm);
    count("line of the depth guide");
  }
  for (const [at, row] of depth.guideRows.entries()) {
    // No two rows begin with the same words: settings are told to the centimetre.
    const before = depth.guideRows[at - 1];
    if (before)
      expect(Math.round(row.overdepthMm / 10), what).toBeGreaterThan(Math.round(before.toOverdepthMm / 10));
    const ends = [
      [row.overdepthMm, row.moveMm],
      [row.toOverdepthMm, row.toMoveMm],
    ] as const;
    for (const [overdepthMm, moveMm] of ends) {
      const there = set(solved, depth, start.floatToHookMm + (overdepthMm + moveMm - start.overdepthMm));
      expectState(there, start, `${what}, row from ${row.overdepthMm} mm`);
    }
    count("row of the depth guide");
  }
}

/** The plummet that is named takes the float under with what is kept on it, no lighter one in the box does. */
function followPlummet({ rig }: SolvedRig, { plumbing, depthMm }: SolvedDepth, what: string) {
  const keptG = pullOf(rig, keptOn({ plumbing }));
  const under = (massG: number, metal: Shot["metal"]) => {
    const plummet = { fromHookMm: 0, pullG: pullG(massG, metal, rig.conditions) };
    const hanging = floatAtRest(rig.float, rig.conditions, keptG, [plummet], 100, depthMm + 10_000);
    return hanging.tipMm === null && !hanging.flat;
  };
  for (const { massG, metal } of rig.plummets) {
    const sinks = under(massG, metal);
    if (plumbing.plummet && massG < plumbing.plummet.massG) expect(sinks, what).toBe(false);
    if (plumbing.plummet?.massG === massG) expect(sinks, what).toBe(true);
    if (!plumbing.plummet) expect(sinks, what).toBe(false);
  }
  if (plumbing.plummetNeededG > 0) {
    expect(under(plumbing.plummetNeededG * 1.01, "zinc"), what).toBe(true);
    expect(under(plumbing.plummetNeededG * 0.98, "zinc"), what).toBe(false);
  }
  count("plummet");
}

/** Try by try with a plummet on the hook: the float does what is said, and the last try has the hook on the bed. */
function followPlumbing(solved: SolvedRig, depth: SolvedDepth, what: string) {
  const { rig } = solved;
  const { float, conditions } = rig;
  const markMm = rig.tipWantedMm ?? float.tipShowingMm;
  const draughtMm = float.profile.at(-1)!.atMm - markMm;
  const keptG = pullOf(rig, keptOn(depth));
  const plummet = { fromHookMm: 0, pullG: 100 };
  let settingMm = depth.plumbing.steps[0]!.settingMm;
  for (const step of depth.plumbing.steps) {
    const where = `${what}, plumbed at ${settingMm} mm`;
    expect(step.settingMm, where).toBeCloseTo(settingMm, 6);
    const { tipMm, flat } = floatAtRest(
      float,
      conditions,
      keptG,
      [plummet],
      settingMm - draughtMm,
      depth.depthMm,
    );
    if (step.sign === "goes under") expect({ tipMm, flat }, where).toEqual({ tipMm: null, flat: false });
    if (step.sign === "lies flat") expect(flat, where).toBe(true);
    if (step.sign === "stands too low") expect(tipMm, where).toBeLessThan(markMm);
    if (step.sign === "stands too high") expect(tipMm, where).toBeGreaterThan(markMm);
    if (step.sign === "shows its mark")
      expect(Math.abs(tipMm! - markMm), where).toBeLessThanOrEqual(hookWithinMm + tipWithinMm);
    settingMm += step.moveMm;
    count("try with the plummet");
  }
  expect(Math.abs(settingMm - depth.depthMm), what).toBeLessThanOrEqual(hookWithinMm);
}

/** A shot more or fewer at the float, as the table of the page tells it. */
function followShot(solved: SolvedRig, depth: SolvedDepth, what: string) {
  for (const { size, oneMoreMm, oneFewerMm, ...shot } of depth.shotEffects) {
    const shotG = pullOf(solved.rig, [{ size, ...shot }]);
    // All hangs clear: the water is as deep as it takes.
    const clear = { ...depth, depthMm: 1e6 };
    const more = set(solved, clear, depth.floatToHookMm, shotG);
    expectState(more, tipOf(oneMoreMm, "drags under"), `${what}, one ${size} more`);
    if (oneFewerMm !== undefined) {
      const fewer = set(solved, clear, depth.floatToHookMm, -shotG);
      expectState(fewer, tipOf(oneFewerMm, "lies flat"), `${what}, one ${size} fewer`);
    }
    count("shot more or fewer");
  }
}

const tipOf = (tipShowingMm: number | null, none: Told["state"]): Told => ({
  state: tipShowingMm === null ? none : "hangs",
  tipShowingMm,
});

/** The float moved on the line, or the stop knot. */
function followMoves(solved: SolvedRig, depth: SolvedDepth, what: string) {
  for (const variant of variantsOf(depth, "still")) {
    const moved = moveFloat(depth, "still", variant);
    const there = set(solved, depth, moved.floatToHookMm);
    const promisedHookMm = depth.depthMm + Math.min(0, moved.overdepthMm);
    expect(Math.abs(there.hookMm - promisedHookMm), `${what}, ${variant}`).toBeLessThanOrEqual(hookWithinMm);
    expect(Math.abs((there.tipMm ?? 0) - moved.tipShowingMm), `${what}, ${variant}`).toBeLessThan(1.5);
    count("float moved on the line");
  }
}

/** What a finding tells to do. */
function followFinding(solved: SolvedRig, depth: SolvedDepth, finding: Finding, what: string) {
  const { rig } = solved;
  const where = `${what}, ${finding.code}`;
  switch (finding.code) {
    case "setting-too-shallow":
    case "setting-too-deep": {
      const moveMm = "deeperMm" in finding.values ? finding.values.deeperMm : -finding.values.shallowerMm;
      const shownBefore = set(solved, depth, depth.floatToHookMm).tipMm ?? 0;
      const shownAfter = set(solved, depth, depth.floatToHookMm + moveMm).tipMm ?? 0;
      expect(shownBefore, where).toBeLessThan(5);
      expect(shownAfter, where).toBeGreaterThanOrEqual(5 - tipWithinMm);
      break;
    }
    case "tip-off-mark-add":
    case "tip-off-mark-buy": {
      const { size, thenMm, tipMm, wantedMm } = finding.values;
      const from = finding.code === "tip-off-mark-add" ? rig.tub : [];
      const bought = rig.scaleSizes.map(({ name, massG }) => ({
        size: name,
        massG,
        metal: rig.tub[0]!.metal,
      }));
      const shot = [...from, ...bought].find((one) => one.size === size)!;
      const clear = { ...depth, depthMm: 1e6 };
      const then = set(solved, clear, depth.floatToHookMm, pullOf(rig, [shot]));
      expect(Math.abs(then.tipMm! - thenMm), where).toBeLessThan(tipWithinMm);
      expect(Math.abs(thenMm - wantedMm), where).toBeLessThan(Math.abs(tipMm - wantedMm));
      break;
    }
    case "tip-off-mark": {
      const { missingG, wantedMm } = finding.values;
      const clear = { ...depth, depthMm: 1e6 };
      const then = set(solved, clear, depth.floatToHookMm, missingG);
      expect(Math.abs(then.tipMm! - wantedMm), where).toBeLessThan(tipWithinMm);
      break;
    }
    case "lock-does-not-cock": {
      if (!rig.float.heldByShot) return;
      const { lockPullG, neededG } = finding.values;
      const alone = (lockG: number) => floatAtRest(rig.float, rig.conditions, lockG, [], 100, 1e6).flat;
      expect([alone(lockPullG), alone(neededG + 1e-3)], where).toEqual([true, false]);
      break;
    }
    default:
      return;
  }
  count(`finding ${finding.code}`);
}

/** The lock in its two groups is the whole lock, and near-equal where nothing warns that it is not. */
function expectLock({ rig }: SolvedRig, depth: SolvedDepth, what: string) {
  const { above, below } = depth.lock;
  const names = (shots: readonly Shot[]) => shots.map(({ size }) => size).sort();
  expect(names([...above, ...below]), what).toEqual(names(depth.lockShot));
  if (depth.lockShot.length === 0) return;
  const [aboveG, belowG] = [pullOf(rig, above), pullOf(rig, below)];
  expect(belowG, what).toBeGreaterThanOrEqual(aboveG - 1e-9);
  const warned = depth.findings.some(({ code }) => /^loading\.(uneven|one-sided)-lock$/.test(code));
  expect(belowG > 0.6 * (aboveG + belowG) + 1e-6, what).toBe(warned);
  count("lock in two groups");
}

/** What the rig is made up from: no more shot than are in the tub, the lock asked for, and of that so few for plumbing. */
function expectMakeUp({ rig }: SolvedRig, depth: SolvedDepth, what: string) {
  const all = allShot(depth);
  for (const { size, metal, count: had } of rig.tub) {
    const used = all.filter((one) => one.size === size && one.metal === metal).length;
    expect(used, `${what}, ${size}`).toBeLessThanOrEqual(had);
  }
  if (depth.lockShot.length === 0) return;
  const linePullG = pullOf(rig, depth.lineShot);
  const forShotG = depth.pullG + depth.sparePullG;
  // The one shot of a lift rig pulls what it pulls.
  if (rig.pattern.kind !== "lift")
    expect(linePullG, what).toBeLessThanOrEqual((1 - rig.lockShareMin) * forShotG + 1e-6);
  // On each side stays the lightest that the finished lock has there: none is taken off to go on the other side.
  for (const side of ["above", "below"] as const) {
    const masses = depth.lock[side].map(({ massG }) => massG);
    const kept = depth.plumbing.kept[side].map(({ massG }) => massG);
    expect(kept, what).toEqual(masses.length > 0 ? [Math.min(...masses)] : []);
  }
  count("make-up of a lock");
}

/** A depth that is said to be too shallow for the pattern: in the depth that would do there is room. */
function followTooShallow(rig: Rig, findings: readonly Finding[]) {
  for (const finding of findings) {
    if (finding.code !== "pattern.too-shallow") continue;
    const deeper = solveRig({ ...rig, depthsMm: [finding.values.neededDepthMm] });
    const codes = deeper.findings.map(({ code }) => code);
    expect(codes, `${rig.id} in ${finding.values.neededDepthMm} mm`).not.toContain("pattern.too-shallow");
    count("depth that would do");
  }
}

function follow(rig: Rig) {
  const answer = solveRig(rig);
  followTooShallow(rig, answer.findings);
  if (!answer.ok) return;
  for (const depth of answer.value.depths) {
    const what = `${rig.id} in ${depth.depthMm} mm`;
    followGuide(answer.value, depth, what);
    followPlummet(answer.value, depth, what);
    followPlumbing(answer.value, depth, what);
    followShot(answer.value, depth, what);
    followMoves(answer.value, depth, what);
    expectLock(answer.value, depth, what);
    expectMakeUp(answer.value, depth, what);
    for (const finding of depth.findings) followFinding(answer.value, depth, finding, what);
    count("rig made up for a depth");
  }
}

describe("advice in still water closes the loop", () => {
  it.each(shippedStillRigs.map((rig) => [rig.id, rig] as const))("of %s", (_, rig) => {
    follow(rig);
  });

  it("of 400 rigs that nobody has seen", () => {
    for (const rig of randomStillRigs(400, 20)) follow(rig);
  });

  it("in more than ten thousand places", () => {
    const all = [...held.values()].reduce((sum, one) => sum + one, 0);
    expect(all).toBeGreaterThan(10_000);
    for (const code of ["setting-too-shallow", "setting-too-deep", "tip-off-mark-add", "tip-off-mark-buy"])
      expect(held.get(`finding ${code}`), code).toBeGreaterThan(0);
  });
});
