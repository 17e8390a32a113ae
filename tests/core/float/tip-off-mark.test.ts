import { describe, expect, it } from "vitest";
import { floatPullG } from "../../../src/core/float/float.ts";
import { checkTipMark } from "../../../src/core/float/tip-off-mark.ts";
import { pullG, type Shot } from "../../../src/core/tackle/shot.ts";
import { pool, straightQuill } from "../floats.ts";

type MarkedTip = Parameters<typeof checkTipMark>[0];

const lead = (size: string, massG: number): Shot => ({ size, massG, metal: "lead" });

/** The quill, 5 mm thick, so much lead short of its mark of 15 mm: 0.1 g of lead are 4.6 mm of its tip. */
const short = (missingG: number, changes: Partial<MarkedTip> = {}): MarkedTip => ({
  float: straightQuill,
  water: pool,
  loadPullG: floatPullG(straightQuill, pool) - pullG(missingG, "lead", pool),
  wantedMm: 15,
  uncertaintyMm: 6,
  left: [],
  forSale: [],
  ...changes,
});

const told = (tip: MarkedTip) => checkTipMark(tip).map(({ code, values }) => ({ code, ...values }));

describe("a tip against the mark that is wanted", () => {
  it("is right within a centimetre, and as far as the water's skin may hold it off", () => {
    expect(told(short(0.2))).toEqual([]);
    expect(told(short(0.4, { uncertaintyMm: 20 }))).toEqual([]);
  });

  // 0.4 g of lead: a pull of 0.364737 g, 18.58 mm of tip more.
  it("far off says what is missing where no shot helps", () => {
    const [finding] = told(short(0.4));
    expect(finding).toMatchObject({ code: "tip-off-mark", wantedMm: 15 });
    expect((finding as { tipMm: number }).tipMm).toBeCloseTo(33.58, 2);
    expect((finding as { missingG: number }).missingG).toBeCloseTo(0.364737, 5);
  });

  it("far off names the shot of the tub that brings it nearest, never one that sinks it", () => {
    const left = [lead("No 1", 0.3), lead("No 4", 0.2), lead("AAA", 0.8)];
    // 0.3 of the 0.4 g: 0.1 g short is 4.65 mm of tip.
    const [finding] = told(short(0.4, { left }));
    expect(finding).toMatchObject({ code: "tip-off-mark-add", size: "No 1" });
    expect((finding as { thenMm: number }).thenMm).toBeCloseTo(19.65, 2);
  });

  it("sends to the shop only for what is clearly better than the tub", () => {
    const forSale = [lead("BB", 0.4)];
    expect(told(short(0.4, { left: [lead("No 4", 0.2)], forSale }))).toMatchObject([
      { code: "tip-off-mark-buy", size: "BB" },
    ]);
    expect(told(short(0.4, { left: [lead("No 1", 0.3)], forSale }))).toMatchObject([
      { code: "tip-off-mark-add", size: "No 1" },
    ]);
  });
});
