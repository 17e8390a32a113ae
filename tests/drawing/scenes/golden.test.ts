import { describe } from "vitest";
import type { Drawing } from "../../../src/drawing/model.ts";
import { drawMakeUp } from "../../../src/drawing/scenes/draw-make-up.ts";
import { drawScene } from "../../../src/drawing/scenes/draw-scene.ts";
import { drawSinkTheLine } from "../../../src/drawing/scenes/sink-the-line.ts";
import { drawSwim } from "../../../src/drawing/scenes/swim.ts";
import { type Scene, scenes } from "../../../src/model/pictures.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { drawingText } from "../../support/drawing-text.ts";
import { holdAgainstGoldens } from "../../support/golden.ts";
import { sampleSlider, sampleStick, sampleWaggler } from "../../support/sample-rig.ts";
import { makebelievePool, placed } from "./sample-swim.ts";

const bench = { widthMm: 80 };
const bank = { widthMm: 80, heightMm: 40 };
const section = { widthMm: 80, heightMm: 80 };

const makeUps = { waggler: sampleWaggler, stick: sampleStick, slider: sampleSlider };

/** Held below with a rig or a swim of their own. */
const ownCases: readonly Scene[] = ["make-up", "sink-the-line", "swim"];

describe("golden scenes", () => {
  const numbered = (name: string, steps: readonly Drawing[]) =>
    steps.map((step, i) => [`${name}-${i + 1}`, () => drawingText(step)] as const);
  const steps = [
    ...Object.entries(makeUps).flatMap(([rig, solved]) =>
      numbered(`make-up-${rig}`, [drawMakeUp(solved, bench, drawingKit)]),
    ),
    ...scenes
      .filter((scene) => !ownCases.includes(scene))
      .flatMap((scene) => numbered(scene, drawScene(scene, sampleWaggler, bank, drawingKit))),
    ...numbered("sink-the-line", drawSinkTheLine(sampleWaggler.rig, bank, drawingKit)),
  ];
  holdAgainstGoldens("drawing/scenes", {
    ...Object.fromEntries(steps),
    swim: () => drawingText(drawSwim(makebelievePool, placed, section, drawingKit)),
  });
});
