import { describe, expect, test } from "vitest";
import { landings, sinkOfRig } from "../../../src/core/sink/sink-of-rig.ts";
import { bulked, rigWith, shotAt, sinks, strungOut } from "./rigs.ts";

const cases = [
  ["strung out in 2 m", rigWith(strungOut)],
  ["a bulk in 2 m", rigWith(bulked)],
  [
    "a light rig in 2 m",
    rigWith(
      shotAt([
        [0.06, 200],
        [0.1, 700],
      ]),
    ),
  ],
  [
    "a bulk of eight shot in a row",
    rigWith(shotAt([[0.06, 200], ...[0, 4, 8, 12, 16, 20, 24, 28].map((up) => [0.12, 500 + up] as const)])),
  ],
  [
    "a shallow canal",
    rigWith(
      shotAt([
        [0.04, 150],
        [0.1, 350],
        [0.1, 500],
      ]),
      { floatToHookMm: 800, draughtMm: 60, depthMm: 900, float: { massG: 1.5, dragAreaCm2: 3 } },
    ),
  ],
  [
    "a slow maggot under a held float",
    rigWith(bulked, {
      float: "held",
      hookMassG: 0.02,
      bait: { massG: 0.04, densityKgM3: 1020, fallMs: 0.05 },
    }),
  ],
  [
    "deep water with a locked float",
    rigWith([...strungOut, ...shotAt([[2.4, 3800]])], { floatToHookMm: 3800, draughtMm: 200, depthMm: 4000 }),
  ],
] as const;

describe.each(cases)("%s", (_, rig) => {
  test.each(landings)(
    "landed %s, half the step and twice the pieces move no time by 2 percent",
    (landing) => {
      const usual = sinks(rig, landing);
      const finer = sinks(rig, landing, { pieceShare: 0.5, stepShare: 0.5 });
      const times = (sink: typeof usual) => [...sink.tenthsS, ...sink.thirdsS];
      times(usual).forEach((time, i) => {
        expect(Math.abs(times(finer)[i]! / time - 1)).toBeLessThan(0.02);
      });
    },
  );

  test("a heap sinks faster than a line laid out, and every time comes after the one before", () => {
    const [straight, heap] = landings.map((landing) => sinks(rig, landing));
    for (const sink of [straight!, heap!]) {
      expect(sink.tenthsS[0]).toBeGreaterThan(0);
      expect(sink.tenthsS).toEqual(sink.tenthsS.toSorted((a, b) => a - b));
      expect(sink.thirdsS.reduce((sum, time) => sum + time)).toBeCloseTo(sink.tenthsS[9]!, 9);
    }
    expect(heap!.tenthsS[9]!).toBeLessThan(straight!.tenthsS[9]!);
  });

  test.each(landings)(
    "landed %s, no piece of line is ever longer than it stretches, and nothing is below the bed",
    (landing) => {
      const { fromHookMm, moments } = sinks(rig, landing).line;
      for (const { xMm, depthMm } of moments) {
        for (let i = 1; i < fromHookMm.length; i++) {
          const apart = Math.hypot(xMm[i - 1]! - xMm[i]!, depthMm[i - 1]! - depthMm[i]!);
          expect(apart).toBeLessThanOrEqual((fromHookMm[i - 1]! - fromHookMm[i]!) * 1.003);
          expect(depthMm[i]!).toBeLessThanOrEqual(rig.depthMm);
        }
        expect(depthMm[0]!).toBe(0);
      }
      expect(fromHookMm.at(-1)!).toBe(0);
    },
  );
});

describe.each(cases)("%s, moment by moment", (_, rig) => {
  test.each(landings)("landed %s, the line is told at even times until the bait is down", (landing) => {
    const { line, tenthsS, hangMm, lastShare } = sinks(rig, landing);
    const times = line.moments.map(({ timeS }) => timeS);
    const gapS = times[1]!;
    expect(Math.log2(gapS / 0.125) % 1).toBe(0);
    for (const [i, timeS] of times.slice(0, -1).entries()) expect(timeS).toBe(i * gapS);
    expect(times.length).toBeGreaterThan(tenthsS[9]! < 3 ? 12 : 24);
    expect(times.length).toBeLessThanOrEqual(50);
    expect(times.at(-1)).toBe(tenthsS[9]);
    expect(line.moments.at(-1)!.depthMm.at(-1)!).toBeCloseTo(lastShare * hangMm, 6);
  });

  test.each(landings)("landed %s, the bait is where its track has it at each moment", (landing) => {
    const { line, track, hangMm } = sinks(rig, landing);
    for (const { timeS, depthMm } of line.moments) {
      const after = track.findIndex((one) => one.timeS >= timeS);
      const [a, b] = [track[Math.max(0, after - 1)]!, track[after]!];
      const share = b.timeS === a.timeS ? 0 : (timeS - a.timeS) / (b.timeS - a.timeS);
      const between = a.depthMm + share * (b.depthMm - a.depthMm);
      expect(Math.abs(depthMm.at(-1)! - between)).toBeLessThan(0.015 * hangMm);
    }
  });

  test.each(landings)("landed %s, every shot is one of the places, and no stretch is left out", (landing) => {
    const { fromHookMm } = sinks(rig, landing).line;
    for (const one of rig.shot) expect(fromHookMm).toContain(one.fromHookMm);
    const gaps = fromHookMm.slice(1).map((one, i) => fromHookMm[i]! - one);
    const float = rig.draughtMm;
    expect(Math.max(...gaps.slice(1))).toBeLessThanOrEqual(Math.max(float, fromHookMm[0]! / 8));
  });

  test.each(landings)("landed %s, no place could go without a stretch longer than a sixteenth", (landing) => {
    const { fromHookMm } = sinks(rig, landing).line;
    const asked = [rig.floatToHookMm, rig.hookLengthMm, ...rig.shot.map((one) => one.fromHookMm)];
    const between = fromHookMm.slice(1, -1).filter((one) => !asked.includes(one));
    for (const one of between) {
      const at = fromHookMm.indexOf(one);
      expect(fromHookMm[at - 1]! - fromHookMm[at + 1]!).toBeGreaterThan(fromHookMm[0]! / 16);
    }
    expect(between.length).toBeGreaterThan(5);
  });
});

test("the trial rigs sink as the trial with 32 lumps a metre found, within 10 %", () => {
  // Half depth and 98 %: an earlier reckoning with line lumped at its nodes and less friction along the line.
  const trial = [
    [strungOut, "straight", 5.2, 13.4],
    [strungOut, "heap", 2.9, 7.2],
    [bulked, "straight", 3.5, 10.1],
    [bulked, "heap", 1.8, 5.5],
  ] as const;
  for (const [shot, landing, half, all] of trial) {
    const { tenthsS } = sinks(rigWith(shot), landing);
    expect(Math.abs(tenthsS[4]! / half - 1)).toBeLessThan(0.1);
    expect(Math.abs(tenthsS[9]! / all - 1)).toBeLessThan(0.1);
  }
});

test("the bait stops at the bed when the rig is set over depth", () => {
  const over = sinks(rigWith(bulked, { floatToHookMm: 2100, depthMm: 2000 }), "straight");
  expect(over.hangMm).toBe(2000);
  const plain = sinks(rigWith(bulked, { floatToHookMm: 2100, depthMm: 3000 }), "straight");
  expect(plain.hangMm).toBe(2100);
  expect(over.tenthsS[9]!).toBeLessThan(plain.tenthsS[9]!);
});

test("a bait that floats never gets down, and says so", () => {
  const found = sinkOfRig(
    rigWith(shotAt([[0.2, 500]]), { bait: { massG: 0.3, densityKgM3: 300 } }),
    "straight",
  );
  expect(found.ok).toBe(false);
  expect(found.findings[0]!.code).toBe("sink-never");
});

test("a rig without shot sinks by its bait alone", () => {
  const bare = sinks(rigWith([]), "heap");
  expect(bare.tenthsS[9]!).toBeGreaterThan(sinks(rigWith(bulked), "heap").tenthsS[9]!);
});

test.each([
  ["floatToHookMm", { floatToHookMm: 0 }],
  ["depthMm", { depthMm: Number.NaN }],
  ["mainLineDiameterMm", { mainLineDiameterMm: -0.1 }],
  ["baitFallMs", { bait: { massG: 0.1, densityKgM3: 1100, fallMs: 0 } }],
  ["shotMassG", { shot: shotAt([[0, 300]]) }],
  ["floatMassG", { float: { massG: 0, dragAreaCm2: 1 } }],
] as const)("a wrong %s is named", (measure, changes) => {
  const found = sinkOfRig(rigWith(strungOut, changes), "straight");
  expect(found.ok).toBe(false);
  expect(found.findings[0]).toMatchObject({ code: "rig-measure", values: { measure } });
});
