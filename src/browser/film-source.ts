import { entry } from "../core/lists.ts";
import { type Pose, readPoses } from "../drawing/film/poses.ts";
import { once } from "../model/kept.ts";
import { type MovingPart, movingPart, type PartTag } from "./film-part.ts";
import { partWithin } from "./page-parts.ts";

/** One moment of a film as its player asks for it. */
export interface SourceMoment {
  /** None in a film of a person's steps. */
  readonly timeS?: number;
  readonly caption: string;
  /** The caption as a voice says it. */
  readonly said: string;
  readonly poses: readonly Pose[];
  /** Makes its words before they are asked for. */
  readonly ready?: () => void;
}

/** What a player plays. */
export interface FilmSource {
  readonly moments: readonly SourceMoment[];
  /** A part that moves, made anew as its tag says. */
  readonly part: (place: number, tag: PartTag) => MovingPart;
  /** How long one of many small steps stays [s]. */
  readonly stepS?: number;
  /** From when on its clock is told in whole seconds [s]. */
  readonly wholeFromS?: number;
  /** The knot that is tied, as JSON. */
  readonly knot?: string;
  /** The longest of its captions, where they are all known. */
  readonly longest?: string;
}

/** A film as its page was sent it. A moment's poses are read when it is first shown. */
export function sentFilm(content: DocumentFragment): FilmSource {
  const parts = partWithin(content, ".film-parts").children;
  const knot = content.querySelector(".film-tied")?.textContent;
  const wholeFrom = content.querySelector<HTMLElement>(".film-clock")?.dataset.whole;
  const captions = [...content.querySelectorAll("li")];
  return {
    longest: captions.map((one) => one.textContent ?? "").reduce((a, b) => (b.length > a.length ? b : a), ""),
    moments: captions.map((one): SourceMoment => {
      const { time, said, poses = "" } = one.dataset;
      const caption = one.textContent ?? "";
      const read = once(() => readPoses(poses));
      return {
        ...(time !== undefined && { timeS: Number(time) }),
        caption,
        said: said ?? caption,
        get poses() {
          return read();
        },
      };
    }),
    part: (place, tag) => movingPart(document.importNode(entry([...parts], place), true), tag),
    ...(wholeFrom !== undefined && { wholeFromS: Number(wholeFrom) }),
    ...(knot && { knot }),
  };
}
