import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { KnotPicture } from "../../model/knot-picture.ts";
import { curveThrough, wholePath } from "../curve.ts";
import { point, polyline, text, thin, thinMm, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { fitFrame, strandUnits } from "../knots/draw-knot.ts";
import { place, strandPath } from "../knots/strand-path.ts";
import { paintEnd, paintTying, tying } from "../knots/tying.ts";
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

/** The enlarged knot and the room that it has to its right, as shares of the width. */
const enlargedShare = 0.64;
const betweenMm = 1.5;

/** The last step that is not a wrong one, as large as in the line, beside a bar, and enlarged beside it; none where it holds a float or a shot. */
function atTrueSize(
  knot: KnotPicture,
  lineMm: Mm,
  { widthMm, heightMm, textMm }: FilmRoom & { readonly heightMm: number },
  { words, figures, measure }: DrawingKit,
): Moment | undefined {
  const right = knot.steps.filter(({ objects }) => !objects.some(({ kind }) => kind === "cross"));
  const step = last(right);
  if (step.objects.some(({ kind }) => kind === "float" || kind === "shot")) return undefined;
  const scale = lineMm / strandUnits;
  const [frameWidth, frameHeight] = knot.frame;
  const middleX = ((1 + enlargedShare) / 2) * widthMm;
  const [leftMm, topMm] = [middleX - (scale * frameWidth) / 2, (heightMm - scale * frameHeight) / 2];
  const paths = step.strands.map(({ path }): Item => {
    const points = strandPath(path).points.map(({ x, y }) => place([leftMm + scale * x, topMm + scale * y]));
    const stroke = { ink: "ink", widthMm: Math.max(thinMm, lineMm) } as const;
    return { kind: "path", steps: wholePath(curveThrough(points)), stroke };
  });
  const footMm = topMm + scale * frameHeight;
  const barY = footMm + 2.5;
  const bar = [middleX - barMm / 2, middleX + barMm / 2] as const;
  const tick = (x: number) => polyline([point(x, barY - 1), point(x, barY + 1)], thin);
  const says = words("drawing.float.scale.true");
  const half = Math.min(measure(says, textMm, "regular"), widthMm) / 2;
  const sayX = Math.min(middleX, widthMm - half - 0.5);
  const large = { widthMm: enlargedShare * widthMm - betweenMm, heightMm };
  const fit = fitFrame(knot.frame, large);
  const [edgeMm, reachMm] = [fit.xMm + fit.scale * frameWidth + betweenMm, (fit.scale * frameHeight) / 2];
  // From the corners of the small knot out to those of the large one.
  const rays = [-1, 1].map((side) =>
    polyline(
      [
        point(leftMm - 1, heightMm / 2 + (side * scale * frameHeight) / 2),
        point(edgeMm, heightMm / 2 + side * 0.7 * reachMm),
      ],
      thinSoft,
    ),
  );
  return {
    caption: words("drawing.film.knot.true-size", { line: figures.diameter(lineMm) }),
    moving: [
      ...paths,
      polyline([point(bar[0], barY), point(bar[1], barY)], thin),
      ...bar.map(tick),
      text(point(middleX, barY + 1.2 * textMm), figures.diameter(barMm), textMm, { anchor: "middle" }),
      text(point(sayX, topMm - 0.7 * textMm), says, textMm, { anchor: "middle" }),
      ...rays,
      ...paintEnd({ ...knot, steps: [step] }, large),
    ],
  };
}
