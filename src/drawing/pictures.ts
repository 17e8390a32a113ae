import { first, known, paired, withId } from "../core/lists.ts";
import type { Library } from "../model/library.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { FilmReference, PictureReference } from "../model/pictures.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { drawBait } from "./bait/draw-bait.ts";
import { type Film, type FilmRoom, stripOf } from "./film/film.ts";
import { drawFilm } from "./film/films.ts";
import { drawFish } from "./fish/draw-fish.ts";
import { drawFloatChart } from "./float/float-chart.ts";
import { drawFloat } from "./float/float-drawing.ts";
import { stateGroups } from "./float/float-poses.ts";
import { drawFloatState, drawFloatStates } from "./float/float-states.ts";
import type { DrawingKit } from "./kit.ts";
import { drawKnot } from "./knots/draw-knot.ts";
import type { Drawing } from "./model.ts";
import { drawPatternCharts } from "./patterns/pattern-chart.ts";
import { drawHangPlot, hangPlotRig, hangsAt } from "./plots/hang-plot.ts";
import { drawRig } from "./rig/rig-drawing.ts";
import { drawScene, rigInScene } from "./scenes/draw-scene.ts";

/** What a text's pictures are drawn from. */
export interface PictureSource {
  readonly library: Library;
  /** Photos and drawings of the guide's own, as they are printed. */
  readonly images: ReadonlyMap<string, ReadyImage>;
  readonly solved: ReadonlyMap<string, SolvedRig>;
}

/** Room for a picture in a column of text, and the size of the words in it. */
interface PictureRoom {
  readonly widthMm: number;
  readonly textMm: number;
  /** The states of a float as pictures of their own, so that a page can end between them. */
  readonly apart?: boolean;
  /** The most that one float may take of the height, where pages are short. */
  readonly floatHeightMm?: number;
}

/** A drawing and what is said below it: what to do, at a step of something. */
export interface CaptionedDrawing {
  readonly drawing: Drawing;
  readonly caption?: string;
}

type Of<K extends PictureReference["picture"]> = Extract<PictureReference, { picture: K }>;

type Draw<K extends PictureReference["picture"]> = (
  reference: Of<K>,
  source: PictureSource,
  room: PictureRoom,
  kit: DrawingKit,
) => readonly CaptionedDrawing[];

/** Height of a rig's picture for its width: tall enough for a label at every shot. */
const rigHeightShare = 1.3;
const floatHeightMm = 120;
const statePanelMm = 42;
/** The most that a chart takes for each three floats: two such rows stand on a page. */
const chartRowMm = 100;
/** Height of the deepest water in a chart of patterns. */
const patternWaterMm = 75;

const alone = (drawing: Drawing): readonly CaptionedDrawing[] => [{ drawing }];

/** The most that a photo takes of a page's height. */
const photoHeightMm = 105;

/** Every picture that a text can ask for; one without its line here does not compile. */
const draws: { readonly [K in PictureReference["picture"]]: Draw<K> } = {
  "rig-drawing": ({ rig, depthMm, variant }, { solved }, { widthMm, textMm }, kit) => {
    const [found, depth] = atDepth(solved, rig, depthMm);
    const box = { widthMm, heightMm: widthMm * rigHeightShare };
    const drawing = drawRig(found, depth, box, kit, { labels: "full", textMm, variant });
    return [{ drawing, caption: drawing.title }];
  },
  "float-drawing": ({ float }, { library }, { widthMm, textMm, ...room }, kit) => {
    const entry = withId(library.floats, float);
    const box = { widthMm, heightMm: room.floatHeightMm ?? floatHeightMm };
    return alone(drawFloat(entry.float, box, kit, { textMm, stretched: true }));
  },
  "float-chart": ({ floats }, { library }, { widthMm, textMm }, kit) => {
    const found = floats.map((id) => withId(library.floats, id).float);
    const box = { widthMm, heightMm: chartRowMm * Math.ceil(floats.length / 3) };
    return alone(drawFloatChart(found, box, kit, { textMm, stretched: true }));
  },
  "float-states": ({ rig, show }, { solved }, { widthMm, textMm, apart }, kit) => {
    const found = known(solved, rig);
    const depth = first(found.depths);
    const pictures = stateGroups[show];
    if (!apart) {
      const options = { textMm, panelMm: statePanelMm, pictures };
      return alone(drawFloatStates(found, depth, { widthMm }, kit, options));
    }
    return pictures.flatMap((picture) => {
      const drawing = drawFloatState(picture, found, depth, widthMm, kit, { textMm });
      return drawing ? [{ drawing }] : [];
    });
  },
  "pattern-chart": ({ rigs, depthMm }, { solved }, { widthMm, textMm }, kit) => {
    const entries = rigs.map((id) => {
      const [rig, depth] = atDepth(solved, id, depthMm);
      return { rig, depth };
    });
    const room = { widthMm, waterMm: patternWaterMm, textMm };
    return drawPatternCharts(entries, room, kit).map((drawing) => ({ drawing }));
  },
  "hang-plot": ({ rig, depthMm }, { solved }, { widthMm, textMm }, kit) => {
    const [found, depth] = atDepth(solved, rig, depthMm);
    const hangs = hangsAt(depth, first(found.rig.pacesMs));
    const box = { widthMm, heightMm: widthMm * rigHeightShare };
    return alone(drawHangPlot(hangPlotRig(found, depth), hangs, box, kit, { textMm }));
  },
  film: (reference, source, room, kit) => stripOf(drawFilms(source)(reference, room, kit), kit),
  image: ({ image: id, alt, caption }, { images }, room) => {
    const { print: image } = known(images, id);
    const shape = image.widthPx / image.heightPx;
    const widthMm = Math.min(room.widthMm, photoHeightMm * shape);
    const heightMm = widthMm / shape;
    const items = [{ kind: "image", xMm: 0, yMm: 0, widthMm, heightMm, image }] as const;
    const drawing = { widthMm, heightMm, title: caption ?? alt, description: alt, items };
    return [{ drawing, ...(caption !== undefined && { caption }) }];
  },
  knot: ({ knot }, { library }, { widthMm }, kit) => {
    const entry = withId(library.knots, knot);
    const [frameWidth, frameHeight] = entry.frame;
    const drawings = drawKnot(entry, { widthMm, heightMm: (widthMm * frameHeight) / frameWidth }, kit);
    return paired(drawings, entry.steps).map(([drawing, { caption }]) => ({ drawing, caption }));
  },
  fish: ({ fish }, { library }, room, kit) => {
    const { title, looks } = withId(library.species, fish);
    return looks ? alone(drawFish({ title, looks }, room, kit)) : [];
  },
  bait: ({ bait }, { library }, room, kit) => {
    const drawn = library.baits.find((entry) => entry.bait.id === bait);
    if (!drawn?.looks) return [];
    const { looks, hooks } = drawn;
    const hook = library.hooks.find(({ size }) => size === hooks?.largest) ?? first(library.hooks);
    return alone(drawBait({ title: drawn.bait.title, looks, hookMassG: hook.massG }, room, kit));
  },
  scene: ({ scene }, { library, solved }, room, kit) => {
    const entry = rigInScene(scene, library.rigs);
    const found = entry && solved.get(entry.rig.id);
    const drawings = found ? drawScene(scene, found, room, kit) : [];
    return drawings.map((drawing) => ({
      drawing,
      ...(drawings.length > 1 && { caption: drawing.description }),
    }));
  },
};

function atDepth(
  solved: PictureSource["solved"],
  id: string,
  depthMm: number,
): readonly [SolvedRig, SolvedDepth] {
  const rig = known(solved, id);
  return [rig, rig.depths.find((one) => one.depthMm === depthMm)!];
}

/** A film that a text can ask for, with all its moments. */
export type Films = (reference: FilmReference, room: FilmRoom, kit: DrawingKit) => Film;

export function drawFilms({ solved }: Pick<PictureSource, "solved">): Films {
  return ({ film, rig, depthMm }, room, kit) => drawFilm(film, ...atDepth(solved, rig, depthMm), room, kit);
}

/**
 * Every picture that a text can ask for: one drawing, or one for each step or state with what to do there. Each is drawn
 * when page or paper asks for it, in the room that it has.
 */
export type Drawings = (
  reference: PictureReference,
  room: PictureRoom,
  kit: DrawingKit,
) => readonly CaptionedDrawing[];

export function drawPictures(source: PictureSource): Drawings {
  return (reference, room, kit) => {
    const draw = draws[reference.picture] as Draw<PictureReference["picture"]>;
    return draw(reference, source, room, kit);
  };
}
