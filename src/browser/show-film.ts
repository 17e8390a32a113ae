import { FilmPart, StripFrames } from "../../templates/pages/film.tsx";
import { filmFrame, pageStrip } from "../../templates/pages/page-film.ts";
import type { Film } from "../drawing/film/film.ts";
import { joinStrokes } from "../drawing/join-strokes.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { spoken } from "../drawing/spoken.ts";
import { once } from "../model/kept.ts";
import { type Drawn, drawnParts } from "./drawn-parts.ts";
import { startFilm } from "./film-player.ts";
import type { FilmSource, SourceMoment } from "./film-source.ts";
import { stageOf } from "./film-stage.ts";
import { say } from "./fit-data.ts";
import { ownFrame } from "./own-frame.ts";
import { dataOf, partWithin, writeAttribute } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/**
 * Shows a film in a part of the page, and ends once what stands round its moments is there.
 *
 * @param start the step to begin at where the part shows none yet
 */
export type ShowFilm = (part: HTMLElement, film: Film, kit: DrawingKit, start?: number) => Promise<void>;

/** What puts another film in the place of one. */
type Redraw = (film: Film, kit: DrawingKit) => Promise<void>;

/**
 * What puts films in parts of a page. Another film in the same part takes over the player, its slider where the reader left
 * it, and all marks that are of the same parts, until they are forgotten.
 */
export function filmShower(): { readonly showFilm: ShowFilm; forget(): void } {
  const shown = new Map<HTMLElement, Redraw>();
  /** What is drawn for paper alone, by the part that it is of. */
  const strips = new Map<HTMLElement, () => Node[]>();
  addEventListener("beforeprint", () => {
    for (const [part, draw] of strips) part.querySelector(".film-strip")?.replaceChildren(...draw());
  });
  let round = 0;
  const showFilm: ShowFilm = async (part, film, kit, start = 0) => {
    strips.set(part, () => toDom(StripFrames({ strip: pageStrip(film, kit, part.id) })));
    const redraw = shown.get(part);
    if (redraw) return redraw(film, kit);
    const begun = round;
    await ownFrame();
    if (begun === round) shown.set(part, begin(part, film, kit, start));
  };
  const forget = () => {
    shown.clear();
    round++;
  };
  return { showFilm, forget };
}

/** Puts a film and its player in a part of the page. */
function begin(part: HTMLElement, film: Film, kit: DrawingKit, start: number): Redraw {
  const shown = partWithin(part, ".try-shown");
  const frame = { ...filmFrame({ ...film, still: [] }, kit), still: `<g class="film-still"></g>` };
  shown.replaceChildren(...toDom(FilmPart({ film: frame, say })));
  const drawn = drawnParts();
  const player = startFilm(partWithin(shown, ".film"), sourceOf(film, kit, drawn), start);
  for (const button of part.querySelectorAll<HTMLElement>(":scope > .film-buttons button"))
    button.onclick = () => player.goTo(Number(dataOf(button, "step")));
  const still = stageOf(partWithin(shown, ".film-still"), drawn.part);
  const posesOfStill = (one: Film) => drawn.posesOf(joinStrokes({ ...one, items: one.still }).items);
  still.paint(posesOfStill(film));
  return async (another, itsKit) => {
    const { title, description, viewBox } = filmFrame({ ...another, still: [] }, itsKit);
    const poses = posesOfStill(another);
    still.ready(poses);
    do await ownFrame();
    while (still.putIn(poses));
    writeAttribute(partWithin(shown, ".film-player"), "aria-label", title);
    writeAttribute(partWithin(shown, ".film-picture"), "aria-label", description);
    writeAttribute(partWithin(shown, ".film-picture svg"), "viewBox", viewBox);
    still.paint(poses);
    player.take(sourceOf(another, itsKit, drawn));
  };
}

/** A film whose moments are drawn when they are first shown: of two hundred a reader sees a few. */
function sourceOf(
  { moments, slider, wholeFromS }: Film,
  kit: DrawingKit,
  { part, posesOf }: Drawn,
): FilmSource {
  return {
    moments: moments.map((moment): SourceMoment => {
      const caption = once(() => moment.caption);
      const said = once(() => spoken(caption(), kit));
      const poses = once(() => posesOf(moment.moving));
      return {
        ...(moment.timeS !== undefined && { timeS: moment.timeS }),
        get caption() {
          return caption();
        },
        get said() {
          return said();
        },
        get poses() {
          return poses();
        },
        ready: said,
      };
    }),
    part,
    ...(slider && { stepS: slider.stepS }),
    ...(wholeFromS !== undefined && { wholeFromS }),
  };
}
