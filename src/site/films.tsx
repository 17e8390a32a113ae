import type { ElementContent } from "hast";
import { visit } from "unist-util-visit";
import { FilmPart, type PageFilm } from "../../templates/pages/film.tsx";
import { pageWords } from "../../templates/pages/page-words.ts";
import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { type Film, stripOf } from "../drawing/film/film.ts";
import { packFilm } from "../drawing/film/pack-film.ts";
import { joinStrokes } from "../drawing/join-strokes.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawingToSvg, marksToSvg } from "../drawing/svg.ts";
import type { KnotStep } from "../model/knot-picture.ts";
import type { MarkdownText } from "../model/library.ts";
import type { FilmReference } from "../model/pictures.ts";
import type { SiteInput } from "./input.ts";
import { toHast } from "./to-hast.ts";

/** What a page needs to play the films of its text; nothing where there are none. */
export function filmScripts(text: MarkdownText, { liveBody }: SiteInput): readonly string[] {
  let hasFilm = false;
  visit(liveBody(text), "picture", ({ reference }) => {
    hasFilm ||= reference.picture === "film";
  });
  return hasFilm ? ["film.js"] : [];
}

/** A film that a text asks for, with its strip and what its player needs. */
export function proseFilm(reference: FilmReference, input: SiteInput, idPrefix: string): ElementContent[] {
  const { drawings, films, kit, kept } = input;
  const draw = () => pageFilm(films(reference, pictureRoom, kit), kit, idPrefix);
  const film = kept<PageFilm | undefined>("film", [drawings.from(reference), idPrefix], draw, undefined);
  if (!film) return [];
  return toHast(<FilmPart film={film} say={pageWords(kit.words)} />);
}

const nothing = { caption: "", moving: [] };

/** A step as it is drawn: its caption stands beside it. */
const withoutWords = ({ caption: _, ...step }: KnotStep) => step;

function pageFilm(film: Film, kit: DrawingKit, idPrefix: string): PageFilm {
  // What a page draws itself is not sent as well: of a knot only its true size.
  const sent = film.tied
    ? film.moments.map((one, i) => (i < (film.tied?.steps.length ?? 0) ? nothing : one))
    : film.moments;
  const { parts, poses } = packFilm(sent);
  return {
    title: film.title,
    description: film.description,
    viewBox: `0 0 ${film.widthMm} ${Math.ceil(film.heightMm * 10) / 10}`,
    clock: kit.words("drawing.film.seconds", { seconds: "{seconds}" }),
    strip: stripOf(film, kit).map(({ drawing, caption }, at) => ({
      svg: drawingToSvg(joinStrokes(drawing), { idPrefix: `${idPrefix}-${at + 1}` }),
      caption,
    })),
    still: marksToSvg(joinStrokes({ ...film, items: film.still }).items),
    parts: parts.map((part) => marksToSvg([part])),
    ...(film.tied && {
      tied: JSON.stringify({ frame: film.tied.frame, steps: film.tied.steps.map(withoutWords) }),
    }),
    moments: film.moments.map(({ timeS, caption }, at) => ({
      ...(timeS !== undefined && { timeS: Math.round(timeS * 1000) / 1000 }),
      caption,
      poses: poses[at] ?? "",
    })),
  };
}
