import { describe, expect, it } from "vitest";
import { z } from "zod";
import { dataFiles } from "../../src/build/data.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

/** The published form of a rig's file; fields may be added to it, never renamed. */
const rigFile = z.object({
  id: z.string(),
  title: z.string(),
  water: z.enum(["still", "flowing"]),
  shotScale: z.string(),
  waterTempC: z.number(),
  salinity: z.number(),
  float: z.object({
    id: z.string(),
    title: z.string(),
    attachment: z.enum(["bottom", "top and bottom", "sliding"]),
    capacityG: z.number().positive(),
    capacityMetal: z.string(),
    capacityBasis: z.enum(["marked", "measured"]),
    selfLoadG: z.number().min(0),
    pullG: z.number().positive(),
    lengthMm: z.number().positive(),
    tipDiameterMm: z.number().positive(),
  }),
  mainLine: z.unknown().refine((value) => value !== undefined),
  hookLength: z.unknown().refine((value) => value !== undefined),
  hookLengthCm: z.number().positive(),
  hook: z.unknown().refine((value) => value !== undefined),
  bait: z.unknown().refine((value) => value !== undefined),
  hookAndBaitPullG: z.number(),
  feed: z.unknown().refine((value) => value !== undefined),
  depths: z
    .array(
      z.object({
        depthCm: z.number().positive(),
        overdepthCm: z.number(),
        draughtCm: z.number().positive(),
        floatToHookCm: z.number().positive(),
        shot: z.array(
          z.object({
            size: z.string(),
            massG: z.number().positive(),
            metal: z.string(),
            role: z.enum(["lock", "spread", "bulk", "dropper", "telltale", "anchor"]),
            fromHookCm: z.number().positive(),
          }),
        ),
        massG: z.number().positive(),
        pullG: z.number().positive(),
        sparePullG: z.number(),
        tipShowingMm: z.number().min(0),
        tipUncertaintyMm: z.number().positive(),
        lockShare: z.number().min(0).max(1),
        depthGuide: z.array(
          z.object({
            overdepthCm: z.number(),
            state: z.enum(["hangs", "rests on the bed", "drags under"]),
            advice: z.enum(["start-here", "go-deeper", "go-shallower"]),
            moveCm: z.number(),
            shotOnBed: z.array(z.string()),
            tipShowingMm: z.number().nullable(),
          }),
        ),
      }),
    )
    .min(1),
});

const library = shippedLibrary;
const solved = library.rigs.map(({ rig }) => {
  const answer = solveRig(rig);
  if (!answer.ok) throw new Error(`${rig.id}: ${JSON.stringify(answer.findings)}`);
  return answer.value;
});
const files = new Map(
  [...dataFiles({ rigs: solved, library, shelves: [], sessions: [], kit: drawingKit })].map((file) => [
    file.path,
    file,
  ]),
);
const rigs = library.rigs.map(({ rig }) => {
  const text = String(files.get(`data/rigs/${rig.id}.json`)!.content);
  return { rig, text, data: rigFile.parse(JSON.parse(text)) };
});

describe.each(rigs.map((one) => [one.rig.id, one] as const))("the data of %s", (_, { rig, data }) => {
  it.each(data.depths.map((depth) => [depth.depthCm, depth] as const))("adds up at %s cm", (_, depth) => {
    const { draughtCm, floatToHookCm, depthCm, overdepthCm, shot, float } = { ...depth, float: data.float };
    expect(draughtCm + floatToHookCm).toBeCloseTo(depthCm + overdepthCm, 3);
    expect(draughtCm * 10 + depth.tipShowingMm).toBeCloseTo(float.lengthMm, 2);
    expect(shot.reduce((sum, { massG }) => sum + massG, 0)).toBeCloseTo(depth.massG, 5);
    expect(float.pullG - depth.pullG - data.hookAndBaitPullG).toBeCloseTo(depth.sparePullG, 5);
    if (rig.pattern.kind !== "lift") expect(depth.sparePullG).toBeGreaterThanOrEqual(-1e-6);
    const lock = shot.filter(({ role }) => role === "lock");
    expect(lock.length > 0).toBe(rig.float.heldByShot);
    for (const { fromHookCm } of lock) expect(fromHookCm).toBe(floatToHookCm);
    if (lock.length === 0) expect(depth.lockShare).toBe(0);
    const line = shot.filter(({ role }) => role !== "lock").map(({ fromHookCm }) => fromHookCm);
    for (const [i, at] of line.entries()) expect(at).toBeGreaterThan(line[i - 1] ?? 0);
    if (line.length > 0) expect(line.at(-1)).toBeLessThan(floatToHookCm);
  });

  it("guides from 60 cm or half the depth off the bottom to 60 cm over depth, and as far as the rig is set", () => {
    for (const { depthCm, draughtCm, overdepthCm, depthGuide } of data.depths) {
      const leastCm = Math.min(overdepthCm, -Math.min(60, depthCm / 2));
      // A hook that would come up to the float cannot be set.
      if (depthCm + leastCm > draughtCm) expect(depthGuide[0]!.overdepthCm).toBeCloseTo(leastCm, 3);
      expect(depthGuide.at(-1)!.overdepthCm).toBeGreaterThanOrEqual(Math.max(60, overdepthCm) - 0.001);
      for (const { state, tipShowingMm } of depthGuide) {
        expect(["hangs", "rests on the bed", "drags under"]).toContain(state);
        if (state === "drags under") expect(tipShowingMm).toBeNull();
        if (state === "hangs") expect(tipShowingMm).not.toBeNull();
      }
    }
  });

  it("starts the guide of every depth at one line, to which every other leads", () => {
    for (const { depthGuide } of data.depths) {
      const starts = depthGuide.filter(({ advice }) => advice === "start-here");
      expect(starts).toHaveLength(1);
      for (const { overdepthCm, moveCm } of depthGuide)
        expect(overdepthCm + moveCm).toBeCloseTo(starts[0]!.overdepthCm, 3);
    }
  });
});

it("knows no figure that is none", () => {
  for (const { text } of rigs) expect(text).not.toMatch(/NaN|Infinity|undefined/);
});

it("has the scales in shot.json", () => {
  const shot = JSON.parse(String(files.get("data/shot.json")!.content));
  expect(shot.scales.map(({ id }: { id: string }) => id)).toEqual(["english-gun", "trade-round"]);
});
