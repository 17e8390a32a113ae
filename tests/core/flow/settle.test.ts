import { describe, expect, it } from "vitest";
import { freePaceMmS } from "../../../src/core/flow/free-pace.ts";
import { hangHeld, trot } from "../../../src/core/flow/hang.ts";
import { lineDensityKgM3 } from "../../../src/core/flow/hanging-rig.ts";
import { type FlowRig, hangingFrom } from "../../../src/core/flow/line-balance.ts";
import { settle, streamOf, towOf } from "../../../src/core/flow/settle.ts";
import { gravityMmS2, shotBody, sinkerOf } from "../../../src/core/sink/body-fall.ts";
import { axialDragGMmS, bodyDragGS, crossFlowDragCoefficient } from "../../../src/core/water/drag.ts";
import { odeSolver } from "../ode.ts";
import { bulked, rigWith, shotAt, strungOut, valueIn } from "../sink/rigs.ts";

const rig = (shot = strungOut, changes: Partial<FlowRig> = {}): FlowRig => ({
  ...rigWith(shot, { draughtMm: 100, floatToHookMm: 1900 }),
  floatDragAreaCm2: 6,
  ...changes,
});

/** A stick of a dozen tin No 8 with a maggot: light at its end, which near the bed finds more than one balance. */
const light = rig(
  shotAt(
    Array.from({ length: 12 }, (_, i) => [0.06, 365 + 60 * i] as const),
    "tin",
  ),
  {
    depthMm: 1200,
    draughtMm: 120,
    floatToHookMm: 1130,
    mainLineDiameterMm: 0.18,
    hookLineDiameterMm: 0.16,
    hookLengthMm: 350,
    bait: { massG: 0.045, densityKgM3: 1020, fallMs: 0.05 },
    hookMassG: 0.01,
  },
);

describe("the line of a float that moves along", () => {
  it("ends at the float's eye right down to the bed", () => {
    for (const lengthMm of [700, 1080, 1130, 1200, 1300, 1500, 1700]) {
      for (const paceMs of [0.2, 0.25, 0.4, 0.7]) {
        for (const share of [0, 0.1, 0.2, 0.3, 0.35, 0.4, 0.5, 0.8, 1]) {
          const stream = streamOf(light, paceMs);
          const line = settle(stream, (1 - share) * 0.91 * paceMs * 1000, lengthMm);
          const eye = line.points.at(-1)!;
          expect(eye.fromHookMm).toBeCloseTo(lengthMm, 6);
          // A line that all but lies on the bed starts with next to no pull, and turns within a millimetre.
          const withinMm = light.depthMm - line.points[0]!.depthMm > 10 ? 0.1 : 3;
          expect(Math.abs(eye.depthMm - light.draughtMm), `${lengthMm} ${paceMs} ${share}`).toBeLessThan(
            withinMm,
          );
        }
      }
    }
  });

  it("takes, of several balances for one length, the one with the hook highest", () => {
    // Every height in steps of a millimetre, and the first at which the line fits on the way down.
    let several = 0;
    for (const share of [0.25, 0.3, 0.33, 0.36, 0.4, 0.45]) {
      const stream = streamOf(light, 0.25);
      const floatMmS = (1 - share) * 227;
      const tow = towOf(stream, floatMmS);
      const needed = (heightMm: number) =>
        stream.balance
          .lineUp(hangingFrom(light.depthMm - heightMm), tow, {
            kind: "depth",
            depthMm: light.draughtMm,
            longestMm: 3000,
          })
          .points.at(-1)!.fromHookMm;
      const heights = Array.from({ length: 700 }, (_, i) => 700 - i);
      for (const lengthMm of [1110, 1130, 1150, 1180]) {
        const fits = heights.filter((h) => needed(h) < lengthMm !== needed(h - 1) < lengthMm);
        if (fits.length > 1) several++;
        const hook = settle(stream, floatMmS, lengthMm).points[0]!;
        expect(Math.abs(light.depthMm - hook.depthMm - (fits[0] ?? 0))).toBeLessThan(2);
      }
    }
    expect(several).toBeGreaterThan(0);
  });

  it("lays what is left over on the bed, hook first, and hangs the rest from there", () => {
    const stream = streamOf(light, 0.25);
    let lyingBefore = 0;
    for (const lengthMm of [1500, 1600, 1700, 1900]) {
      const line = settle(stream, 205, lengthMm);
      const [hook, contact] = [line.points[0]!, line.points[1]!];
      expect(hook.depthMm).toBe(light.depthMm);
      expect(contact.fromHookMm).toBe(line.lyingMm);
      expect(line.lyingMm).toBeGreaterThan(lyingBefore);
      // The bed is at rest and the float is not: what lies trails behind.
      expect(hook.xMm).toBe(-line.lyingMm);
      lyingBefore = line.lyingMm;
    }
  });

  it("pulls at the float with the weight of what hangs, and no longer with what the bed carries", () => {
    const stream = streamOf(light, 0.25);
    const all = settle(stream, 205, 1130).weightUn;
    const less = settle(stream, 205, 1900);
    const shotOff = light.shot.filter(({ fromHookMm }) => fromHookMm < less.lyingMm).length;
    expect(shotOff).toBeGreaterThan(0);
    expect(less.weightUn).toBeLessThan(all);
  });
});

describe("a whole rig in water that slows towards the bed", () => {
  // The same forces handed to an ODE library, piece by piece from the hook up: odex, Dormand–Prince.
  it.each([
    [0.25, 0, 1080],
    [0.4, 0.1, 1130],
    [0.4, 0.5, 1130],
    [0.6, 1, 1000],
  ])("hangs at %d m/s, held back by %d, as the library has it", (paceMs, share, lengthMm) => {
    const stream = streamOf(light, paceMs);
    const floatMmS = (1 - share) * 0.91 * paceMs * 1000;
    const tow = towOf(stream, floatMmS);
    const line = settle(stream, floatMmS, lengthMm);
    const { fluid } = stream.balance;
    const bait = sinkerOf(light.bait, light.water);
    const ends = [bait, sinkerOf(shotBody(light.hookMassG, "steel"), light.water)];
    const hung = [
      { at: 0, sinkers: ends },
      ...light.shot
        .filter(({ fromHookMm }) => fromHookMm < lengthMm)
        .map(({ massG, metal, fromHookMm }) => ({
          at: fromHookMm,
          sinkers: [sinkerOf(shotBody(massG, metal), light.water)],
        })),
    ];
    let state = [0, 0, 0, line.points[0]!.depthMm];
    const stops = [...new Set([...hung.map(({ at }) => at), light.hookLengthMm, lengthMm])].sort(
      (a, b) => a - b,
    );
    stops.slice(0, -1).forEach((from, i) => {
      for (const { sinkers } of hung.filter(({ at }) => at === from)) {
        for (const { weightUn, drag } of sinkers) {
          const past = tow(state[3]!);
          state[0]! += bodyDragGS(drag, Math.abs(past), fluid) * past;
          state[1]! += weightUn;
        }
      }
      const d = from < light.hookLengthMm ? light.hookLineDiameterMm : light.mainLineDiameterMm;
      const weight = (Math.PI / 4) * d * d * (lineDensityKgM3 * 1e-6 - fluid.densityGMm3) * gravityMmS2;
      state = odeSolver(4, 1e-9).solve(
        (_, [push, down, , depth]) => {
          const pull = Math.hypot(push!, down!);
          const [cos, sin] = [push! / pull, down! / pull];
          const past = tow(depth!);
          const re = (Math.abs(past * sin) * d) / fluid.viscosityMm2S;
          const cross =
            re > 0
              ? 0.5 * fluid.densityGMm3 * d * crossFlowDragCoefficient(re) * Math.abs(past * sin) * past * sin
              : 0;
          const axial = axialDragGMmS(d, Math.abs(past * cos), fluid) * past * cos;
          return [axial * cos + cross * sin, axial * sin - cross * cos + weight, -cos, -sin];
        },
        from,
        state,
        stops[i + 1]!,
      ).y;
    });
    const eye = line.points.at(-1)!;
    expect(Math.hypot(eye.xMm - state[2]!, eye.depthMm - state[3]!)).toBeLessThan(2);
    expect(Math.abs(line.pushUn - state[0]!)).toBeLessThan(0.005 * Math.hypot(state[0]!, state[1]!));
  });
});

describe("the pace of a float that runs free", () => {
  it("is told for other settings by a parabola, within a thirtieth of itself", () => {
    for (const one of [light, rig(strungOut), rig(bulked)]) {
      for (const paceMs of [0.25, 0.6]) {
        const { stream, freeSetToMmS } = valueIn(trot(one, paceMs));
        for (const moved of [-400, -100, 0, 150, 300, 500]) {
          const lengthMm = one.floatToHookMm + moved;
          const exact = freePaceMmS(stream, lengthMm);
          expect(Math.abs(freeSetToMmS(lengthMm) / exact - 1), `${paceMs} ${moved}`).toBeLessThan(0.033);
        }
      }
    }
  });

  it("is that at which the float's drag and the line's push cancel", () => {
    const { stream, freeMmS } = valueIn(trot(rig(bulked), 0.5));
    const { rig: own } = stream;
    const line = settle(stream, freeMmS, own.floatToHookMm);
    const past = towOf(stream, freeMmS)(own.draughtMm / 2);
    // ½ρ·C·A·v² in g·mm/s².
    const drag = 0.5 * stream.balance.fluid.densityGMm3 * own.floatDragAreaCm2 * 100 * past * past;
    expect(Math.abs(drag + line.pushUn) / drag).toBeLessThan(0.01);
  });
});

it("a bait within a centimetre of the bed counts as on it", () => {
  const trotted = valueIn(trot(light, 0.25));
  const hangs = [0, 0.1, 0.15, 0.2, 0.3].map((share) => valueIn(hangHeld(trotted, share)));
  for (const { hookDepthMm, offBedMm } of hangs) {
    const heightMm = light.depthMm - hookDepthMm;
    expect(offBedMm).toBe(heightMm <= 10 ? 0 : heightMm);
  }
  expect(hangs.some(({ offBedMm }) => offBedMm === 0)).toBe(true);
});
