import { first, known, paired, withId } from "../core/lists.ts";
import type { Mm } from "../core/units.ts";
import type { SpotRig } from "../model/choosing.ts";
import { knotFilmName } from "../model/films.ts";
import type { Library } from "../model/library.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { FilmReference, PictureReference } from "../model/pictures.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { drawBait } from "./bait/draw-bait.ts";
import { type Film, type FilmRoom, stripOf } from "./film/film.ts";
import { drawFilm } from "./film/films.ts";
import { knotFilm } from "./film/knot-film.ts";
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
import { captionedScene, rigInScene } from "./scenes/draw-scene.ts";
import { bedPicture, daysPicture, spotRigPicture } from "./swims/swim-pictures.ts";

/** What a text's pictures are drawn from. */
export interface PictureSource {
  readonly library: Library;
  /** Photos and drawings of the guide's own, as they are printed. */
  readonly images: ReadonlyMap<string, ReadyImage>;
  readonly solved: ReadonlyMap<string, SolvedRig>;
  /** Rigs for the spots of swims. */
  readonly spots?: readonly SpotRig[];
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

/** A picture that a text asks for, before its room is known. */
interface Picture {
  /** All that it is drawn from, besides the reference, its room and the kit. */
  readonly from: unknown;
  draw(room: PictureRoom, kit: DrawingKit): readonly CaptionedDrawing[];
}

type PictureOf<K extends PictureReference["picture"]> = (reference: Of<K>, source: PictureSource) => Picture;

/** Height of a rig's picture for its width: tall enough for a label at every shot. */
const rigHeightShare = 1.3;
/** And of a line in the current: in a narrow column its key takes more than half of it, told in feet two thirds. */
const hangHeightShare = 2.2;
const floatHeightMm = 120;
const statePanelMm = 42;
/** The most that a chart takes for each three floats: two such rows stand on a page. */
const chartRowMm = 80;
/** Height of the deepest water in a chart of patterns. */
const patternWaterMm = 75;

const alone = (drawing: Drawing): readonly CaptionedDrawing[] => [{ drawing }];

/** The most that a photo takes of a page's height. */
const photoHeightMm = 105;

/** Every picture that a text can ask for; one without its line here does not compile. The sums of a rig follow from the rig. */
const pictures: { readonly [K in PictureReference["picture"]]: PictureOf<K> } = {
  "rig-drawing": ({ rig, depthMm, variant }, { solved }) => {
    const [found, depth] = atDepth(solved, rig, depthMm);
    return {
      from: found.rig,
      draw: ({ widthMm, textMm }, kit) => {
        const box = { widthMm, heightMm: widthMm * rigHeightShare };
        const drawing = drawRig(found, depth, box, kit, { labels: "full", textMm, variant });
        return [{ drawing, caption: drawing.title }];
      },
    };
  },
  "float-drawing": ({ float: id }, { library }) => {
    const { float } = withId(library.floats, id);
    return {
      from: float,
      draw: ({ widthMm, textMm, ...room }, kit) => {
        const box = { widthMm, heightMm: room.floatHeightMm ?? floatHeightMm };
        return alone(drawFloat(float, box, kit, { textMm, stretched: true }));
      },
    };
  },
  "float-chart": ({ floats }, { library }) => {
    const found = floats.map((id) => withId(library.floats, id).float);
    return {
      from: found,
      draw: ({ widthMm, textMm }, kit) => {
        const box = { widthMm, heightMm: chartRowMm * Math.ceil(floats.length / 3) };
        return alone(drawFloatChart(found, box, kit, { textMm, stretched: true }));
      },
    };
  },
  "float-states": ({ rig, show }, { solved }) => {
    const found = known(solved, rig);
    return {
      from: found.rig,
      draw: ({ widthMm, textMm, apart }, kit) => {
        const depth = first(found.depths);
        const shown = stateGroups[show];
        if (!apart) {
          const options = { textMm, panelMm: statePanelMm, pictures: shown };
          return alone(drawFloatStates(found, depth, { widthMm }, kit, options));
        }
        return shown.flatMap((picture) => {
          const drawing = drawFloatState(picture, found, depth, widthMm, kit, { textMm });
          return drawing ? [{ drawing }] : [];
        });
      },
    };
  },
  "pattern-chart": ({ rigs, depthMm }, { solved }) => {
    const entries = rigs.map((id) => {
      const [rig, depth] = atDepth(solved, id, depthMm);
      return { rig, depth };
    });
    return {
      from: entries.map(({ rig }) => rig.rig),
      draw: ({ widthMm, textMm }, kit) => {
        const room = { widthMm, waterMm: patternWaterMm, textMm };
        return drawPatternCharts(entries, room, kit).map((drawing) => ({ drawing }));
      },
    };
  },
  "hang-plot": ({ rig, depthMm }, { solved }) => {
    const [found, depth] = atDepth(solved, rig, depthMm);
    return {
      from: found.rig,
      draw: ({ widthMm, textMm }, kit) => {
        const hangs = hangsAt(depth, first(found.rig.pacesMs));
        const box = { widthMm, heightMm: widthMm * hangHeightShare };
        return alone(drawHangPlot(hangPlotRig(found, depth), hangs, box, kit, { textMm }));
      },
    };
  },
  film: (reference, source) => ({
    from: filmFrom(reference, source),
    draw: (room, kit) => stripOf(drawFilms(source)(reference, room, kit), kit),
  }),
  bed: ({ swim, line }, { library }) => bedPicture(swim, line, library),
  "swim-days": ({ swim, of }, { library }) => daysPicture(swim, of, library),
  "spot-rig": ({ swim, spot }, { spots = [] }) => spotRigPicture(swim, spot, spots),
  image: ({ image: id, alt, caption }, { images }) => {
    const { print: image } = known(images, id);
    return {
      from: { ...image, jpeg: Buffer.from(image.jpeg).toString("base64") },
      draw: (room) => {
        const shape = image.widthPx / image.heightPx;
        const widthMm = Math.min(room.widthMm, photoHeightMm * shape);
        const heightMm = widthMm / shape;
        const items = [{ kind: "image", xMm: 0, yMm: 0, widthMm, heightMm, image }] as const;
        const drawing = { widthMm, heightMm, title: caption ?? alt, description: alt, items };
        return [{ drawing, ...(caption !== undefined && { caption }) }];
      },
    };
  },
  knot: ({ knot }, { library }) => {
    const { placeOf: _, ...entry } = withId(library.knots, knot);
    return {
      from: entry,
      draw: ({ widthMm }, kit) => {
        const [frameWidth, frameHeight] = entry.frame;
        const drawings = drawKnot(entry, { widthMm, heightMm: (widthMm * frameHeight) / frameWidth }, kit);
        return paired(drawings, entry.steps).map(([drawing, { caption }]) => ({ drawing, caption }));
      },
    };
  },
  fish: ({ fish }, { library }) => {
    const { title, looks } = withId(library.species, fish);
    return {
      from: [title, looks],
      draw: (room, kit) => (looks ? alone(drawFish({ title, looks }, room, kit)) : []),
    };
  },
  bait: ({ bait }, { library }) => {
    const drawn = library.baits.find((entry) => entry.bait.id === bait);
    if (!drawn?.looks) return { from: undefined, draw: () => [] };
    const { looks, hooks } = drawn;
    const hook = library.hooks.find(({ size }) => size === hooks?.largest) ?? first(library.hooks);
    const what = { title: drawn.bait.title, looks, hookMassG: hook.massG };
    return { from: what, draw: (room, kit) => alone(drawBait(what, room, kit)) };
  },
  scene: ({ scene }, { library, solved }) => {
    const entry = rigInScene(scene, library.rigs);
    const found = entry && solved.get(entry.rig.id);
    return {
      from: found?.rig,
      draw: (room, kit) => (found ? captionedScene(scene, found, room, kit) : []),
    };
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

type FilmSource = Pick<PictureSource, "solved" | "library">;

export function drawFilms({ solved, library }: FilmSource): Films {
  return (reference, room, kit) => {
    if (reference.film !== knotFilmName) {
      const { film, rig, depthMm } = reference;
      return drawFilm(film, ...atDepth(solved, rig, depthMm), room, kit);
    }
    const { placeOf: _, ...knot } = withId(library.knots, reference.knot);
    return knotFilm(knot, lineShownMm(library), room, kit);
  };
}

/** All that a film is drawn from. */
function filmFrom(reference: Of<"film">, { solved, library }: FilmSource): unknown {
  if (reference.film !== knotFilmName) return known(solved, reference.rig).rig;
  const { placeOf: _, ...knot } = withId(library.knots, reference.knot);
  return [knot, lineShownMm(library)];
}

/** Thickness of the line that a knot is shown in at its true size: that of the rig that everybody starts with. */
function lineShownMm({ rigs }: Library): Mm {
  const { rig } = rigs.find(({ level }) => level === "first") ?? first(rigs);
  return rig.hookLine.diameterMm;
}

/**
 * Every picture that a text can ask for: one drawing, or one for each step or state with what to do there. Each is drawn
 * when page or paper asks for it, in the room that it has.
 */
export interface Drawings {
  (reference: PictureReference, room: PictureRoom, kit: DrawingKit): readonly CaptionedDrawing[];
  /** All that a picture is drawn from, besides its room and the kit. */
  from(reference: PictureReference): unknown;
}

export function drawPictures(source: PictureSource): Drawings {
  const pictureOf = (reference: PictureReference) =>
    (pictures[reference.picture] as PictureOf<PictureReference["picture"]>)(reference, source);
  const drawings = (reference: PictureReference, room: PictureRoom, kit: DrawingKit) =>
    pictureOf(reference).draw(room, kit);
  return Object.assign(drawings, {
    from: (reference: PictureReference) => [reference, pictureOf(reference).from],
  });
}
