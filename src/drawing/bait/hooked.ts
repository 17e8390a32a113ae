import { entry, neighbours } from "../../core/lists.ts";
import { circle, type Point, partWay, point, polyline } from "../items.ts";
import type { Item, Stroke } from "../model.ts";
import { hookEye, hookWay } from "../parts/hook.ts";

const bare: Stroke = { ink: "accent", widthMm: 0.8, cap: "round" };
/** In the bait: dots, as the dashes of the hook length end at the eye. */
const hidden: Stroke = { ink: "accent", widthMm: 0.7, dashMm: [0.01, 1.3], cap: "round" };
const holeMm = { ring: 1.05, disc: 0.7 } as const;
/** Turns of line round the top of the shank, and how far apart. */
const whipping = { turns: 3, gapMm: 0.9, halfMm: 0.75 } as const;

/** Whether a place lies within a closed outline. */
function isWithin({ xMm, yMm }: Point, outline: readonly Point[]): boolean {
  const edges = [...neighbours(outline), [entry(outline, outline.length - 1), entry(outline, 0)] as const];
  const crossed = edges.filter(([a, b]) => {
    const isBeside = a.yMm > yMm !== b.yMm > yMm;
    return isBeside && xMm < a.xMm + ((yMm - a.yMm) / (b.yMm - a.yMm)) * (b.xMm - a.xMm);
  });
  return crossed.length % 2 === 1;
}

/**
 * A hook in its bait: bare where it is seen, dotted where it is inside, a hole where it goes in and out, and the line
 * whipped to its shank.
 *
 * @param flesh outlines of what hides the hook; in front of the rest of the bait it is seen
 */
export function hookedThrough(
  mark: { readonly bend: Point; readonly heightMm: number },
  flesh: readonly (readonly Point[])[],
): Item[] {
  const eye = hookEye(mark);
  const way = hookWay(mark);
  const isHidden = ([a, b]: readonly [Point, Point]) =>
    flesh.some((outline) => isWithin(partWay(a, b, 0.5), outline));
  const stretches: { places: Point[]; isInside: boolean }[] = [];
  for (const piece of neighbours(way)) {
    const isInside = isHidden(piece);
    const open = stretches.at(-1);
    if (open && open.isInside === isInside) open.places.push(piece[1]);
    else stretches.push({ places: [...piece], isInside });
  }
  const holes = [...wayIn(eye, flesh), ...neighbours(stretches).map(([, { places }]) => entry(places, 0))];
  const turns = Array.from({ length: whipping.turns }, (_, i) => {
    const y = eye.yMm + 0.4 + i * whipping.gapMm;
    return [point(eye.xMm - whipping.halfMm, y + 0.3), point(eye.xMm + whipping.halfMm, y - 0.3)] as const;
  });
  return [
    ...stretches.map(({ places, isInside }) => polyline(places, isInside ? hidden : bare)),
    ...turns.filter((one) => !isHidden(one)).map((one) => polyline(one, turn)),
    ...holes.flatMap((at) => [
      circle(at, holeMm.ring, { fill: "paper" }),
      circle(at, holeMm.disc, { fill: "ink" }),
    ]),
  ];
}

/** Where the line goes in that leads to an eye inside the bait; nowhere where the eye is seen. */
function wayIn(eye: Point, flesh: readonly (readonly Point[])[]): Point[] {
  const up = Array.from({ length: 200 }, (_, i) => point(eye.xMm, eye.yMm - 0.2 * i));
  const isInside = (at: Point) => flesh.some((outline) => isWithin(at, outline));
  return isInside(eye) ? up.filter((at) => !isInside(at)).slice(0, 1) : [];
}

const turn: Stroke = { ink: "ink", widthMm: 0.45 };
