import { describe, expect, it } from "vitest";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { valuesOf } from "../support/findings.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

const avon = shippedLibrary.rigs
  .map(({ rig }) => rig)
  .find(({ id, water }) => water === "flowing" && id.startsWith("avon"))!;

/** What is found of the rig in its first depth with its hook set so far over it. */
const set = (overdepthMm: number) =>
  solveRig({ ...avon, setting: "over depth", overdepthMm, depthsMm: [avon.depthsMm[0]!] });
const codes = (overdepthMm: number) => set(overdepthMm).findings.map(({ code }) => code);

describe("a rig in running water set so that its bait lies on the bed", () => {
  it("is told how much shallower to be, and hangs clear so", () => {
    const { shallowerMm } = valuesOf(set(600).findings, "flow-setting-too-deep");
    expect(shallowerMm).toBeGreaterThan(0);
    expect(codes(600 - shallowerMm)).not.toContain("flow-setting-too-deep");
    // The least that does: a setting a little deeper is told so again.
    expect(codes(600 - shallowerMm + 20)).toContain("flow-setting-too-deep");
  });

  it("is told nothing as it is shipped", () => {
    expect(solveRig(avon).findings.map(({ code }) => code)).not.toContain("flow-setting-too-deep");
  });
});
