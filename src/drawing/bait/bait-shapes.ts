import { paired } from "../../core/lists.ts";
import type { BaitShape } from "../../model/bait-looks.ts";
import { bold, circle, type Point, point, polygon, polyline, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { smooth } from "../smooth.ts";
import type { BaitAt, BaitFigure } from "./bait-figure.ts";
import { worm } from "./worm.ts";

/** A closed outline through points. */
const blob = (points: readonly Point[]) => polygon(smooth(points, true), "paper", bold);

/** Points of a body that hangs from a place, `half` its half width at each share of its length, turned and bent. */
function hanging(top: Point, lengthMm: number, degrees: number, half: readonly number[]) {
  const angle = (degrees * Math.PI) / 180;
  const at = (along: number, across: number) => {
    const bent = angle + 0.5 * Math.sin(along * 2) * Math.sign(degrees || 1);
    return point(
      top.xMm + along * lengthMm * Math.sin(bent) + across * Math.cos(bent),
      top.yMm + along * lengthMm * Math.cos(bent) - across * Math.sin(bent),
    );
  };
  const shares = half.map((_, i) => i / (half.length - 1));
  const side = (sign: 1 | -1) => half.map((h, i) => at(shares[i] ?? 0, sign * h));
  return { at, outline: [...side(1), ...side(-1).reverse()] };
}

/** A soft body with rings: blunt where the hook goes through, pointed at the other end. */
function grub({ bend, lengthMm, widthMm, count }: BaitAt): BaitFigure {
  const w = widthMm / 2;
  const turns = count > 1 ? [34, -12] : [28];
  const bodies = turns.slice(0, count).map((degrees) => {
    const top = point(bend.xMm, bend.yMm - w * 0.8);
    const { at, outline } = hanging(top, lengthMm, degrees, [
      w * 0.72,
      w,
      w * 0.98,
      w * 0.86,
      w * 0.66,
      w * 0.4,
      w * 0.12,
    ]);
    const rings = [0.2, 0.36, 0.52, 0.68, 0.82].map((share) => {
      const reach = w * (1.02 - 0.75 * share * share);
      return polyline([at(share, reach * 0.9), at(share + 0.03, 0), at(share, -reach * 0.9)], thin);
    });
    const places = { top: at(0.1, w * 0.6), middle: at(0.5, 0), end: at(0.99, 0) };
    return { items: [blob(outline), ...rings], flesh: smooth(outline, true), ...places };
  });
  const [front] = bodies;
  const none = point(bend.xMm, bend.yMm);
  return {
    items: bodies.flatMap(({ items }) => items),
    places: { top: front?.top ?? none, middle: front?.middle ?? none, end: front?.end ?? none },
    flesh: bodies.map(({ flesh }) => flesh),
  };
}

/** A rounded body along the shank, thickest near its upper end: a caster, with the rings of its shell. */
function shell({ bend, lengthMm, widthMm }: BaitAt): BaitFigure {
  const w = widthMm / 2;
  const foot = point(bend.xMm - w * 0.1, bend.yMm + w * 0.5);
  const at = (along: number, across: number) => point(foot.xMm + across, foot.yMm - along * lengthMm);
  const half = [0.16, 0.42, 0.6, 0.78, 0.95, 1, 0.42].map((share) => share * w);
  const shares = half.map((_, i) => i / (half.length - 1));
  const side = (sign: 1 | -1) => half.map((h, i) => at(shares[i] ?? 0, sign * h));
  const rings = paired([0.16, 0.3, 0.44, 0.58, 0.72, 0.86], [0.4, 0.56, 0.68, 0.82, 0.94, 0.92]).map(
    ([share, reach]) => polyline([at(share, -w * reach), at(share - 0.03, 0), at(share, w * reach)], thin),
  );
  const outline = [...side(1), ...side(-1).reverse()];
  return {
    items: [blob(outline), ...rings],
    places: { top: at(0.93, w * 0.5), middle: at(0.1, w * 0.2), end: at(0.04, 0) },
    flesh: [smooth(outline, true)],
  };
}

/** A round body about the bend; `rough` lets its edge wander, in steps that are the same each time. */
function round({ bend, lengthMm, widthMm }: BaitAt, rough: readonly number[]): BaitFigure {
  const centre = point(bend.xMm, bend.yMm - lengthMm * 0.28);
  const at = (turn: number, share: number) =>
    point(
      centre.xMm + Math.sin(turn) * (widthMm / 2) * share,
      centre.yMm - Math.cos(turn) * (lengthMm / 2) * share,
    );
  const edge = rough.map((share, i) => at((2 * Math.PI * i) / rough.length, share));
  return {
    items: [blob(edge)],
    places: { top: at(0.4, 0.95), middle: at(2.7, 0.6), end: at(2.7, 0.95) },
    flesh: [smooth(edge, true)],
  };
}

/** A box seen from above one corner. */
function cube({ bend, lengthMm }: BaitAt): BaitFigure {
  const s = lengthMm;
  const [x, y] = [bend.xMm - 0.78 * s, bend.yMm - s * 0.8];
  const lean = s * 0.32;
  const corner = (dx: number, dy: number) => point(x + dx, y + dy);
  const front = [corner(0, 0), corner(s, 0), corner(s, s), corner(0, s)];
  const top = [corner(0, 0), corner(lean, -lean), corner(s + lean, -lean), corner(s, 0)];
  const side = [corner(s, 0), corner(s + lean, -lean), corner(s + lean, s - lean), corner(s, s)];
  return {
    items: [
      ...[front, top, side].map((face) => polygon(face, "paper", bold)),
      ...speckles((dx, dy) => corner(s * (0.5 + 0.5 * dx), s * (0.55 + 0.5 * dy)), [-0.85, 0.85]),
    ],
    places: {
      top: corner(s * 0.8, -lean * 0.5),
      middle: corner(s * 0.8, s * 0.75),
      end: corner(s * 0.8, s),
    },
    // Half-way back, from the middle of the top to that of the side.
    flesh: [front.map(({ xMm, yMm }) => point(xMm + lean / 2, yMm - lean / 2))],
  };
}

/** A short cylinder, lying across the bend, with the grain that it was pressed from. */
function pellet({ bend, lengthMm, widthMm }: BaitAt): BaitFigure {
  const [half, high] = [lengthMm / 2, widthMm / 2];
  // So far to the left that the point stands clear of it.
  const middle = point(bend.xMm - 0.3 * half, bend.yMm - high * 0.6);
  const at = (dx: number, dy: number) => point(middle.xMm + dx * half, middle.yMm + dy * high);
  const end = (sign: 1 | -1) => [at(sign, -1), at(sign * 1.28, 0), at(sign, 1)];
  const outline = [...smooth(end(1)), ...smooth(end(-1)).reverse()];
  return {
    items: [
      polygon(outline, "paper", bold),
      polyline(smooth([at(1, -1), at(0.72, 0), at(1, 1)]), thin),
      ...grainMarks.map(([x, y, long]) => polyline([at(x, y), at(x + long, y)], thin)),
    ],
    places: { top: at(0.7, -1), middle: at(0.4, 0.8), end: at(0.5, 1) },
    flesh: [outline],
  };
}

/** Strokes along a pellet: where each begins, across and down, and how long it is, in half lengths. */
const grainMarks = [
  [-0.85, -0.66, 0.6],
  [0.05, -0.66, 0.4],
  [-1, -0.33, 0.4],
  [-0.3, -0.33, 0.7],
  [-1.05, 0, 0.8],
  [0, 0, 0.4],
  [-0.85, 0.33, 0.4],
  [-0.15, 0.33, 0.55],
  [-0.8, 0.66, 0.8],
  [0.25, 0.66, 0.3],
] as const;

/** Dark specks in a pressed or minced bait, between two shares across and from -0.75 to 0.75 down, the same each time. */
function speckles(at: (x: number, y: number) => Point, [from, to]: readonly [number, number]): Item[] {
  return Array.from({ length: 9 }, (_, i) => {
    const [x, y] = [(i * 0.755 + 0.5) % 1, (i * 0.57 + 0.5) % 1];
    return circle(at(from + (to - from) * x, 1.5 * y - 0.75), 0.3 + 0.1 * (i % 2), { fill: "soft" });
  });
}

/** A kernel: wide and dented above, narrow and tough below, where the hook goes through. */
function grain(bait: BaitAt): BaitFigure {
  const { bend, lengthMm, widthMm } = bait;
  const at = (across: number, along: number) =>
    point(bend.xMm + (across * widthMm) / 2, bend.yMm - widthMm * 0.1 + along * lengthMm * 0.72);
  const edge = [
    at(-0.3, -0.28),
    at(0.3, -0.28),
    at(0.75, 0.1),
    at(1, 0.62),
    at(0.72, 1),
    at(0, 0.9),
    at(-0.72, 1),
    at(-1, 0.62),
    at(-0.75, 0.1),
  ];
  return {
    items: [
      blob(edge),
      polyline(smooth([at(-0.2, 0), at(-0.3, 0.35), at(0, 0.55), at(0.3, 0.35), at(0.2, 0)]), thin),
    ],
    places: { top: at(0.4, -0.2), middle: at(0.9, 0.5), end: at(0.6, 0.96) },
    flesh: [smooth(edge, true)],
  };
}

/** A flat disc with the crumb of bread. */
function disc(bait: BaitAt): BaitFigure {
  const figure = round(bait, [1, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
  const yMm = bait.bend.yMm - bait.lengthMm * 0.28;
  // The hook lies on the disc down to its middle, and goes through there.
  const back = figure.flesh.map((edge) => edge.map((at) => point(at.xMm, Math.max(at.yMm, yMm))));
  return { ...figure, items: [...figure.items, ...crumb(bait, 7)], flesh: back };
}

/** The edge of torn bread from where it is pinched round to the other side: narrow there, then fluffy. */
const torn = [0.16, 0.3, 0.62, 0.9, 1, 0.93, 1.04, 0.92, 1.02, 0.9, 0.98, 0.86, 0.97, 0.88];

/** Bread folded over the shank and pinched to it at its top; the bend and the point of the hook are left bare below. */
function flake({ bend, lengthMm, widthMm }: BaitAt): BaitFigure {
  const footMm = bend.yMm - 0.12 * lengthMm;
  const at = (across: number, up: number) => point(bend.xMm + (across * widthMm) / 2, footMm - up * lengthMm);
  const side = torn.map((share, i) => {
    const turn = (Math.PI * i) / (torn.length - 1);
    return {
      across: share * Math.max(0.16, Math.sin(turn)),
      up: 0.5 + 0.5 * Math.cos(turn) * (i < 3 ? 1 : share),
    };
  });
  const edge = [
    ...side.map(({ across, up }) => at(across, up)),
    ...side
      .slice(1, -1)
      .reverse()
      .map(({ across, up }, i) => at(-across * (i % 2 ? 1 : 0.94), up)),
  ];
  const pinch = [-0.22, -0.08, 0.08, 0.22].map((x) =>
    polyline(smooth([at(x * 0.45, 0.93), at(x, 0.8), at(1.5 * x, 0.66)]), thin),
  );
  const crumbs = crumb(
    { bend: point(bend.xMm, bend.yMm - 0.22 * lengthMm), lengthMm: 0.7 * lengthMm, widthMm, count: 1 },
    6,
  );
  return {
    items: [blob(edge), ...pinch, ...crumbs],
    places: { top: at(0.2, 0.86), middle: at(0.5, 0.5), end: edge[torn.length - 4] ?? at(0.6, 0.1) },
    // Folded round the shank alone.
    flesh: [smooth(edge, true).map(({ xMm, yMm }) => point(Math.min(xMm, bend.xMm + 0.12 * widthMm), yMm))],
  };
}

/** Small holes in bread, the same each time. */
function crumb({ bend, lengthMm, widthMm }: BaitAt, count: number): Item[] {
  return Array.from({ length: count }, (_, i) => {
    const turn = i * 2.4;
    const share = 0.28 + 0.5 * ((i * 0.618) % 1);
    const at = point(
      bend.xMm + Math.sin(turn) * (widthMm / 2) * share,
      bend.yMm - lengthMm * 0.28 - Math.cos(turn) * (lengthMm / 2) * share,
    );
    return circle(at, 0.35 + 0.35 * ((i * 0.37) % 1), { stroke: thin });
  });
}

/** Paste moulded round the shank so that the point stands clear, with the dents of the fingers. */
function lump(bait: BaitAt): BaitFigure {
  const { bend, lengthMm, widthMm } = bait;
  const middle = point(bend.xMm - 0.16 * widthMm, bend.yMm);
  const figure = round({ ...bait, bend: middle }, moulded);
  const at = (x: number, y: number) => point(middle.xMm + x * widthMm, middle.yMm + y * lengthMm);
  const dents = [
    [at(-0.36, -0.5), at(-0.26, -0.4), at(-0.28, -0.26)],
    [at(-0.38, -0.16), at(-0.26, -0.06), at(-0.24, 0.06)],
  ].map((dent) => polyline(smooth(dent), thin));
  return { ...figure, items: [...figure.items, ...dents] };
}

const moulded = [0.8, 0.95, 1, 1.02, 1.05, 1.02, 1, 0.95];

/** Every shape; one without its line here does not compile. */
export const baitShapes: Readonly<Record<BaitShape, (bait: BaitAt) => BaitFigure>> = {
  grub,
  shell,
  worm,
  grain,
  pellet,
  cube,
  disc,
  flake,
  lump,
};
