import type { Scene } from "../../solve/live/pictures.ts";
import type { SolvedRig } from "../../solve/solved.ts";
import type { DrawingKit } from "../kit.ts";
import type { Drawing } from "../model.ts";
import { drawMakeUp } from "./draw-make-up.ts";
import { shelfSwim } from "./shelf-swim.ts";
import { drawSinkTheLine } from "./sink-the-line.ts";
import { drawSwim } from "./swim.ts";

/** Heights for the width of a column of text, and the least that the words leave room in. */
const heightShares: Readonly<Record<Scene, number>> = { swim: 1, "make-up": 0.37, "sink-the-line": 0.5 };
const leastMm: Readonly<Record<Scene, number>> = { swim: 50, "make-up": 28, "sink-the-line": 36 };

/** A scene with a rig in it, for a column of text: one picture, or one a step. */
export function drawScene(
  scene: Scene,
  solved: SolvedRig,
  { widthMm }: { readonly widthMm: number },
  kit: DrawingKit,
): readonly Drawing[] {
  const box = { widthMm, heightMm: Math.max(leastMm[scene], widthMm * heightShares[scene]) };
  switch (scene) {
    case "swim": {
      const { swim, rigs } = shelfSwim(solved, kit);
      return [drawSwim(swim, rigs, box, kit)];
    }
    case "make-up":
      return drawMakeUp(solved, box, kit);
    case "sink-the-line":
      return drawSinkTheLine(solved.rig, box, kit);
  }
}
