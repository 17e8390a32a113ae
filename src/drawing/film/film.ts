import { entry, last } from "../../core/lists.ts";
import type { S } from "../../core/units.ts";
import type { KnotPicture } from "../../model/knot-picture.ts";
import type { DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";

/** What is seen at one moment. A film that is drawn through by hand has many, each drawn when it is asked for. */
export interface Moment {
  /** From the beginning; none in a film whose moments are steps of a person, not of a clock. */
  readonly timeS?: S;
  readonly caption: string;
  readonly moving: readonly Item[];
  /** What a strip has as well, where no clock runs. */
  readonly onPaper?: readonly Item[];
}

/**
 * Moments of one happening, each a drawing: what never changes, and over it what moves. Paper shows a few of them side by
 * side; a page shows them one after the other.
 */
export interface Film extends Pick<Drawing, "widthMm" | "heightMm" | "title"> {
  /** What the pictures show, for somebody who cannot see them; the captions tell what happens. */
  readonly description: string;
  readonly still: readonly Item[];
  readonly moments: readonly Moment[];
  /** Places of the moments that tell the story by themselves, in their order. */
  readonly strip: readonly number[];
  /** From when on its clock is told in whole seconds, as what stands beside it is; before that to the tenth. */
  readonly wholeFromS?: S;
  /** Where somebody draws it through by hand: what the slider is called, and how long one of its many steps stays. */
  readonly slider?: { readonly label: string; readonly stepS: S };
  /** The knot that it ties: a page draws each moment from this, as its ends go their way. */
  readonly tied?: KnotPicture;
}

/** Room for one picture of a film, and the size of the words in it. */
export interface FilmRoom {
  readonly widthMm: number;
  readonly textMm: number;
}

/** The few moments of a film that stand for it where nothing moves, with what is said below each. */
export function stripOf(film: Film, { words }: DrawingKit): { drawing: Drawing; caption: string }[] {
  const { widthMm, heightMm, title, still, moments, strip } = film;
  return strip.map((place, i) => {
    const { caption, moving, onPaper = [] } = entry(moments, place);
    const frame = words("drawing.film.frame", { number: i + 1, frames: strip.length });
    const description = i === 0 ? `${film.description} ${frame}` : frame;
    return {
      drawing: { widthMm, heightMm, title, description, items: [...still, ...moving, ...onPaper] },
      caption,
    };
  });
}

/** Of the moments of a clock, the place of the last that is not after a time. */
export function momentAt(moments: readonly Moment[], timeS: S): number {
  const after = moments.findIndex((one) => (one.timeS ?? 0) > timeS + 1e-9);
  return Math.max(0, (after < 0 ? moments.length : after) - 1);
}

/** How long a film of a clock runs [s]. */
export function filmLengthS({ moments }: Pick<Film, "moments">): S {
  return last(moments).timeS ?? 0;
}
