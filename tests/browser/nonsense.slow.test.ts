import fc from "fast-check";
import { expect, test } from "vitest";
import { fitRig } from "../../src/browser/fit-rig.ts";
import type { ShotScale } from "../../src/core/tackle/shot.ts";
import { type QuestionName, questions } from "../../src/model/questions.ts";
import type { Rig } from "../../src/model/rig.ts";
import { unitChoices } from "../../src/model/unit-choice.ts";
import { fromBox } from "../../src/solve/from-box.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { reasonText } from "../../src/words/reason.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { endless } from "../support/endless.ts";
import { sampleStick, sampleWaggler } from "../support/sample-rig.ts";

const rigs = [sampleWaggler.rig, sampleStick.rig];
const scale: ShotScale = {
  id: "trade",
  title: "Round figures",
  sizes: sampleWaggler.rig.tub.map(({ size, massG }) => ({ name: size, massG })),
};

const number = fc.oneof(
  fc.constantFrom(
    "0",
    "-1",
    "1e999",
    "NaN",
    "Infinity",
    "1/0",
    "0.000001",
    "9".repeat(40),
    "1.2.3",
    "½",
    "1,7",
    "٣",
  ),
  fc.integer({ min: -5, max: 400 }).map(String),
  fc.double({ min: 0, max: 20, noNaN: true }).map((value) => value.toFixed(2)),
);
const unit = fc.constantFrom(
  "m",
  "cm",
  "mm",
  "ft",
  "in",
  "'",
  "C",
  "F",
  "m/s",
  "g",
  "BB",
  "No 4",
  "lead BB",
  "",
  "__proto__",
);
const piece = fc.oneof(
  fc.tuple(number, unit).map(([figure, of]) => `${figure} ${of}`),
  fc.constantFrom(
    "10 m in 25 s",
    "1 m in 0 s",
    ",",
    "+",
    "-",
    "\u202e",
    "\0",
    "<img src=x>",
    "constructor",
    "plenty",
  ),
  fc.string({ unit: "binary", maxLength: 12 }),
);
const typed = fc.oneof(
  { weight: 3, arbitrary: piece },
  { weight: 1, arbitrary: fc.array(piece, { maxLength: 4 }).map((pieces) => pieces.join(" ")) },
);
const fields = [
  "depth",
  "tip",
  "temperature",
  "pace",
  "rod",
  "capacity",
  "capacity-metal",
  "capacity-basis",
  "box",
];
const answers = fc.uniqueArray(fc.tuple(fc.constantFrom(...fields), typed), {
  minLength: 1,
  maxLength: 3,
  selector: ([field]) => field,
});

const figureOf: Readonly<Record<QuestionName, (rig: Rig) => number>> = {
  depth: ({ depthsMm }) => depthsMm[0]!,
  tip: ({ float }) => float.tipShowingMm,
  temperature: ({ conditions }) => conditions.tempC,
  pace: ({ pacesMs }) => pacesMs[0]!,
  rod: ({ rodLengthMm }) => rodLengthMm,
};
const isQuestion = (field: string): field is QuestionName => field in figureOf;

/** Whatever is typed is refused in its field, or read as a figure that can be; what comes of it has no nonsense in it. */
test("2,500 fits to nonsense show none: each field is refused, or its figure lies within what is asked for, and so do all that come of it", () => {
  let solved = 0;
  const property = fc.property(
    fc.constantFrom(...rigs),
    fc.constantFrom(...unitChoices),
    answers,
    (rig, units, given) => {
      const { rig: own, box, problems } = fitRig(rig, scale, new Map(given), units);
      for (const [field] of given) {
        if (!isQuestion(field) || problems.some((problem) => problem.field === field)) continue;
        const { least, most } = questions[units][field];
        expect(figureOf[field](own)).toBeGreaterThanOrEqual(least);
        expect(figureOf[field](own)).toBeLessThanOrEqual(most);
      }
      if (problems.length > 0) return;
      const came = box ? fromBox(own, box) : solveRig(own);
      if (came.ok) solved += 1;
      expect(endless(came)).toBeUndefined();
      for (const finding of came.findings) {
        expect(reasonText(finding, drawingKit.words, drawingKit.figures)).not.toMatch(
          /NaN|Infinity|∞|undefined/,
        );
      }
    },
  );
  fc.assert(property, { seed: 14, numRuns: 2500 });
  expect(solved).toBeGreaterThan(100);
});
