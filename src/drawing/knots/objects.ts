import { last } from "../../core/lists.ts";
import type { Facing, KnotObject } from "../../model/knot-picture.ts";
import { type Curve, curveThrough, type Place, wholePath } from "../curve.ts";
import { circle, type Point, point, polygon, polyline, thin, thinMm } from "../items.ts";
import type { Item, PathStep } from "../model.ts";
import type { Strand } from "./strand-paint.ts";
import { place } from "./strand-path.ts";

type Of<K extends KnotObject["kind"]> = Extract<KnotObject, { kind: K }>;

/** From the knot's frame to the picture: every length times `scale`, then moved. */
export interface Fit {
  readonly scale: number;
  readonly xMm: number;
  readonly yMm: number;
}

export function onPicture(fit: Fit, p: Place): Place {
  return { x: fit.xMm + p.x * fit.scale, y: fit.yMm + p.y * fit.scale, height: p.height };
}

/** The same as a point of the drawing. */
function pointOn(fit: Fit, p: Place): Point {
  const { x, y } = onPicture(fit, p);
  return point(x, y);
}

const quarterTurns: Readonly<Record<Facing, number>> = { right: 0, down: 1, left: 2, up: 3 };

/** Turns a shape drawn facing right about its own origin, and puts that at `at`. */
function turned(at: Place, facing: Facing): (x: number, y: number) => Place {
  const angle = (quarterTurns[facing] * Math.PI) / 2;
  const [cos, sin] = [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))];
  return (x, y) => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos, height: at.height });
}

function ring(centre: Place, radius: number): Place[] {
  return Array.from({ length: 8 }, (_, i) => {
    const angle = (i * Math.PI) / 4;
    return {
      x: centre.x + radius * Math.cos(angle),
      y: centre.y + radius * Math.sin(angle),
      height: centre.height,
    };
  });
}

/** The rings of hooks and floats, which the line passes through, in the knot's units. */
export function rings(objects: readonly KnotObject[]): { name: string; points: Place[] }[] {
  return objects.flatMap((object) => {
    if (object.kind === "hook") {
      return [{ name: "hook eye", points: ring(place(object.at), object.size) }];
    }
    if (object.kind === "float" && object.eye !== undefined) {
      return [{ name: "float eye", points: ring(eyeCentre(object), object.eye) }];
    }
    return [];
  });
}

/** The eye stands just below the float's lower end. */
function eyeCentre({ at, eye = 0, lying }: Of<"float">): Place {
  const end = place(at);
  return lying ? { ...end, x: end.x - eye } : { ...end, y: end.y + eye };
}

/** Shank, bend and point of a hook with its eye at the origin and a ring of radius 1; barbless. */
const hookWire: readonly (readonly [number, number])[] = [
  [1, 0],
  [3, 0],
  [5.2, 0],
  [6.8, 0.6],
  [7.5, 2.1],
  [6.8, 3.6],
  [5.3, 4.2],
  [3.9, 3.9],
];

/** The wire of a hook behind its eye. */
export function hookShank(hook: Of<"hook">): Place[] {
  const turn = turned(place(hook.at), hook.facing);
  return hookWire.map(([x, y]) => turn(x * hook.size, y * hook.size));
}

/** What lies behind the strands. */
export function behind(object: KnotObject, fit: Fit): Item[] {
  return object.kind === "float" ? floatBody(object, fit) : [];
}

/** What lies on top of the strands. */
export function inFront(object: KnotObject, fit: Fit, strandMm: number): Item[] {
  switch (object.kind) {
    case "hook":
      return hookPoint(object, fit, strandMm);
    case "rubber":
      return rubber(object, fit);
    case "shot":
      return shot(object, fit);
    case "bead":
      return bead(object, fit);
    case "tied":
      return tied(object, fit);
    case "cut":
      return cut(object, fit);
    case "drop":
      return drop(object, fit);
    case "cross":
      return cross(object, fit);
    case "span":
      return span(object, fit);
    case "float":
      return [];
  }
}

/** The float's half outline, from its lower end up, as shares of its length: height and half width. */
const outlines: Readonly<Record<Of<"float">["shape"], readonly (readonly [number, number])[]>> = {
  waggler: [
    [0, 0.022],
    [0.04, 0.04],
    [0.8, 0.04],
    [0.86, 0.022],
    [1, 0.022],
  ],
  stick: [
    [0, 0.022],
    [0.35, 0.03],
    [0.6, 0.065],
    [0.76, 0.085],
    [0.84, 0.07],
    [0.9, 0.03],
    [1, 0.03],
  ],
};

function floatBody({ at, length, shape, lying }: Of<"float">, fit: Fit): Item[] {
  const end = place(at);
  const put = (up: number, out: number) => {
    const p = lying
      ? { x: end.x + up * length, y: end.y + out * length, height: 0 }
      : { x: end.x + out * length, y: end.y - up * length, height: 0 };
    return pointOn(fit, p);
  };
  const half = outlines[shape];
  const smooth = (rim: readonly (readonly [number, number])[]) =>
    wholePath(
      curveThrough(rim.map(([up, out]) => put(up, out)).map((p) => ({ x: p.xMm, y: p.yMm, height: 0 }))),
    );
  const [, ...down] = smooth(half.map(([up, out]) => [up, -out] as const).reverse());
  const [tipAt, tipOut] = last(half);
  const corner = put(tipAt, -tipOut);
  const outline: PathStep[] = [...smooth(half), ["L", corner.xMm, corner.yMm], ...down, ["Z"]];
  return [
    { kind: "path", steps: outline, fill: "paper", stroke: thin },
    polygon([put(0.9, tipOut), put(1, tipOut), put(1, -tipOut), put(0.9, -tipOut)], "accent", thin),
  ];
}

function rubber({ at, length, width, lying }: Of<"rubber">, fit: Fit): Item[] {
  const c = place(at);
  const [w, h] = lying ? [length, width] : [width, length];
  const corner = (x: number, y: number) =>
    pointOn(fit, { x: c.x + (x * w) / 2, y: c.y + (y * h) / 2, height: 0 });
  return [polygon([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], "tone", thin)];
}

function shot({ at, radius, facing }: Of<"shot">, fit: Fit): Item[] {
  const c = place(at);
  const turn = turned(c, facing);
  return [
    circle(pointOn(fit, c), radius * fit.scale, { fill: "ink" }),
    polyline([pointOn(fit, turn(-radius * 0.15, 0)), pointOn(fit, turn(radius, 0))], {
      ink: "paper",
      widthMm: Math.max(thinMm, radius * fit.scale * 0.22),
    }),
  ];
}

function bead({ at, radius }: Of<"bead">, fit: Fit): Item[] {
  return [circle(pointOn(fit, place(at)), radius * fit.scale, { fill: "paper", stroke: thin })];
}

/** A small barrel with slanting bars, for a knot that is tied already. */
function tied({ at, length, width }: Of<"tied">, fit: Fit): Item[] {
  const c = place(at);
  const put = (x: number, y: number) =>
    pointOn(fit, { x: c.x + (x * length) / 2, y: c.y + (y * width) / 2, height: 0 });
  const box = [put(-1, -0.6), put(-0.7, -1), put(0.7, -1), put(1, -0.6)];
  const below = [put(1, 0.6), put(0.7, 1), put(-0.7, 1), put(-1, 0.6)];
  const bar = (x: number): PathStep[] => {
    const [a, b] = [put(x - 0.15, 1), put(x + 0.15, -1)];
    return [
      ["M", a.xMm, a.yMm],
      ["L", b.xMm, b.yMm],
    ];
  };
  return [
    polygon([...box, ...below], "paper", thin),
    { kind: "path", steps: [-0.5, 0, 0.5].flatMap(bar), stroke: thin },
  ];
}

/** A dashed line across the strand. */
function cut({ at, facing }: Of<"cut">, fit: Fit): Item[] {
  const turn = turned(place(at), facing);
  const ends = [turn(0, -4), turn(0, 4)].map((p) => pointOn(fit, p));
  return [polyline(ends, { ink: "accent", widthMm: 0.5, dashMm: [0.9, 0.6] })];
}

function cross({ at, size }: Of<"cross">, fit: Fit): Item[] {
  const c = place(at);
  const stroke = (rise: 1 | -1): PathStep[] => {
    const end = (x: number) => onPicture(fit, { ...c, x: c.x + x * size, y: c.y + x * rise * size });
    const [a, b] = [end(-1), end(1)];
    return [
      ["M", a.x, a.y],
      ["L", b.x, b.y],
    ];
  };
  return [{ kind: "path", steps: [...stroke(1), ...stroke(-1)], stroke: { ink: "accent", widthMm: 1 } }];
}

/** A measure: a line between two end marks. */
function span({ at, to }: Of<"span">, fit: Fit): Item[] {
  const [a, b] = [onPicture(fit, place(at)), onPicture(fit, place(to))];
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const across = { x: (-(b.y - a.y) / length) * spanEndMm, y: ((b.x - a.x) / length) * spanEndMm };
  const mark = (p: Place): PathStep[] => [
    ["M", p.x - across.x, p.y - across.y],
    ["L", p.x + across.x, p.y + across.y],
  ];
  const steps: PathStep[] = [["M", a.x, a.y], ["L", b.x, b.y], ...mark(a), ...mark(b)];
  return [{ kind: "path", steps, stroke: { ink: "soft", widthMm: thinMm } }];
}

const spanEndMm = 1;

function drop({ at, size }: Of<"drop">, fit: Fit): Item[] {
  const c = place(at);
  const on = (x: number, y: number) => {
    const p = onPicture(fit, { x: c.x + x * size, y: c.y + y * size, height: 0 });
    return [p.x, p.y] as const;
  };
  return [
    {
      kind: "path",
      steps: [
        ["M", ...on(0, -1.5)],
        ["C", ...on(0.35, -0.8), ...on(0.9, -0.3), ...on(0.9, 0.35)],
        ["C", ...on(0.9, 0.9), ...on(0.5, 1.25), ...on(0, 1.25)],
        ["C", ...on(-0.5, 1.25), ...on(-0.9, 0.9), ...on(-0.9, 0.35)],
        ["C", ...on(-0.9, -0.3), ...on(-0.35, -0.8), ...on(0, -1.5)],
        ["Z"],
      ],
      fill: "water",
      stroke: thin,
    },
  ];
}

/** The bare end of a hook's wire, drawn out to a point. */
function hookPoint(hook: Of<"hook">, fit: Fit, strandMm: number): Item[] {
  const [before, end] = hookShank(hook)
    .slice(-2)
    .map((p) => onPicture(fit, p)) as [Place, Place];
  const length = Math.hypot(end.x - before.x, end.y - before.y);
  const along = { x: (end.x - before.x) / length, y: (end.y - before.y) / length };
  const half = strandMm / 2;
  const reach = 2.6 * strandMm;
  return [
    polygon(
      [
        point(end.x - along.y * half, end.y + along.x * half),
        point(end.x + along.x * reach, end.y + along.y * reach),
        point(end.x + along.y * half, end.y - along.x * half),
      ],
      "ink",
    ),
  ];
}

/** The wire of a ring or hook as a strand to paint. */
export function wire(name: string, curve: Curve, widthMm: number): Strand {
  return { name, pattern: "wire", curve, widthMm, tagFromMm: curve.length };
}
