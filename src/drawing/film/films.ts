import type { FilmName } from "../../model/films.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import { bitesFilm } from "./bites-film.ts";
import { castFilm } from "./cast-film.ts";
import { currentFilm } from "./current-film.ts";
import { depthFilm } from "./depth-film.ts";
import type { Film, FilmRoom } from "./film.ts";
import { pinchFilm } from "./pinch-film.ts";
import { plumbingFilm } from "./plumbing-film.ts";
import { settlingFilm } from "./settling-film.ts";
import { sinkingFilm } from "./sinking-film.ts";

type Draw = (solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit) => Film;

const draws: Readonly<Record<FilmName, Draw>> = {
  sinking: sinkingFilm,
  settling: settlingFilm,
  depth: depthFilm,
  plumbing: plumbingFilm,
  current: currentFilm,
  bites: bitesFilm,
  cast: castFilm,
  pinch: pinchFilm,
};

/** Words are no wider than this share of a picture an em, or its parts find no room beside each other. */
const emShare = 1 / 22.8;

/** A film of a rig at one depth, which must be one that there is (`filmsOf`). */
export function drawFilm(
  name: FilmName,
  solved: SolvedRig,
  depth: SolvedDepth,
  room: FilmRoom,
  kit: DrawingKit,
): Film {
  const textMm = Math.min(room.textMm, room.widthMm * emShare);
  return draws[name](solved, depth, { ...room, textMm }, kit);
}
