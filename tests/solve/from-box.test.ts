import { describe, expect, it } from "vitest";
import { withId } from "../../src/core/lists.ts";
import { metalIn, parseBox } from "../../src/core/tackle/box-notation.ts";
import type { Tub } from "../../src/core/tackle/shot.ts";
import { countSizes } from "../../src/core/tackle/shot-groups.ts";
import type { Rig } from "../../src/model/rig.ts";
import { allShot, type SolvedRig } from "../../src/model/solved.ts";
import { boxInWater, fallFromBox, fromBox, rigThatCan, worthBuying } from "../../src/solve/from-box.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { valuesOf } from "../support/findings.ts";
import { shippedLibrary as library } from "../support/shipped-library.ts";

/** Each at its first depth. */
const rigs = library.rigs.map(({ rig }): Rig => ({ ...rig, depthsMm: rig.depthsMm.slice(0, 1) }));
const still = rigs.filter(({ water }) => water === "still");
const rigOf = (id: string) => withId(rigs, id);

function boxFor(rig: Rig, text: string): Tub {
  const box = parseBox(text, withId(library.scales, rig.scaleId), metalIn(rig.tub));
  if (!box.ok) throw new Error(JSON.stringify(box.findings));
  return box.value;
}

function made(rig: Rig, text: string) {
  const got = fromBox(rig, boxFor(rig, text));
  if (!got.ok) throw new Error(`${rig.id} from ${text}: ${JSON.stringify(got.findings)}`);
  return got.value;
}

const ownCodes = ({ depths }: SolvedRig) =>
  depths
    .flatMap(({ findings }) => findings.map(({ code }) => code))
    .filter((code) => code.startsWith("box."));
const roles = ({ depths }: SolvedRig) =>
  depths.map(({ lineShot }) => [...new Set(lineShot.map(({ role }) => role))]);

const boxes = [
  "No 4, No 8",
  "AAA, BB, No 4, No 8",
  "BB, No 4, No 6, No 10",
  "AAA, 4 BB, 3 No 4, 2 No 6, 5 No 8, 4 No 10",
];
const cases = boxes.flatMap((text) =>
  rigs.map((rig) => {
    const box = boxFor(rig, text);
    return [rig.id, text, { rig, box, got: fromBox(rig, box) }] as const;
  }),
);

describe("a rig made from somebody's own box", () => {
  it("is the guide's rig to the last figure where the box is the guide's", () => {
    for (const rig of still) {
      const got = fromBox(rig, rig.tub);
      const own = solveRig(rig);
      expect(got.ok && own.ok && got.value.made).toEqual(own.ok && own.value);
      expect(worthBuying(rig, rig.tub, got.ok ? got.value : undefined)).toEqual([]);
    }
  });

  it.each(cases)(
    "%s from %s takes nothing that is not there, and keeps pattern and lock",
    (_, __, { rig, box, got }) => {
      if (!got.ok) {
        expect(got.findings.map(({ code }) => code)).toContain("box.cannot-be-made");
        return;
      }
      const [depth] = got.value.made.depths;
      for (const { size, metal, count } of box) {
        const used = allShot(depth!).filter((shot) => shot.size === size && shot.metal === metal);
        expect(used.length).toBeLessThanOrEqual(count);
      }
      expect(allShot(depth!).every(({ size }) => box.some((shot) => shot.size === size))).toBe(true);
      expect(got.value.made.rig.pattern.kind).toBe(rig.pattern.kind);
      expect(roles(got.value.made)).toEqual(roles(got.value.own));
      if (rig.float.heldByShot) expect(depth!.lockShare).toBeGreaterThanOrEqual(rig.lockShareMin - 1e-9);
      const masses = depth!.lineShot.map(({ massG }) => massG);
      expect(masses).toEqual([...masses].sort((a, b) => a - b));
    },
  );

  it.each(cases)(
    "%s from %s comes nearer to the guide's with the size it says to buy",
    (_, text, { rig, box, got }) => {
      const [advice] = worthBuying(rig, box, got.ok ? got.value : undefined);
      if (!advice) return;
      const { size } = valuesOf([advice], got.ok ? "box.buy" : "box.buy-to-make");
      expect(box.some((shot) => shot.size === size && shot.count === Number.POSITIVE_INFINITY)).toBe(false);
      const then = fromBox(rig, boxFor(rig, `${text}, 1000 ${size}`));
      expect(then.ok).toBe(true);
      if (!got.ok || !then.ok) return;
      const offMm = ({ made: { depths }, own }: typeof got.value) =>
        Math.abs(depths[0]!.tipShowingMm - own.depths[0]!.tipShowingMm);
      // Nearer by the shot on the line where the tip is not off: then the tip stays within what is told.
      expect(offMm(then.value)).toBeLessThan(Math.max(5, offMm(got.value)) + 1e-9);
    },
  );

  it("says which shot are others, what that does to the tip and to the fall, and what to buy", () => {
    const rig = rigOf("straight-waggler-strung-out");
    const box = boxFor(rig, "AAA, BB, No 4, No 6");
    const from = made(rig, "AAA, BB, No 4, No 6");
    expect(ownCodes(from.made)).toEqual(["box.other-line-shot", "box.other-lock", "box.tip-changed"]);
    const [found] = from.made.depths[0]!.findings;
    const { used, own } = valuesOf([found!], "box.other-line-shot");
    expect(countSizes(used)).toEqual([{ size: "No 6", count: 3 }]);
    expect(countSizes(own)).toEqual([
      { size: "No 8", count: 2 },
      { size: "No 10", count: 1 },
    ]);
    const wet = boxInWater(rig, box, from);
    expect(wet.ok && ownCodes(wet.value)).toEqual([
      "box.other-line-shot",
      "box.other-lock",
      "box.tip-changed",
      "box.fall-changed",
      "box.buy",
    ]);
    const { fallS, ownS } = valuesOf(wet.findings, "box.fall-changed");
    expect(fallS).toBeLessThan(ownS);
  });

  it("tells a tip that is another, and not twice what to buy", () => {
    const rig = rigOf("canal-light");
    const from = made(rig, "No 4, No 8");
    const { tipMm, ownMm } = valuesOf(from.made.depths[0]!.findings, "box.tip-changed");
    expect(tipMm).toBe(from.made.depths[0]!.tipAsSetMm);
    expect(ownMm).toBe(from.own.depths[0]!.tipAsSetMm);
    expect(tipMm - ownMm).toBeGreaterThan(10);
    expect(from.made.depths[0]!.findings.map(({ code }) => code)).not.toContain("tip-off-mark-buy");
  });

  it("tells another fall from a second on, where that is a twentieth of it", () => {
    const from = made(rigOf("straight-waggler-strung-out"), "AAA, BB, No 4, No 6");
    const [depth, ownDepth] = [from.made.depths[0]!, from.own.depths[0]!];
    const falling = (one: typeof depth, fallS: number) =>
      ({ ...one, inWater: { sink: [{ tenthsS: [0, fallS] }] } }) as unknown as typeof depth;
    const told = (fallS: number, ownS: number) =>
      fallFromBox(falling(depth, fallS), falling(ownDepth, ownS)).map(({ code }) => code);
    expect(told(9, 10)).toEqual(["box.fall-changed"]);
    // Less than a second, and less than a twentieth.
    expect(told(9.1, 10)).toEqual(["box.fall-kept"]);
    expect(told(39, 37.2)).toEqual(["box.fall-kept"]);
    expect(told(42, 40)).toEqual(["box.fall-changed"]);
  });

  it("says nothing where only the lock is made of others that pull the same", () => {
    const from = made(rigOf("margin"), "No 4, No 8");
    expect(ownCodes(from.made)).toEqual([]);
    expect(fallFromBox(from.made.depths[0]!, from.own.depths[0]!)).toEqual([]);
  });

  it("is refused where nothing pulls the float down, and another rig is named that can be made", () => {
    const rig = rigOf("lift-method");
    for (const text of ["No 4, No 8", "AAA, No 4"]) {
      const box = boxFor(rig, text);
      const got = fromBox(rig, box);
      expect(got.findings.map(({ code, severity }) => [code, severity])).toEqual([
        ["box.cannot-be-made", "error"],
      ]);
      expect(worthBuying(rig, box).map(({ values }) => values)).toEqual([{ size: "SSG" }]);
      const other = rigThatCan(
        still.filter(({ id }) => id !== rig.id),
        (one) => boxFor(one, text),
      );
      expect(other && made(other.rig, text).made.depths).toHaveLength(1);
      expect(other?.finding.values).toEqual({ rig: other?.rig.title });
    }
    expect(rigThatCan([rig], () => boxFor(rig, "No 8"))).toBe(undefined);
  });

  it("leaves lead that may not be used in the box, and says so", () => {
    const rig = rigOf("first-session");
    const { place } = rig.leadRule;
    const from = made(rig, "lead BB, AAA, No 4, No 6, No 8");
    expect(from.made.depths[0]!.lockShot.map(({ size }) => size)).not.toContain("BB");
    expect(valuesOf(from.made.depths[0]!.findings, "box.lead-left-out")).toEqual({ sizes: "BB", place });
    // The lead that the law allows is used.
    const small = made(rig, "AAA, BB, No 4, No 6, lead No 8, lead No 10");
    const metalsOfSmall = allShot(small.made.depths[0]!).flatMap(({ size, metal }) =>
      size === "No 8" || size === "No 10" ? [metal] : [],
    );
    expect(new Set(metalsOfSmall)).toEqual(new Set(["lead"]));
    const refused = fromBox(rig, boxFor(rig, "lead BB"));
    expect(refused.findings.map(({ code }) => code)).toEqual(["box.cannot-be-made", "box.lead-left-out"]);
  });

  it("is no answer where the guide's own shot give none", () => {
    const rig = { ...rigOf("first-session"), depthsMm: [200] };
    const own = solveRig(rig);
    expect(fromBox(rig, rig.tub)).toEqual(own);
    expect(worthBuying(rig, [])).toEqual([]);
  });
});
