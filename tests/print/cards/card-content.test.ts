import { expect, test } from "vitest";
import { neighbours } from "../../../src/core/lists.ts";
import { pullG, type Shot } from "../../../src/core/tackle/shot.ts";
import type { Rig } from "../../../src/model/rig.ts";
import { allShot } from "../../../src/model/solved.ts";
import type { UnitChoice } from "../../../src/model/unit-choice.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { floatAtRest } from "../../support/still-float.ts";

const { rigs, library } = shippedGuide;

const kitIn = (units: UnitChoice) => {
  const figures = makeFigures(units, drawingKit.words, "en").compact;
  return { ...drawingKit, figures };
};

/** A length as a card tells it, read anew [mm]: `191 cm`, `1.5 m`, `3¾″`, `12′5½″`. */
function readMm(told: string): number {
  const [, metric, unit] = /^([\d.]+)\s(cm|m)$/.exec(told) ?? [];
  if (metric) return Number(metric) * (unit === "m" ? 1000 : 10);
  const [, feet, whole, fraction] = /^(?:(\d+)′)?(?:(\d+)?([¼½¾])?″)?$/.exec(told)!;
  return 25.4 * (12 * Number(feet ?? 0) + Number(whole ?? 0) + ("¼½¾".indexOf(fraction ?? "-") + 1) / 4);
}

test.each(["metric", "metric first", "imperial", "us"] as const)(
  "in %s units the rule for any other depth, or for those between, gives what the table gives for each",
  (units) => {
    let rules = 0;
    for (const solved of rigs) {
      const { otherDepth, depthBetween, depths } = cardContent(solved, library.guide, kitIn(units));
      expect([otherDepth, depthBetween].filter(Boolean), solved.rig.id).toHaveLength(1);
      rules += 1;
      const [, sign, gap] = /depth\s([−+])\s(\S+(?:\scm)?),/.exec(otherDepth ?? depthBetween!)!;
      const moreMm = readMm(gap!) * (sign === "+" ? 1 : -1);
      for (const { depth, setAt } of depths)
        expect(readMm(depth) + moreMm, `${solved.rig.id}, ${depth}`).toBeCloseTo(readMm(setAt), 6);
    }
    expect(rules).toBe(rigs.length);
  },
);

test.each(["metric", "imperial"] as const)(
  "in %s units the line to the hook is told to half a step of the depth and half a step of its own",
  (units) => {
    // Half a centimetre, as depths are whole ones; half an inch of depth and a quarter of line.
    const withinMm = units === "metric" ? 5 : 0.75 * 25.4;
    for (const solved of rigs) {
      const { depths } = cardContent(solved, library.guide, kitIn(units));
      depths.forEach(({ setAt }, at) => {
        const offMm = Math.abs(readMm(setAt) - solved.depths[at]!.floatToHookMm);
        expect(offMm, `${solved.rig.id}, ${setAt}`).toBeLessThanOrEqual(withinMm + 1e-6);
      });
    }
  },
);

const stillRigs = rigs
  .filter(({ rig }) => rig.water === "still")
  .map((solved) => [solved.rig.id, solved] as const);
const pullOf = ({ conditions }: Rig, shots: readonly Shot[]) =>
  shots.reduce((sum, { massG, metal }) => sum + pullG(massG, metal, conditions), 0);

/** How far a hook is set from where a plummet found the bed, as a card tells it [mm]. */
function furtherMm(setDepth: string): number {
  const [, gap, way] = /Then set it (\S+\scm) (deeper|shallower)\.$/.exec(setDepth) ?? [];
  return gap ? readMm(gap) * (way === "deeper" ? 1 : -1) : 0;
}

/** How near the setting of the card's own table is come to: a step of the float and a tip told to 5 mm [mm]. */
const settingWithinMm = 12;
/** How much too deep the last move of a float may take it: a hand's breadth [mm]. Common practice, no source. */
const lastMoveMm = 60;
/** How near the hook comes to where it is to be, as statics have the tip another than the plummet had it [mm]. */
const hookWithinMm = 20;

test.each(stillRigs)(
  "%s: who finds the depth as the card tells has the hook where the rig has it",
  (_, solved) => {
    const { rig, hookAndBaitPullG } = solved;
    const moveMm = furtherMm(cardContent(solved, library.guide, kitIn("metric")).setDepth);
    for (const depth of solved.depths) {
      // The plummet on the bed below the float, the line tight, the tip as it should show.
      const plumbedMm = depth.depthMm - (solved.floatLengthMm - depth.tipAsSetMm);
      const line = depth.lineShot.map((shot) => ({ ...shot, pullG: pullOf(rig, [shot]) }));
      const stands = floatAtRest(
        rig.float,
        rig.conditions,
        pullOf(rig, depth.lockShot),
        [{ fromHookMm: 0, pullG: hookAndBaitPullG }, ...line],
        plumbedMm + moveMm,
        depth.depthMm,
      );
      expect(Math.abs(stands.hookMm - depth.depthMm - Math.min(0, rig.overdepthMm))).toBeLessThan(
        hookWithinMm,
      );
      expect(Math.abs(stands.slackMm - Math.max(0, rig.overdepthMm))).toBeLessThan(hookWithinMm);
    }
  },
);

test.each(stillRigs)(
  "%s: with a plummet on the hook, from shallow on, the tip first shows as it should at the depth there is",
  (_, solved) => {
    const { rig, depths } = solved;
    const { setDepth } = cardContent(solved, library.guide, kitIn("metric"));
    const onLine = !setDepth.includes("no shot on the line");
    for (const depth of depths) {
      const line = depth.lineShot.map((shot) => ({ ...shot, pullG: pullOf(rig, [shot]) }));
      const tipAt = (floatToHookMm: number) =>
        floatAtRest(
          rig.float,
          rig.conditions,
          pullOf(rig, depth.lockShot),
          // A plummet heavier than any float of the guide bears.
          [{ fromHookMm: 0, pullG: 20 }, ...(onLine ? line : [])],
          floatToHookMm,
          depth.depthMm,
        ).tipMm ?? 0;
      const plumbedMm = depth.depthMm - depth.draughtMm;
      const highestMm = Math.max(0, ...depth.lineShot.map(({ fromHookMm }) => fromHookMm));
      const firstRightMm = (fromMm: number, stepMm: number) => {
        let setMm = fromMm;
        // Tips are told to 5 mm.
        while (tipAt(setMm) < depth.tipAsSetMm - 2.5 && setMm < plumbedMm + 500) setMm += stepMm;
        return setMm;
      };
      const startMm = Math.max(highestMm, plumbedMm - 300);
      const setMm = firstRightMm(startMm, 5);
      expect(Math.abs(setMm - plumbedMm), `${depth.depthMm}`).toBeLessThanOrEqual(hookWithinMm);
      const setAsTold = setMm + furtherMm(setDepth);
      expect(Math.abs(setAsTold - depth.floatToHookMm), `${depth.depthMm}`).toBeLessThanOrEqual(
        settingWithinMm,
      );
      // By the moves that the card names, wherever the first is made, no more than one of them too deep.
      const [, step = ""] = /up (\S+\scm) at a time until/.exec(setDepth) ?? [];
      for (let later = 0; later < readMm(step); later += 5) {
        const moved = firstRightMm(startMm + later, readMm(step)) - setMm;
        expect(moved, `${depth.depthMm}, from ${later} mm later on`).toBeLessThan(lastMoveMm);
        expect(moved).toBeGreaterThanOrEqual(0);
      }
    }
  },
);

const runningRigs = rigs
  .filter(({ rig }) => rig.water === "flowing")
  .map((solved) => [solved.rig.id, solved] as const);

test.each(runningRigs)(
  "%s: who feels for the bed as the card tells has the rig set within two raises of right, in each of its depths",
  (_, solved) => {
    const { setDepth } = cardContent(solved, library.guide, kitIn("metric"));
    const [, raise] = /raise it (\S+\scm) at a time until it runs clean\./.exec(setDepth)!;
    const [, gap] = /Then set it (\S+\scm) shallower\.$/.exec(setDepth) ?? [];
    const furtherMm = gap ? readMm(gap) : 0;
    for (const { depthMm, depthGuide } of solved.depths) {
      const tooDeepMm = -depthGuide.find(({ state }) => state !== "hangs")!.moveMm;
      // The last raise took the hook up from where the float dips by anything up to the whole of it.
      for (const raisedMm of [0, readMm(raise!)])
        expect(Math.abs(raisedMm + furtherMm - tooDeepMm), `${depthMm}`).toBeLessThanOrEqual(
          2 * readMm(raise!),
        );
    }
  },
);

test("a hook that is set a few millimetres from where it is found stays there", () => {
  const [, solved] = stillRigs[0]!;
  const setDepth = (overdepthMm: number) =>
    cardContent({ ...solved, rig: { ...solved.rig, overdepthMm } }, library.guide, kitIn("metric")).setDepth;
  expect(setDepth(4)).toMatch(/Then it is set\.$/);
  expect(setDepth(-4)).toMatch(/Then it is set\.$/);
  expect(setDepth(6)).toMatch(/Then set it 1\scm deeper\.$/);
  expect(setDepth(-6)).toMatch(/Then set it 1\scm shallower\.$/);
});

test("no card has shot added for a tip that it says a rig set too deep shows", () => {
  let tooDeep = 0;
  for (const solved of rigs) {
    const { floatSays, tipSays } = cardContent(solved, library.guide, kitIn("metric"));
    const shown = floatSays.flatMap(
      (said) => /too deep: tip (\d+)/.exec(said.replaceAll("\u00a0", " "))?.[1] ?? [],
    );
    const [, right, when, todo] = /^More tip than (\d+)\smm (.*?): (.*?)\./.exec(tipSays) ?? [];
    if (!shown.some((tip) => Number(tip) > Number(right)) || !todo!.includes("add")) continue;
    tooDeep += 1;
    expect(when, solved.rig.id).toBe("at the right depth");
  }
  expect(tooDeep).toBeGreaterThan(5);
});

test("between two depths the shot of the shallower one weigh as much as those of the deeper and have room below the float", () => {
  let between = 0;
  for (const solved of rigs) {
    if (cardContent(solved, library.guide, kitIn("metric")).depthBetween === undefined) continue;
    for (const [shallower, deeper] of neighbours(solved.depths)) {
      between += 1;
      const [less, more] = [shallower, deeper].map((depth) => pullOf(solved.rig, allShot(depth)));
      // So little that the tip is told alike.
      expect(Math.abs(less! - more!), solved.rig.id).toBeLessThan(0.02);
      const highestMm = Math.max(0, ...shallower.lineShot.map(({ fromHookMm }) => fromHookMm));
      expect(highestMm, solved.rig.id).toBeLessThan(shallower.floatToHookMm);
      expect(shallower.floatToHookMm).toBeLessThan(deeper.floatToHookMm);
    }
  }
  expect(between).toBeGreaterThan(15);
});
