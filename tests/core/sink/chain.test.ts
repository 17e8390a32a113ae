import fc from "fast-check";
import { expect, test } from "vitest";
import { type Chain, restingChain } from "../../../src/core/sink/chain.ts";
import { chainOfRig } from "../../../src/core/sink/chain-of-rig.ts";
import { letFall } from "../../../src/core/sink/fall.ts";
import { makeStepper } from "../../../src/core/sink/step.ts";
import { fluidOf } from "../../../src/core/water/drag.ts";
import { rigWith, shotAt } from "./rigs.ts";

const fluid = fluidOf({ tempC: 15, salinity: 0 });

/** One weight with a constant drag coefficient on a tether that weighs nothing and has no drag. */
function tethered(tetherMm: number, weightUn: number, movedMassG: number, areaMm2: number): Chain {
  return {
    top: { kind: "held" },
    nodes: [
      {
        link: { lengthMm: tetherMm, diameterMm: 0 },
        movedMassG,
        weightUn,
        drags: [{ kind: "area", areaMm2 }],
      },
    ],
    fluid,
    bedMm: Number.POSITIVE_INFINITY,
  };
}

/** ∫dθ/√cosθ from level, by Simpson's rule in s with θ = π/2 − s², which takes the end's root away. */
function swingIntegral(degrees: number): number {
  const end = Math.sqrt(Math.PI / 2);
  const start = Math.sqrt(Math.PI / 2 - (degrees * Math.PI) / 180);
  const f = (s: number) => (s === 0 ? 2 : (2 * s) / Math.sqrt(Math.sin(s * s)));
  const n = 2000;
  const h = (end - start) / n;
  let sum = f(start) + f(end);
  for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * f(start + i * h);
  return (sum * h) / 3;
}

test("a weight on a tether let go level swings down as slow motion has it", () => {
  // Weight against drag along the circle: v = v∞√cosθ; to full hang 2.62206 R/v∞, the lemniscate constant.
  expect(swingIntegral(90)).toBeCloseTo(2.622057554, 6);
  const tetherMm = 1000;
  const areaMm2 = 400;
  const weightUn = 500;
  const terminalMmS = Math.sqrt((2 * weightUn) / (fluid.densityGMm3 * areaMm2));
  const movedMassG = (0.0005 * weightUn * tetherMm) / terminalMmS ** 2;
  // v∞²/(g′R), with g′ the weight over the mass that moves.
  expect((terminalMmS ** 2 * movedMassG) / (weightUn * tetherMm)).toBeLessThan(0.001);
  const chain = tethered(tetherMm, weightUn, movedMassG, areaMm2);
  const angles = [30, 60, 80];
  let hangsS = 0;
  const { passes } = letFall(
    chain,
    angles.map((angle) => tetherMm * Math.sin((angle * Math.PI) / 180)).concat(tetherMm * (1 - 1e-12)),
    100,
    {
      drawnOut: 1,
      stepErrorShare: 2e-7,
      onStep: (state, timeS) => {
        if (hangsS === 0 && state.lowest.x <= 0) hangsS = timeS;
      },
    },
  );
  angles.forEach((angle, i) => {
    const expected = (tetherMm / terminalMmS) * swingIntegral(angle);
    expect(Math.abs(passes[i]!.timeS / expected - 1)).toBeLessThan(0.005);
  });
  expect(Math.abs(hangsS / ((2.62206 * tetherMm) / terminalMmS) - 1)).toBeLessThan(0.03);
});

test("a weight on slack line falls from rest as v∞ tanh(g′t/v∞)", () => {
  const chain = tethered(1e6, 2000, 0.3, 10);
  const terminalMmS = Math.sqrt((2 * 2000) / (fluid.densityGMm3 * 10));
  const gMmS2 = 2000 / 0.3;
  const state = restingChain(chain, 0);
  const step = makeStepper(state);
  const stepS = 2e-6;
  let worst = 0;
  for (let i = 1; i <= 150_000; i++) {
    step(stepS);
    if (i % 10_000 === 0) {
      const exact = terminalMmS * Math.tanh((gMmS2 * i * stepS) / terminalMmS);
      worst = Math.max(worst, Math.abs(state.lowest.vy / exact - 1));
    }
  }
  expect(worst).toBeLessThan(1e-4);
});

// Closed form: the fall of the test above, integrated: y = v∞²/g′ · ln cosh(g′t/v∞).
test("the bed stops a weight when it gets there, however long the steps have become", () => {
  const bedMm = 1000;
  const chain = { ...tethered(1500, 2000, 0.3, 10), bedMm };
  const terminalMmS = Math.sqrt((2 * 2000) / (fluid.densityGMm3 * 10));
  const gMmS2 = 2000 / 0.3;
  const exactS = (terminalMmS / gMmS2) * Math.acosh(Math.exp((gMmS2 * bedMm) / terminalMmS ** 2));
  let stoppedS = Number.NaN;
  letFall(chain, [bedMm], 10, {
    drawnOut: 0,
    stepErrorShare: 1e-4,
    onStep: (state, timeS) => {
      if (state.hung[0]?.onBed && Number.isNaN(stoppedS)) stoppedS = timeS;
    },
  });
  expect(Math.abs(stoppedS / exactS - 1)).toBeLessThan(0.002);
});

test("the energy of a chain never grows, whatever the rig, landing and step", () => {
  const shot = fc.array(
    fc.tuple(fc.double({ min: 0.01, max: 2, noNaN: true }), fc.integer({ min: 30, max: 1200 })),
    {
      maxLength: 6,
    },
  );
  fc.assert(
    fc.property(
      shot,
      fc.constantFrom(0, 0.3, 1),
      fc.constantFrom(1e-5, 1e-4, 1e-3),
      fc.constantFrom(50, 200),
      (places, drawnOut, stepErrorShare, pieceMm) => {
        const rig = rigWith(shotAt(places), { floatToHookMm: 1200, depthMm: 1150 });
        let before = 0;
        const { chain } = chainOfRig(rig, () => pieceMm);
        letFall(chain, [1100], 3, {
          drawnOut,
          stepErrorShare,
          onStep: (_, __, energy) => {
            const now = energy();
            // Of the size of the energies met, 1e6 µN·mm, with the balance of a step good to 1e-2 mm/s.
            expect(now - before).toBeLessThan(0.1);
            before = now;
          },
        });
      },
    ),
    { numRuns: 40, seed: 4 },
  );
});
