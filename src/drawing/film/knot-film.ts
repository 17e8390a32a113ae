import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { KnotPicture } from "../../model/knot-picture.ts";
import { curveThrough, wholePath } from "../curve.ts";
import { point, polyline, text, thin, thinMm } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { strandUnits } from "../knots/draw-knot.ts";
import { place, strandPath } from "../knots/strand-path.ts";
import { paintTying, tying } from "../knots/tying.ts";
import type { Item } from "../model.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";

const barMm = 10;

/**
 * A knot tied step by step, as its file has it, in two colours of cord where it has two; at the end it stands as large as
 * it is in fishing line.
 *
 * @param lineMm thickness of that line
 */
export function knotFilm(knot: KnotPicture, lineMm: Mm, room: FilmRoom, kit: DrawingKit): Film {
  const { words } = kit;
  const { widthMm } = room;
  const [frameWidth, frameHeight] = knot.frame;
  const heightMm = (widthMm * frameHeight) / frameWidth;
  const steps = tying(knot, { widthMm, heightMm }).map(
    (tied): Moment => ({ caption: tied.step.caption, moving: paintTying(tied, 1) }),
  );
  const small = atTrueSize(knot, lineMm, { ...room, heightMm }, kit);
  const moments = small ? [...steps, small] : steps;
  return {
    widthMm,
    heightMm,
    title: words("drawing.film.knot.title", { knot: knot.title }),
    description: words("drawing.knots.joins", { joins: knot.joins }),
    still: [],
    moments,
    strip: moments.map((_, i) => i),
    tied: knot,
  };
}

/** The last step that is not a wrong one, as large as in the line, beside a bar; none where it holds a float or a shot. */
function atTrueSize(
  knot: KnotPicture,
  lineMm: Mm,
  { widthMm, heightMm, textMm }: FilmRoom & { readonly heightMm: number },
  { words, figures }: DrawingKit,
): Moment | undefined {
  const right = knot.steps.filter(({ objects }) => !objects.some(({ kind }) => kind === "cross"));
  const { strands, objects } = last(right);
  if (objects.some(({ kind }) => kind === "float" || kind === "shot")) return undefined;
  const scale = lineMm / strandUnits;
  const [frameWidth, frameHeight] = knot.frame;
  const [leftMm, topMm] = [(widthMm - scale * frameWidth) / 2, (heightMm - scale * frameHeight) / 2 - textMm];
  const paths = strands.map(({ path }): Item => {
    const points = strandPath(path).points.map(({ x, y }) => place([leftMm + scale * x, topMm + scale * y]));
    const stroke = { ink: "ink", widthMm: Math.max(thinMm, lineMm) } as const;
    return { kind: "path", steps: wholePath(curveThrough(points)), stroke };
  });
  const [barX, barY] = [(widthMm - barMm) / 2, topMm + scale * frameHeight + 4];
  const tick = (x: number) => polyline([point(x, barY - 1), point(x, barY + 1)], thin);
  return {
    caption: words("drawing.film.knot.true-size", { line: figures.diameter(lineMm) }),
    moving: [
      ...paths,
      polyline([point(barX, barY), point(barX + barMm, barY)], thin),
      tick(barX),
      tick(barX + barMm),
      text(point(barX + barMm + 1.5, barY + 0.35 * textMm), figures.diameter(barMm), textMm, { ink: "soft" }),
    ],
  };
}
