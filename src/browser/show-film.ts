import { FilmPart, StripFrames } from "../../templates/pages/film.tsx";
import { filmFrame, pageStrip } from "../../templates/pages/page-film.ts";
import { entry, first } from "../core/lists.ts";
import type { Film } from "../drawing/film/film.ts";
import { packing } from "../drawing/film/pack-film.ts";
import { readPoses } from "../drawing/film/poses.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { spoken } from "../drawing/spoken.ts";
import { marksToSvg } from "../drawing/svg.ts";
import { once } from "../model/kept.ts";
import { startFilm } from "./film-player.ts";
import type { FilmSource, SourceMoment } from "./film-source.ts";
import { say } from "./fit-data.ts";
import { dataOf, partWithin } from "./page-parts.ts";
import { svgMarks } from "./svg-marks.ts";
import { toDom } from "./to-dom.ts";

/** @param start the step to begin at where the reader has not moved its slider yet */
export type ShowFilm = (part: HTMLElement, film: Film, kit: DrawingKit, start?: number) => void;

/** What puts films in parts of a page; the slider of each stays where the reader left it, until that is forgotten. */
export function filmShower(): { readonly showFilm: ShowFilm; forget(): void } {
  const left = new Map<string, number>();
  /** What is drawn for paper alone, by the part that it is of. */
  const strips = new Map<HTMLElement, () => Node[]>();
  addEventListener("beforeprint", () => {
    for (const [part, draw] of strips) part.querySelector(".film-strip")?.replaceChildren(...draw());
  });
  const showFilm: ShowFilm = (part, film, kit, start = 0) => {
    const shown = partWithin(part, ".try-shown");
    const hadFocus = shown.contains(document.activeElement);
    shown.replaceChildren(...toDom(FilmPart({ film: filmFrame(film, kit), say })));
    strips.set(part, () => toDom(StripFrames({ strip: pageStrip(film, kit, part.id) })));
    const player = partWithin(shown, ".film");
    const goTo = startFilm(player, drawnFilm(film, kit), left.get(part.id) ?? start);
    const through = partWithin<HTMLInputElement>(shown, "input[type=range]");
    if (hadFocus) through.focus();
    player.addEventListener("input", () => left.set(part.id, Number(through.value)));
    for (const button of part.querySelectorAll<HTMLElement>(":scope > .film-buttons button"))
      button.onclick = () => goTo(Number(dataOf(button, "step")));
  };
  return { showFilm, forget: () => left.clear() };
}

/** A film whose moments are drawn when they are first shown: of two hundred a reader sees a few. */
function drawnFilm({ moments, slider }: Film, kit: DrawingKit): FilmSource {
  const { parts, posesOf } = packing();
  return {
    moments: moments.map((moment): SourceMoment => {
      const caption = once(() => moment.caption);
      const poses = once(() => readPoses(posesOf(moment)));
      return {
        ...(moment.timeS !== undefined && { timeS: moment.timeS }),
        get caption() {
          return caption();
        },
        get said() {
          return spoken(caption(), kit);
        },
        get poses() {
          return poses();
        },
      };
    }),
    part: (place) => first(svgMarks(marksToSvg([entry(parts, place)]))),
    ...(slider && { stepS: slider.stepS }),
  };
}
