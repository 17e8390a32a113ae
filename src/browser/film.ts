import { startFilm } from "./film-player.ts";

/** Films of a page, each in place of its strip; who asked for less motion keeps the strips. */
if (!matchMedia("(prefers-reduced-motion: reduce)").matches) {
  for (const film of document.querySelectorAll<HTMLElement>(".film")) startFilm(film);
}
