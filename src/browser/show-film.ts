import { FilmPart } from "../../templates/pages/film.tsx";
import { pageFilm } from "../../templates/pages/page-film.ts";
import type { Film } from "../drawing/film/film.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { startFilm } from "./film-player.ts";
import { say } from "./fit-data.ts";
import { dataOf, partWithin } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/** @param start the step to begin at where the reader has not moved its slider yet */
export type ShowFilm = (part: HTMLElement, film: Film, kit: DrawingKit, start?: number) => void;

/** What puts films in parts of a page; the slider of each stays where the reader left it, until that is forgotten. */
export function filmShower(): { readonly showFilm: ShowFilm; forget(): void } {
  const left = new Map<string, number>();
  const showFilm: ShowFilm = (part, film, kit, start = 0) => {
    const shown = partWithin(part, ".try-shown");
    const hadFocus = shown.contains(document.activeElement);
    shown.replaceChildren(...toDom(FilmPart({ film: pageFilm(film, kit, part.id), say })));
    const player = partWithin(shown, ".film");
    const goTo = startFilm(player);
    const through = partWithin<HTMLInputElement>(shown, "input[type=range]");
    goTo(Math.min(left.get(part.id) ?? start, Number(through.max)));
    if (hadFocus) through.focus();
    player.addEventListener("input", () => left.set(part.id, Number(through.value)));
    for (const button of part.querySelectorAll<HTMLElement>(":scope > .film-buttons button"))
      button.onclick = () => goTo(Number(dataOf(button, "step")));
  };
  return { showFilm, forget: () => left.clear() };
}
