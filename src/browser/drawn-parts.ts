import { entry, first } from "../core/lists.ts";
import { packing } from "../drawing/film/pack-film.ts";
import { type Pose, readPoses } from "../drawing/film/poses.ts";
import type { Item } from "../drawing/model.ts";
import { marksToSvg } from "../drawing/svg.ts";
import { movingPart } from "./film-part.ts";
import type { FilmSource } from "./film-source.ts";
import { svgMarks } from "./svg-marks.ts";

/** What a page draws itself, in parts whose marks can stay where only their place is another. */
export interface Drawn extends Pick<FilmSource, "part"> {
  readonly posesOf: (items: readonly Item[]) => Pose[];
}

export function drawnParts(): Drawn {
  const { parts, posesOf } = packing();
  return {
    posesOf: (items) => readPoses(posesOf(items)),
    part: (place, tag) => movingPart(first(svgMarks(marksToSvg([entry(parts, place)]))), tag),
  };
}
