import { type Film, stripOf } from "../../src/drawing/film/film.ts";
import { packFilm } from "../../src/drawing/film/pack-film.ts";
import { joinStrokes } from "../../src/drawing/join-strokes.ts";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import { spoken } from "../../src/drawing/spoken.ts";
import { drawingToSvg, marksToSvg } from "../../src/drawing/svg.ts";
import type { KnotStep } from "../../src/model/knot-picture.ts";
import type { PageFilm } from "./film.tsx";
import type { CaptionedPicture } from "./view.ts";

const nothing = { caption: "", moving: [] };

/** A step as it is drawn: its caption stands beside it. */
const withoutWords = ({ caption: _, ...step }: KnotStep) => step;

/** A film as a page is sent it. */
export function pageFilm(film: Film, kit: DrawingKit, idPrefix: string): PageFilm {
  // What a page draws itself is not sent as well: of a knot only its true size.
  const sent = film.tied
    ? film.moments.map((one, i) => (i < (film.tied?.steps.length ?? 0) ? nothing : one))
    : film.moments;
  const { parts, poses } = packFilm(sent);
  return {
    ...filmFrame(film, kit),
    strip: pageStrip(film, kit, idPrefix),
    parts: parts.map((part) => marksToSvg([part])),
    ...(film.tied && {
      tied: JSON.stringify({ frame: film.tied.frame, steps: film.tied.steps.map(withoutWords) }),
    }),
    moments: film.moments.map(({ timeS, caption }, at) => {
      const said = spoken(caption, kit);
      return {
        ...(timeS !== undefined && { timeS: Math.round(timeS * 1000) / 1000 }),
        caption,
        ...(said !== caption && { said }),
        poses: poses[at] ?? "",
      };
    }),
  };
}

/** What stands round the moments of a film; the browser puts its own into it. */
export function filmFrame(film: Film, kit: DrawingKit): PageFilm {
  const isTimed = film.moments.some(({ timeS }) => timeS !== undefined);
  return {
    title: film.title,
    description: film.description,
    viewBox: `0 0 ${film.widthMm} ${Math.ceil(film.heightMm * 10) / 10}`,
    ...(isTimed && { clock: kit.words("drawing.film.seconds", { seconds: "{seconds}" }) }),
    ...(film.wholeFromS !== undefined && { wholeFromS: Math.round(film.wholeFromS * 1000) / 1000 }),
    still: marksToSvg(joinStrokes({ ...film, items: film.still }).items),
    ...(film.slider && { slider: film.slider.label }),
    strip: [],
    parts: [],
    moments: [],
  };
}

/** The strip of a film as SVG. */
export function pageStrip(film: Film, kit: DrawingKit, idPrefix: string): CaptionedPicture[] {
  return stripOf(film, kit).map(({ drawing, caption }, at) => ({
    svg: drawingToSvg(joinStrokes(drawing), { idPrefix: `${idPrefix}-${at + 1}` }),
    caption,
  }));
}
