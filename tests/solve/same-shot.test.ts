import { afterAll, describe, expect, it } from "vitest";
import { knotClearMm } from "../../src/core/patterns/clearance.ts";
import type { SolvedShot } from "../../src/model/solved.ts";
import { sameShot, sisterOf } from "../../src/solve/same-shot.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

const solved = shippedLibrary.rigs.map(({ rig }) => {
  const answer = solveRig(rig);
  if (!answer.ok) throw new Error(JSON.stringify(answer.findings));
  return answer.value;
});
const made = solved.flatMap(({ rig, depths }) =>
  depths.map((depth) => [`${rig.id} in ${depth.depthMm} mm`, rig, depth] as const),
);
const massesG = (shot: readonly SolvedShot[]) => shot.map(({ massG }) => massG).sort();
const extentMm = (shot: readonly SolvedShot[]) => shot.at(-1)!.fromHookMm - shot[1]!.fromHookMm;
/** Rigs whose bulk is a quarter of the way up. */
const gathered: string[] = [];
afterAll(() => expect(gathered.length).toBeGreaterThan(2));

describe.each(made)("%s", (_, rig, depth) => {
  const ways = sameShot(rig, depth);
  const line = depth.lineShot;

  it("keeps its shot, their order, its telltale, and clear of knot and float, in every way of hanging them", () => {
    for (const { shot } of ways) {
      expect(massesG(shot)).toEqual(massesG(line));
      expect(shot[0]!.fromHookMm).toBe(line[0]!.fromHookMm);
      expect(shot.at(-1)!.fromHookMm).toBeLessThan(depth.floatToHookMm);
      for (let i = 1; i < shot.length; i++) {
        const [below, above] = [shot[i - 1]!, shot[i]!];
        expect(above.massG).toBeGreaterThanOrEqual(below.massG);
        expect(above.fromHookMm - below.fromHookMm).toBeGreaterThanOrEqual(above.diameterMm - 1e-9);
        expect(Math.abs(above.fromHookMm - rig.hookLengthMm)).toBeGreaterThanOrEqual(knotClearMm - 1e-9);
      }
    }
  });

  it("gathers shot strung out a quarter of the way up to the float", () => {
    const bulk = ways.find(({ own, arrangement }) => !own && arrangement === "bulk");
    const lowest = bulk?.shot.find(({ role }) => role !== "telltale");
    // Common practice, no source; where the loop is higher than that, just above it.
    const quarterMm = depth.floatToHookMm / 4;
    const strungOut = ["strung out", "shirt button"].includes(rig.pattern.kind);
    if (strungOut && lowest && quarterMm > rig.hookLengthMm + 30) {
      expect(lowest.fromHookMm).toBeCloseTo(quarterMm, 6);
      gathered.push(rig.id);
    }
  });

  it("has a sister in the other pattern, unless there is nothing to gather or no room to spread", () => {
    const sister = sisterOf(rig, depth);
    const sliding = rig.float.attachment === "sliding";
    const nothing = sliding || line.length < 3 || ["lift", "all at the float"].includes(rig.pattern.kind);
    if (nothing || depth.depthMm >= 1600) expect(sister === undefined).toBe(nothing);
    if (!sister) return;
    const bulky = rig.pattern.kind.endsWith("bulk");
    expect(sister.arrangement).toBe(bulky ? "strung out" : "bulk");
    if (bulky) expect(extentMm(sister.shot)).toBeGreaterThan(extentMm(line));
    else expect(extentMm(sister.shot)).toBeLessThan(extentMm(line));
  });
});
