import { describe } from "vitest";
import { drawFloatChart } from "../../src/drawing/float/float-chart.ts";
import { drawFloat } from "../../src/drawing/float/float-drawing.ts";
import { drawFloatState } from "../../src/drawing/float/float-states.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawPatternCharts } from "../../src/drawing/patterns/pattern-chart.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import type { SolvedDepth } from "../../src/model/solved.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { drawingText } from "../support/drawing-text.ts";
import { holdAgainstGoldens } from "../support/golden.ts";
import { avon, sampleAvon, sampleStick, sampleWaggler, stick, waggler } from "../support/sample-rig.ts";

const card = { widthMm: 48, heightMm: 78 };
const onCard = { labels: "distances", textMm: 3.175 } as const;
const [shallow, deep] = sampleWaggler.depths;

/** The same depth with round figures for the water's part, so that only the drawing decides what the file holds. */
function inRoundFigures(depth: SolvedDepth): SolvedDepth {
  const inWater = depth.inWater!;
  const tenthsS = Array.from({ length: 10 }, (_, i) => (i + 1) ** 2 / 5);
  const track = [0, ...tenthsS].map((timeS, i) => ({ timeS, depthMm: (depth.depthMm * i) / 10 }));
  const eyeMm = depth.floatToHookMm;
  const shape = [0, 0.5, 1].map((share) => ({
    fromHookMm: share * eyeMm,
    xMm: (share ** 2 - 1) * 400,
    depthMm: depth.depthMm - 100 - share * (depth.depthMm - 100 - depth.draughtMm),
  }));
  return {
    ...depth,
    inWater: {
      ...inWater,
      sink: inWater.sink.map((sink) => ({ ...sink, hangMm: depth.depthMm, tenthsS, track })),
      flow: inWater.flow.map((hang) => ({ ...hang, leadMm: -400, offBedMm: 100, shape })),
    },
  };
}

/** One case a file. */
const cases: Readonly<Record<string, () => Drawing>> = {
  "waggler-on-card": () => drawRig(sampleWaggler, deep!, card, drawingKit, onCard),
  "waggler-on-page": () =>
    drawRig(sampleWaggler, shallow!, { widthMm: 100, heightMm: 140 }, drawingKit, {
      labels: "full",
      textMm: 4,
    }),
  "waggler-over-depth": () =>
    drawRig(sampleWaggler, shallow!, card, drawingKit, { ...onCard, variant: "over depth" }),
  "stick-in-flow": () =>
    drawRig(sampleStick, inRoundFigures(sampleStick.depths[1]!), card, drawingKit, onCard),
  "avon-in-flow": () => drawRig(sampleAvon, inRoundFigures(sampleAvon.depths[0]!), card, drawingKit, onCard),
  "waggler-up-in-the-water": () =>
    drawRig(sampleWaggler, shallow!, card, drawingKit, { ...onCard, variant: "up in the water" }),
  "float-waggler": () => drawFloat(waggler, { widthMm: 70, heightMm: 220 }, drawingKit),
  "float-chart": () =>
    drawFloatChart([waggler, stick, avon], { widthMm: 90, heightMm: 150 }, drawingKit, { textMm: 3.2 }),
  "float-state-laid-on": () =>
    drawFloatState("laid-on", sampleWaggler, shallow!, 42, drawingKit, { textMm: 3.3 })!,
  "float-state-held-by-the-bed": () =>
    drawFloatState("held-by-the-bed", sampleStick, sampleStick.depths[0]!, 42, drawingKit, { textMm: 3.3 })!,
  "pattern-chart": () =>
    drawPatternCharts(
      [
        { rig: sampleWaggler, depth: inRoundFigures(shallow!) },
        { rig: sampleAvon, depth: inRoundFigures(sampleAvon.depths[0]!) },
      ],
      { widthMm: 110, waterMm: 80, textMm: 3.5 },
      drawingKit,
    )[0]!,
};

describe("golden drawings", () => {
  const told = Object.entries(cases).map(([name, draw]) => [name, () => drawingText(draw())] as const);
  holdAgainstGoldens("drawing", Object.fromEntries(told), ["painter.svg", "knots", "scenes"]);
});
