import { first, last } from "../../core/lists.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedRig } from "../../model/solved.ts";
import {
  accent,
  arrow,
  bold,
  circle,
  type Point,
  point,
  polygon,
  polyline,
  rectangle,
  thinSoft,
} from "../items.ts";
import type { Ink, Item, PathItem, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { mirrored } from "../transform.ts";
import { heldFloat } from "./held-float.ts";
import { holdOf, type MakeUpStep } from "./make-up.ts";

/** The circle that a detail stands in: ten units to its rim. */
interface Lens {
  readonly middle: Point;
  readonly unit: number;
}

const main = { ...strandStrokes["main line"], widthMm: 0.8 };
const hookLine = { ...strandStrokes["hook length"], widthMm: 0.8 };
const skin = { ink: "ink", widthMm: 0.5 } as const;

/** What a step puts on the line, as large as its circle. */
export function drawPiece(step: MakeUpStep, solved: SolvedRig, lens: Lens): readonly Item[] {
  return pieces[step](solved, at(lens), lens.unit);
}

type At = (x: number, y: number) => Point;
type Piece = (solved: SolvedRig, p: At, unit: number) => readonly Item[];

const at =
  ({ middle, unit }: Lens): At =>
  (x, y) =>
    point(middle.xMm + x * unit, middle.yMm + y * unit);

const upright = (p: At): Item => polyline([p(0, -9.2), p(0, 9.2)], main);

/** What is on the line already where a step adds something else. */
const already = thinSoft;

/** The foot of the float, cut off above, on its eye. */
function floatFoot(p: At, unit: number, outline: Stroke = bold): Item[] {
  return [
    polygon(
      smooth([p(-1.1, 0.4), p(-2.1, -1.4), p(-2.4, -9.2)]).concat(
        smooth([p(2.4, -9.2), p(2.1, -1.4), p(1.1, 0.4)]),
      ),
      "paper",
      outline,
    ),
    circle(p(0, 1.6), 1.5 * unit, { fill: "paper", stroke: outline === bold ? skin : outline }),
  ];
}

/** The line through the eye: from the rod at the left to the hook at the right. */
const throughEye = (p: At): Item => polyline([p(-9.2, 2.8), p(-1, 1.9), p(1, 1.9), p(9.2, 2.8)], main);

const shotOn = (p: At, x: number, radius: number, unit: number): readonly Item[] =>
  parts.shot.draw({ at: p(x, 2.2 + 0.06 * Math.abs(x)), radiusMm: radius * unit });

const shotRing = (p: At, x: number, radius: number, unit: number): Item =>
  circle(p(x, 2.2 + 0.06 * Math.abs(x)), radius * unit, { fill: "paper", stroke: already });

const pieces: Readonly<Record<MakeUpStep, Piece>> = {
  rings: (_, p, unit) => [
    polygon([p(-9, -4.6), p(9, -3.4), p(9, -2.2), p(-9, -2.4)], "ink"),
    ...[-4.4, 4.6].flatMap((x, i) => [
      polyline([p(x - 1.6, -3), p(x - 1, 0)], skin),
      polyline([p(x + 1.6, -3), p(x + 1, 0)], skin),
      circle(p(x, 1.6), (1.9 - 0.3 * i) * unit, { stroke: bold }),
    ]),
    polyline([p(-8.6, 3.8), p(-4.4, 2.2), p(4.6, 2), p(8.8, 3.4)], main),
  ],
  "stop-knot": (_, p) => [
    upright(p),
    ...[-2.4, -1.2, 0, 1.2, 2.4].map((y) =>
      polyline([p(-1.6, y + 0.6), p(1.6, y - 0.6)], { ink: "ink", widthMm: 0.9 }),
    ),
    polyline(smooth([p(1.4, -2.8), p(3.6, -4.4), p(5.6, -4.2)]), skin),
    polyline(smooth([p(-1.4, 2.8), p(-3.6, 4.4), p(-5.6, 4.2)]), skin),
  ],
  bead: (_, p, unit) => [
    polyline([p(0, -9.2), p(0, -3)], main),
    ...[-6, -5, -4].map((y) => polyline([p(-1.4, y + 0.5), p(1.4, y - 0.5)], { ink: "ink", widthMm: 0.9 })),
    circle(p(0, 0), 3 * unit, { fill: "paper", stroke: bold }),
    polyline([p(-0.9, -2.4), p(-0.9, -1.6)], thinSoft),
    polyline([p(0, 3), p(0, 9.2)], main),
  ],
  rubbers: (_, p, unit) => [
    upright(p),
    ...[-4, 3.2].map((y) => {
      const corner = p(-1.6, y - 1.6);
      return rectangle(corner.xMm, corner.yMm, 3.2 * unit, 3.2 * unit, { fill: "ink" });
    }),
  ],
  float: ({ rig }, p, unit) =>
    holdOf(rig) === "rubbers" ? inRubbers(rig, p, unit) : [...floatFoot(p, unit), throughEye(p)],
  loop: (_, p) => [
    polyline([p(0, -9.2), p(0, -3.6)], main),
    ...[-3.4, -2.4, -1.4].map((y) =>
      polyline([p(-1.3, y + 0.5), p(1.3, y - 0.5)], { ink: "ink", widthMm: 1 }),
    ),
    polyline([p(0.6, -4.4), p(2.6, -5.6)], main),
    { ...loop(p, -0.6, 7.6), stroke: main },
  ],
  "hook-length": (_, p) => {
    const ours = loop(p, -7, 3.4, 1.6);
    const others = loop(p, 7.4, -3.2, 1.6);
    const over = (path: PathItem, ink: Ink): Item[] => [
      { ...path, stroke: { ink: "paper", widthMm: 1.5 } },
      { ...path, stroke: { ...main, ink } },
    ];
    return [
      polyline([p(0, -9.2), p(0, -7)], main),
      polyline([p(0, 7.4), p(0, 9.2)], hookLine),
      ...over(ours, "ink"),
      ...over(others, "soft"),
      // Loop in loop: on its right side the upper loop is on top again.
      ...over({ ...ours, steps: [["M", ...xy(p(0, 3.4))], ours.steps[2]!] }, "ink"),
    ];
  },
  hold: (_, p, unit) => [
    ...floatFoot(p, unit, already),
    throughEye(p),
    ...shotOn(p, -4.4, 0.9, unit),
    ...shotOn(p, 4.4, 1.2, unit),
  ],
  lock: (solved, p, unit) => {
    const { lock, plumbing } = first(solved.depths);
    return [
      ...floatFoot(p, unit, already),
      throughEye(p),
      ...row(p, lock.above, plumbing.kept.above, -1, unit),
      ...row(p, lock.below, plumbing.kept.below, 1, unit),
    ];
  },
  // The line through the ring on top, the point of the hook in the cork below.
  plummet: (_, p, unit) => [
    ...parts.plummet.draw({ at: p(-0.6, 6), heightMm: 7 * unit }),
    circle(p(-0.6, -1.9), 0.9 * unit, { stroke: bold }),
    polyline([p(0, -9.2), p(-0.4, -2), p(3, 3.2)], hookLine),
    ...mirrored(parts.hook.draw({ bend: p(3, 8.4), heightMm: 5.2 * unit }), p(3, 0).xMm),
  ],
  shot: (_, p, unit) => [
    upright(p),
    ...parts.shot.draw({ at: p(0, 3.4), radiusMm: 2 * unit }),
    // Open, with the line going into its slit.
    circle(p(0, -3.6), 2.6 * unit, { fill: "ink" }),
    polygon([p(0, -3.6), p(3.2, -5.4), p(3.2, -1.8)], "paper"),
    polyline([p(0, -9.2), p(0, 0)], main),
    ...arrow(p(8.6, -3.6), p(4.4, -3.6), accent, 2.6),
  ],
};

/** Locking shot to one side of the eye, the heaviest next to it, to one scale; the lightest, which held the float till then, as rings. */
function row(
  p: At,
  shot: readonly { readonly diameterMm: number }[],
  kept: readonly unknown[],
  side: 1 | -1,
  unit: number,
): readonly Item[] {
  let x = 2.2;
  const shown = shot.length > 4 ? [...shot.slice(0, 3), last(shot)] : shot;
  return shown.flatMap(({ diameterMm }, i) => {
    const radius = Math.max(0.6, 0.24 * diameterMm);
    x += radius;
    const isOn = i >= shown.length - kept.length;
    const items = isOn ? [shotRing(p, side * x, radius, unit)] : shotOn(p, side * x, radius, unit);
    x += radius + 0.1;
    return x < 9 ? items : [];
  });
}

const xy = ({ xMm, yMm }: Point) => [xMm, yMm] as const;

/** Line drawn to a loop between two heights, as wide as it is or so many times that. */
function loop(p: At, from: number, to: number, wide = 1): PathItem {
  const c = (x: number, y: number) => xy(p(x, y));
  const span = to - from;
  return {
    kind: "path",
    steps: [
      ["M", ...c(0, from)],
      ["C", ...c(-3.8 * wide, from + 0.35 * span), ...c(-3 * wide, to), ...c(0, to)],
      ["C", ...c(3 * wide, to), ...c(3.8 * wide, from + 0.35 * span), ...c(0, from)],
    ],
  };
}

/** A whole float with the line beside it, held by a rubber below its tip and one on its stem. */
function inRubbers(rig: Rig, p: At, unit: number): readonly Item[] {
  const foot = p(0.8, 7.6);
  const { items, line, rubbers } = heldFloat(rig, { foot, lengthMm: 15 * unit, widthMm: 5 * unit });
  const ends = [point(first(line).xMm, p(0, -9.3).yMm), point(last(line).xMm, p(0, 9.5).yMm)] as const;
  return [...items, polyline([ends[0], ...line, ends[1]], strandStrokes["main line"]), ...rubbers];
}
