import type { ElementContent } from "hast";
import { FilmPart, type PageFilm } from "../../templates/pages/film.tsx";
import { pageFilm } from "../../templates/pages/page-film.ts";
import { pageWords } from "../../templates/pages/page-words.ts";
import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { tryParts } from "../../templates/pages/try-parts.tsx";
import type { DrawingKit } from "../drawing/kit.ts";
import { sitePaths } from "../model/addresses.ts";
import type { MarkdownText } from "../model/library.ts";
import type { FilmReference } from "../model/pictures.ts";
import { picturesIn } from "../model/pictures-in.ts";
import type { SiteInput } from "./input.ts";
import { toHast } from "./to-hast.ts";

/** What a page needs to play the films of its text; nothing where there are none. */
export function filmScripts(text: MarkdownText, { liveBody }: SiteInput): readonly string[] {
  return picturesIn(liveBody(text)).some(({ picture }) => picture === "film") ? ["film.js"] : [];
}

/** A film that a text asks for, with its strip and what its player needs. */
export function proseFilm(
  reference: FilmReference,
  input: SiteInput,
  idPrefix: string,
  href: (target: string) => string,
): ElementContent[] {
  const { drawings, films, kit, kept } = input;
  const draw = (kit: DrawingKit) => pageFilm(films(reference, pictureRoom, kit), kit, idPrefix);
  const film = kept<PageFilm | undefined>("film", [drawings.from(reference), idPrefix], draw, undefined);
  if (!film) return [];
  const tryIt =
    driven.has(reference.film) && "rig" in reference ? tryAddress(reference, input, href) : undefined;
  return toHast(<FilmPart film={film} say={pageWords(kit.words)} tryIt={tryIt} />);
}

/** Films that a reader can drive. */
const driven: ReadonlySet<FilmReference["film"]> = new Set(tryParts);

function tryAddress(
  { film, rig, depthMm }: Extract<FilmReference, { rig: string }>,
  { kit }: SiteInput,
  href: (target: string) => string,
): string {
  const query = new URLSearchParams([
    ["rig", rig],
    ["depth", kit.figures.shortDepth(depthMm)],
  ]);
  return `${href(sitePaths.tryIt)}?${query}#try-${film}`;
}
