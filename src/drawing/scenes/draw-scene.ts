import type { RigEntry } from "../../model/library.ts";
import type { Scene } from "../../model/pictures.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing } from "../model.ts";
import { drawBackShot } from "./back-shot.ts";
import { drawDisgorger } from "./disgorger.ts";
import { drawMakeUp } from "./draw-make-up.ts";
import { drawFeather } from "./feather.ts";
import { drawFillTheReel } from "./fill-the-reel.ts";
import { drawLandFish } from "./land-fish.ts";
import { makeUpCaption } from "./make-up.ts";
import { drawMend } from "./mend.ts";
import { drawReadASwim } from "./read-a-swim.ts";
import { drawRodAndReel } from "./rod-and-reel.ts";
import { shelfSwim } from "./shelf-swim.ts";
import { drawSinkTheLine } from "./sink-the-line.ts";
import { drawStrike } from "./strike.ts";
import { drawSwim } from "./swim.ts";
import { drawWhip } from "./whip.ts";
import { drawWires } from "./wires.ts";

interface SceneEntry {
  /** Height for the width of a column of text. */
  readonly heightShare: number;
  /** The least height that the words leave room in [mm]. */
  readonly leastMm: number;
  /** Whether a rig is of the kind in the picture; one that shot lock where nothing is said. */
  suits?(rig: Rig): boolean;
  draw(solved: SolvedRig, box: Box, kit: DrawingKit): readonly Drawing[];
  /** What is said below a picture that shows all steps at once. */
  caption?(solved: SolvedRig, kit: DrawingKit): string;
}

/** Every scene; one without its line here does not compile. */
const entries: Readonly<Record<Scene, SceneEntry>> = {
  swim: {
    heightShare: 1.08,
    leastMm: 50,
    draw: (solved, box, kit) => {
      const { swim, rigs } = shelfSwim(solved, kit);
      return [drawSwim(swim, rigs, box, kit)];
    },
  },
  "rod-and-reel": { heightShare: 0.96, leastMm: 0, draw: (_, box, kit) => [drawRodAndReel(box, kit)] },
  "make-up": {
    heightShare: 1,
    leastMm: 0,
    draw: (solved, box, kit) => [drawMakeUp(solved, box, kit)],
    caption: makeUpCaption,
  },
  feather: { heightShare: 0.68, leastMm: 0, draw: ({ rig }, box, kit) => drawFeather(rig, box, kit) },
  "sink-the-line": {
    heightShare: 0.54,
    leastMm: 36,
    draw: ({ rig }, box, kit) => drawSinkTheLine(rig, box, kit),
  },
  mend: { heightShare: 0.5, leastMm: 0, draw: (_, box, kit) => drawMend(box, kit) },
  strike: { heightShare: 0.64, leastMm: 0, draw: ({ rig }, box, kit) => drawStrike(rig, box, kit) },
  "land-fish": { heightShare: 0.66, leastMm: 0, draw: ({ rig }, box, kit) => drawLandFish(rig, box, kit) },
  disgorger: { heightShare: 0.5, leastMm: 0, draw: (_, box, kit) => drawDisgorger(box, kit) },
  whip: {
    heightShare: 0.66,
    leastMm: 0,
    suits: ({ outfit }) => outfit === "whip",
    draw: ({ rig }, box, kit) => drawWhip(rig, box, kit),
  },
  "fill-the-reel": { heightShare: 0.48, leastMm: 0, draw: (_, box, kit) => drawFillTheReel(box, kit) },
  "read-a-swim": { heightShare: 0.75, leastMm: 0, draw: (_, box, kit) => drawReadASwim(box, kit) },
  "back-shot": { heightShare: 0.56, leastMm: 0, draw: ({ rig }, box, kit) => drawBackShot(rig, box, kit) },
  wires: { heightShare: 0.66, leastMm: 0, draw: (_, box, kit) => [drawWires(box, kit)] },
};

/** Of the rigs that beginners start with, the one that a scene shows; the first of all where none is of its kind. */
export function rigInScene(scene: Scene, rigs: readonly RigEntry[]): RigEntry | undefined {
  const { suits = ({ float }: Rig) => float.heldByShot } = entries[scene];
  return rigs.find(({ level, rig }) => level === "first" && suits(rig)) ?? rigs[0];
}

/** A scene with what is said below each of its pictures: what to do, at a step of something. */
export function captionedScene(
  scene: Scene,
  solved: SolvedRig,
  room: { readonly widthMm: number },
  kit: DrawingKit,
): readonly { readonly drawing: Drawing; readonly caption?: string }[] {
  const drawings = drawScene(scene, solved, room, kit);
  const caption = entries[scene].caption?.(solved, kit);
  return drawings.map((drawing) => {
    const said = caption ?? (drawings.length > 1 ? drawing.description : undefined);
    if (said === undefined) return { drawing };
    // What is said below a picture is not told again in its place.
    const description = said === drawing.description ? drawing.title : drawing.description;
    return { drawing: { ...drawing, description }, caption: said };
  });
}

/** A scene for a column of text: one picture, or one a step. `solved` is the rig in it, where it shows one. */
export function drawScene(
  scene: Scene,
  solved: SolvedRig,
  { widthMm }: { readonly widthMm: number },
  kit: DrawingKit,
): readonly Drawing[] {
  const { heightShare, leastMm, draw } = entries[scene];
  return draw(solved, { widthMm, heightMm: Math.max(leastMm, widthMm * heightShare) }, kit);
}
