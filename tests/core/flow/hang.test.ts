import { expect, test } from "vitest";
import { hangInCurrent } from "../../../src/core/flow/hang.ts";
import { lineDensityKgM3 } from "../../../src/core/flow/hanging-rig.ts";
import { balanceOf, type FlowRig, hangingFrom } from "../../../src/core/flow/line-balance.ts";
import { neededLoadShare, tooLightPaceMs } from "../../../src/core/flow/too-light.ts";
import { gravityMmS2, sinkerOf } from "../../../src/core/sink/body-fall.ts";
import {
  axialDragGMmS,
  ballDragCoefficient,
  crossFlowDragCoefficient,
  fluidOf,
} from "../../../src/core/water/drag.ts";
import { odeSolver } from "../ode.ts";
import { bulked, rigWith, shotAt, strungOut, valueIn } from "../sink/rigs.ts";

const stick = (shot = strungOut, changes: Partial<FlowRig> = {}): FlowRig => ({
  ...rigWith(shot, { draughtMm: 100, floatToHookMm: 1900 }),
  floatDragAreaCm2: 6,
  ...changes,
});
const water = { tempC: 15, salinity: 0 };
const fluid = fluidOf(water);

test("one weight without line drag hangs at tan θ = drag ÷ weight", () => {
  // No line to speak of: its drag goes with its thickness, so a thickness of 0 leaves it out.
  const rig = stick([], { mainLineDiameterMm: 0, hookLineDiameterMm: 0 });
  const { weightUn } = sinkerOf(rig.bait, water);
  const diameterMm = Math.cbrt((6 * 0.15) / (Math.PI * 1.2e-3));
  for (const towMmS of [20, 100, 400, -250]) {
    const re = (Math.abs(towMmS) * diameterMm) / fluid.viscosityMm2S;
    const dragUn =
      0.5 * fluid.densityGMm3 * (Math.PI / 4) * diameterMm ** 2 * ballDragCoefficient(re) * towMmS ** 2;
    const line = balanceOf(rig).lineUp(hangingFrom(1000), () => towMmS, { kind: "length", lengthMm: 700 });
    const [hook, eye] = [line.points[0]!, line.points.at(-1)!];
    const tan = (hook.xMm - eye.xMm) / (hook.depthMm - eye.depthMm);
    // The ball's drag is tabled to 1e-4, the balance itself is exact.
    expect(Math.abs(tan) / (dragUn / weightUn)).toBeCloseTo(1, 4);
    expect(tan).toBeCloseTo(line.pushUn / line.weightUn, 9);
    expect(Math.hypot(hook.xMm - eye.xMm, hook.depthMm - eye.depthMm)).toBeCloseTo(700, 6);
  }
});

test("a bait whose fall was measured hangs at the square of tow over fall", () => {
  // Its drag is its weight at the pace of its fall, so drag ÷ weight = (tow ÷ fall)².
  const rig = stick([], {
    mainLineDiameterMm: 0,
    hookLineDiameterMm: 0,
    bait: { massG: 0.1, densityKgM3: 1100, fallMs: 0.08 },
  });
  for (const towMmS of [20, 80, 250]) {
    const line = balanceOf(rig).lineUp(hangingFrom(1000), () => towMmS, { kind: "length", lengthMm: 700 });
    const [hook, eye] = [line.points[0]!, line.points.at(-1)!];
    const tan = (hook.xMm - eye.xMm) / (hook.depthMm - eye.depthMm);
    expect(Math.abs(tan / (towMmS / 80) ** 2 - 1)).toBeLessThan(1e-9);
  }
});

test.each([50, 150, 400, -300])("line towed at %d mm/s lies as an ODE library has it", (towMmS) => {
  const rig = stick([]);
  const lengthMm = 1500;
  const line = balanceOf(rig).lineUp(hangingFrom(0), () => towMmS, { kind: "length", lengthMm });
  const bait = balanceOf(rig).lineUp(hangingFrom(0), () => towMmS, { kind: "length", lengthMm: 1e-9 });
  // Angle φ of the line from level and tension T against length: the same forces, in the line's own directions.
  const d = rig.mainLineDiameterMm;
  const lineWeight = (Math.PI / 4) * d * d * (lineDensityKgM3 * 1e-6 - fluid.densityGMm3) * gravityMmS2;
  const found = odeSolver(4, 1e-10).solve(
    (_, [t, angle]) => {
      const [cos, sin] = [Math.cos(angle!), Math.sin(angle!)];
      const across = towMmS * sin;
      const re = (Math.abs(across) * d) / fluid.viscosityMm2S;
      const cross =
        re > 0 ? 0.5 * fluid.densityGMm3 * d * crossFlowDragCoefficient(re) * Math.abs(across) * across : 0;
      const along = towMmS * cos;
      const axial = axialDragGMmS(d, Math.abs(along), fluid) * along;
      // Down the line (cos, sin): tension grows by what pulls that way, the angle by what pulls square to it.
      return [axial + lineWeight * sin, (lineWeight * cos - cross) / t!, -cos, -sin];
    },
    0,
    [Math.hypot(bait.pushUn, bait.weightUn), Math.atan2(bait.weightUn, bait.pushUn), 0, 0],
    lengthMm,
  ).y;
  const eye = line.points.at(-1)!;
  expect(Math.hypot(eye.xMm - found[2]!, eye.depthMm - found[3]!) / lengthMm).toBeLessThan(1e-4);
  expect(Math.abs(Math.hypot(line.pushUn, line.weightUn) / found[0]! - 1)).toBeLessThan(1e-4);
});

test("in still water the rig hangs straight down", () => {
  const hang = valueIn(hangInCurrent(stick(bulked, { floatToHookMm: 1700 }), 0, 0));
  expect(hang.hookDepthMm).toBeCloseTo(1800, 1);
  expect(hang.leadMm).toBeCloseTo(0, 6);
});

test.each([
  ["strung out", strungOut],
  ["bulk", bulked],
])("%s: run free the bait trails, held back more it comes level, then leads", (_, shot) => {
  for (const paceMs of [0.2, 0.4, 0.8]) {
    const leads = [0, 0.1, 0.2, 0.3, 0.5, 0.7, 1].map(
      (share) => valueIn(hangInCurrent(stick(shot), paceMs, share)).leadMm,
    );
    expect(leads[0]).toBeLessThan(0);
    expect(leads.at(-1)).toBeGreaterThan(0);
    expect(leads).toEqual(leads.toSorted((a, b) => a - b));
  }
});

test("a float run free goes a little slower than the surface, and nothing pulls it along", () => {
  const hang = valueIn(hangInCurrent(stick(), 0.4, 0));
  expect(hang.floatPaceMs).toBeLessThan(0.4);
  expect(hang.floatPaceMs).toBeGreaterThan(0.8 * 0.4);
  expect(Math.abs(hang.angleAtFloatDeg)).toBeLessThan(5);
});

test("a rig is too light from the pace at which its bait is lifted, and the load found keeps it down", () => {
  const rig = stick(strungOut);
  const paceMs = valueIn(tooLightPaceMs(rig, 0.3, 100))!;
  const lift = (at: FlowRig, pace: number) => 2000 - valueIn(hangInCurrent(at, pace, 0.3)).hookDepthMm;
  expect(lift(rig, paceMs)).toBeGreaterThan(100);
  expect(lift(rig, paceMs - 0.02)).toBeLessThan(100);
  const share = valueIn(neededLoadShare(rig, 0.6, 0.3, 100))!;
  const heavier = { ...rig, shot: rig.shot.map((shot) => ({ ...shot, massG: shot.massG * share })) };
  expect(lift(heavier, 0.6)).toBeLessThanOrEqual(100);
  expect(share).toBeGreaterThan(1);
  expect(valueIn(neededLoadShare(rig, 0.1, 0.3, 100))).toBe(1);
});

test("the pace and the load are those that asking the whole balance at each of them would find", () => {
  const rigs = [stick(strungOut), stick(bulked)];
  for (const rig of rigs) {
    const stillMm = Math.min(rig.draughtMm + rig.floatToHookMm, rig.depthMm);
    const isLifted = (at: FlowRig, pace: number) =>
      stillMm - valueIn(hangInCurrent(at, pace, 0)).hookDepthMm > 150;
    // Found to a hundredth, in halves of 3 m/s and of 29 loads.
    const paceMs = valueIn(tooLightPaceMs(rig, 0, 150))!;
    expect(isLifted(rig, paceMs)).toBe(true);
    expect(isLifted(rig, paceMs - 3 / 2 ** 9)).toBe(false);
    const loaded = (share: number) => ({
      ...rig,
      shot: rig.shot.map((one) => ({ ...one, massG: one.massG * share })),
    });
    const share = valueIn(neededLoadShare(rig, 1.1 * paceMs, 0, 150))!;
    expect(isLifted(loaded(share), 1.1 * paceMs)).toBe(false);
    expect(isLifted(loaded(share - 29 / 2 ** 12), 1.1 * paceMs)).toBe(true);
  }
});

test("a heavy rig is never too light, and no load of shot stops a bare line in a torrent", () => {
  expect(valueIn(tooLightPaceMs(stick(shotAt([[30, 300]])), 0, 500))).toBeNull();
  expect(valueIn(neededLoadShare(stick([]), 3, 1, 10))).toBeNull();
});

test("over depth in still water the hook touches the bed", () => {
  const hang = valueIn(hangInCurrent(stick(bulked, { floatToHookMm: 2200 }), 0.05, 0));
  expect(hang.offBedMm).toBe(0);
  expect(hang.hookDepthMm).toBe(2000);
});

test.each([
  ["rig-measure", stick(strungOut, { depthMm: -1 }), 0.3, 0],
  ["rig-measure", stick(strungOut, { floatDragAreaCm2: Number.NaN }), 0.3, 0],
  ["rig-measure", stick(strungOut, { hookLineDiameterMm: 1e300 }), 0.3, 0],
  ["flow-pace", stick(), -0.1, 0],
  ["flow-pace", stick(), 0.3, 1.2],
  ["flow-pace", stick(), 101, 0],
  ["flow-pace", stick(), 1e300, 0],
  ["beyond-reckoning", stick(), Number.NaN, 0],
])("answers %s for what cannot be", (code, rig, paceMs, share) => {
  const found = hangInCurrent(rig, paceMs, share);
  expect(found.ok).toBe(false);
  expect(found.findings[0]!.code).toBe(code);
});
