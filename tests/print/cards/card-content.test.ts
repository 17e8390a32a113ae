import { expect, test } from "vitest";
import type { UnitChoice } from "../../../src/model/unit-choice.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

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
  "in %s units the rule for any other depth gives what the table gives for each",
  (units) => {
    let rules = 0;
    for (const solved of rigs) {
      const { otherDepth, depths } = cardContent(solved, library.guide, kitIn(units));
      if (otherDepth === undefined) continue;
      rules += 1;
      const [, sign, gap] = /depth\s([−+])\s(\S+(?:\scm)?),/.exec(otherDepth)!;
      const moreMm = readMm(gap!) * (sign === "+" ? 1 : -1);
      for (const { depth, setAt } of depths)
        expect(readMm(depth) + moreMm, `${solved.rig.id}, ${depth}`).toBeCloseTo(readMm(setAt), 6);
    }
    expect(rules).toBeGreaterThan(5);
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
