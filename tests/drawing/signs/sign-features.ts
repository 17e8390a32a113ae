import type { CircleItem, Drawing, Item, PathItem } from "../../../src/drawing/model.ts";
import { flatItems } from "../../support/drawing-checks.ts";

/** What a picture of a sign shows, read back from its marks alone: places in millimetres, y down, the water's surface at 9. */
interface SignFeatures {
  /** Floats with a bright tip: how far the tip's top is above the water, and how far the float leans to the right [degrees]. */
  readonly floats: readonly { readonly aboveMm: number; readonly lean: number; readonly x: number }[];
  /** Dashed outlines: what was before, or should be. */
  readonly before: number;
  /** Where each bright arrow goes, of eight winds as a compass has them with north up. */
  readonly arrows: readonly string[];
  readonly crosses: number;
  readonly shot: number;
  /** Fish: where each looks. */
  readonly fish: readonly ("left" | "right")[];
  /** Their noses. */
  readonly fishMm: readonly { readonly x: number; readonly y: number }[];
  readonly hooks: number;
  /** Bubbles that lie on the water: where. */
  readonly bubblesMm: readonly number[];
  /** Share of its round that a clock marks as gone by. */
  readonly clock?: number;
  readonly hasWater: boolean;
  readonly hasBed: boolean;
  /** Thin arrows of a stream. */
  readonly flow: number;
}

const surfaceMm = 9;
const winds = ["E", "SE", "S", "SW", "W", "NW", "N", "NE"];

const placesOf = ({ steps }: PathItem) =>
  steps.flatMap((step) => (step[0] === "Z" ? [] : [{ x: step.at(-2) as number, y: step.at(-1) as number }]));
const pathsOf = (items: readonly Item[]) => items.flatMap((item) => (item.kind === "path" ? [item] : []));
const middle = (places: readonly { x: number; y: number }[]) => ({
  x: places.reduce((sum, { x }) => sum + x, 0) / places.length,
  y: places.reduce((sum, { y }) => sum + y, 0) / places.length,
});

const shapeOf = ({ steps }: PathItem) => steps.map(([kind]) => kind).join("");

/** A tip is a bright four-sided patch with an edge; the float's body comes just before it. */
function floatsOf(paths: readonly PathItem[]): SignFeatures["floats"] {
  return paths.flatMap((path, at) => {
    if (path.fill !== "accent" || !path.stroke) return [];
    const tip = placesOf(path);
    const body = middle(placesOf(paths[at - 1]!));
    const { x, y } = middle(tip.slice(0, 4));
    const lean = (180 * Math.atan2(x - body.x, body.y - y)) / Math.PI;
    return [{ aboveMm: surfaceMm - Math.min(...tip.map((one) => one.y)), lean, x }];
  });
}

/** Heads are three-sided patches without an edge, their tip first. */
function headsOf(paths: readonly PathItem[], inks: readonly string[]): string[] {
  return paths.flatMap((path) => {
    const [tip, a, b, ...rest] = placesOf(path);
    if (path.stroke || !inks.includes(path.fill ?? "") || !b || rest.length > 1) return [];
    const angle = Math.atan2(tip!.y - (a!.y + b.y) / 2, tip!.x - (a!.x + b.x) / 2);
    return [winds[(Math.round(angle / (Math.PI / 4)) + 8) % 8]!];
  });
}

const lengthMm = (places: readonly { x: number; y: number }[]) =>
  Math.hypot(places[1]!.x - places[0]!.x, places[1]!.y - places[0]!.y);

/** Two bright strokes of one length through one middle. */
function crossesOf(paths: readonly PathItem[]): number {
  const strokes = paths.filter(
    ({ fill, stroke, steps }) =>
      !fill && stroke?.ink === "accent" && stroke.widthMm === 0.6 && steps.length === 2,
  );
  return strokes.length / 2;
}

/** A bright arc round a dial is what has gone by. */
function clockOf(paths: readonly PathItem[], circles: readonly CircleItem[]): number | undefined {
  const arc = paths.find(({ stroke, fill }) => !fill && stroke?.ink === "accent" && stroke.widthMm === 0.8);
  const dial = arc && circles.find(({ fill, radiusMm }) => fill === "paper" && radiusMm > 2);
  if (!dial) return undefined;
  const places = placesOf(arc);
  const gone = places.slice(1).reduce((sum, place, i) => sum + lengthMm([places[i]!, place]), 0);
  return gone / (2 * Math.PI * Math.hypot(places[0]!.x - dial.cxMm, places[0]!.y - dial.cyMm));
}

/** A fish's outline has three straight steps for its tail; it looks to where it begins. */
function fishOf(paths: readonly PathItem[]) {
  return paths.flatMap((path) => {
    if (path.fill !== "paper" || shapeOf(path) !== "MCLLLLCZ") return [];
    const [nose, , tail] = placesOf(path);
    return [{ ...nose!, looks: nose!.x < tail!.x ? ("left" as const) : ("right" as const) }];
  });
}

const hooksOf = (paths: readonly PathItem[]) =>
  paths.filter((path) => !path.fill && shapeOf(path) === "MLCLL").length;

/** What is seen in a picture of a sign. */
export function featuresOf({ items }: Drawing): SignFeatures {
  const flat = flatItems(items);
  const paths = pathsOf(flat);
  const circles = flat.flatMap((item) => (item.kind === "circle" ? [item] : []));
  const clock = clockOf(paths, circles);
  const fish = fishOf(paths);
  return {
    floats: floatsOf(paths),
    before:
      paths.filter(({ fill, stroke }) => fill === "paper" && stroke?.dashMm).length +
      circles.filter(({ stroke }) => stroke?.dashMm).length,
    arrows: headsOf(paths, ["accent"]),
    crosses: crossesOf(paths),
    shot: circles.filter(({ fill, radiusMm }) => fill === "ink" && radiusMm >= 0.75).length,
    fish: fish.map(({ looks }) => looks),
    fishMm: fish,
    bubblesMm: paths.flatMap((path) =>
      path.fill === "paper" && !path.stroke?.dashMm && shapeOf(path) === "MCCZ"
        ? [middle(placesOf(path)).x]
        : [],
    ),
    hooks: hooksOf(paths),
    ...(clock !== undefined && { clock }),
    hasWater: paths.some(({ fill }) => fill === "water"),
    hasBed: paths.some(({ fill, stroke, steps }) => {
      const places = placesOf({ steps } as PathItem);
      return (
        !fill &&
        stroke !== undefined &&
        places.length === 2 &&
        places[0]!.y > 22 &&
        places[0]!.y === places[1]!.y
      );
    }),
    flow: headsOf(paths, ["soft"]).filter((wind) => wind === "E").length,
  };
}
