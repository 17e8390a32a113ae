import type { Library } from "../content/library.ts";
import type { PictureReference } from "../solve/live/pictures.ts";
import type { SolvedRig } from "../solve/solved.ts";
import { drawFloat } from "./float-drawing.ts";
import { drawFloatStates } from "./float-states.ts";
import type { DrawingKit } from "./kit.ts";
import { drawKnot } from "./knots/draw-knot.ts";
import type { Drawing } from "./model.ts";
import { drawRig } from "./rig-drawing.ts";
import { drawScene } from "./scenes/draw-scene.ts";

/** What a text's pictures are drawn from. */
export interface PictureSource {
  readonly library: Library;
  readonly solved: ReadonlyMap<string, SolvedRig>;
}

/** Room for a picture in a column of text, and the size of the words in it. */
export interface PictureRoom {
  readonly widthMm: number;
  readonly textMm: number;
}

type Of<K extends PictureReference["picture"]> = Extract<PictureReference, { picture: K }>;

type Draw<K extends PictureReference["picture"]> = (
  reference: Of<K>,
  source: PictureSource,
  room: PictureRoom,
  kit: DrawingKit,
) => readonly Drawing[];

/** Height of a rig's picture for its width: tall enough for a label at every shot. */
const rigHeightShare = 1.45;
/** Height of a knot step for its width, in the proportion of the knot's own frame. */
const floatHeightMm = 150;
const statePanelMm = 42;

/** Every picture that a text can ask for; one without its line here does not compile. */
const draws: { readonly [K in PictureReference["picture"]]: Draw<K> } = {
  "rig-drawing": ({ rig, depthMm }, { solved }, { widthMm, textMm }, kit) => {
    const found = solved.get(rig)!;
    const depth = found.depths.find((one) => one.depthMm === depthMm)!;
    const box = { widthMm, heightMm: widthMm * rigHeightShare };
    return [drawRig(found, depth, box, kit, { labels: "full", textMm })];
  },
  "float-drawing": ({ float }, { library }, { widthMm, textMm }, kit) => {
    const entry = library.floats.find(({ id }) => id === float)!;
    return [drawFloat(entry.float, { widthMm, heightMm: floatHeightMm }, kit, { textMm })];
  },
  "float-states": ({ rig }, { solved }, { widthMm, textMm }, kit) => {
    const found = solved.get(rig)!;
    return [drawFloatStates(found, found.depths[0]!, { widthMm }, kit, { textMm, panelMm: statePanelMm })];
  },
  knot: ({ knot }, { library }, { widthMm }, kit) => {
    const entry = library.knots.find(({ id }) => id === knot)!;
    const [frameWidth, frameHeight] = entry.frame;
    return drawKnot(entry, { widthMm, heightMm: (widthMm * frameHeight) / frameWidth }, kit);
  },
  scene: ({ scene }, { library, solved }, room, kit) => {
    // The rig that every reader starts with, where it is one that shot lock.
    const { rigs } = library;
    const entry = rigs.find(({ level, rig }) => level === "first" && rig.float.heldByShot) ?? rigs[0];
    const found = entry && solved.get(entry.rig.id);
    return found ? drawScene(scene, found, room, kit) : [];
  },
};

/** The drawings of a picture that a text asks for: one, or one for each step of a knot. */
export function drawPicture(
  reference: PictureReference,
  source: PictureSource,
  room: PictureRoom,
  kit: DrawingKit,
): readonly Drawing[] {
  const draw = draws[reference.picture] as Draw<PictureReference["picture"]>;
  return draw(reference, source, room, kit);
}
