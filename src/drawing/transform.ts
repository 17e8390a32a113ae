import { type Point, point } from "./items.ts";
import type { Item, PathStep } from "./model.ts";

/**
 * Items turned about a point, clockwise by an angle [degrees]. Text keeps upright and moves with its anchor.
 */
export function rotated(items: readonly Item[], degrees: number, about: Point): Item[] {
  return mapped(items, (at) => rotatedPoint(at, degrees, about));
}

/** Items turned over left to right about an upright line. */
export function mirrored(items: readonly Item[], aboutXMm: number): Item[] {
  return mapped(items, ({ xMm, yMm }) => point(2 * aboutXMm - xMm, yMm));
}

/** A point turned about another, clockwise [degrees]. */
export function rotatedPoint({ xMm, yMm }: Point, degrees: number, about: Point): Point {
  const angle = (degrees * Math.PI) / 180;
  const x = xMm - about.xMm;
  const y = yMm - about.yMm;
  return point(
    about.xMm + x * Math.cos(angle) - y * Math.sin(angle),
    about.yMm + x * Math.sin(angle) + y * Math.cos(angle),
  );
}

/** How a line is turned that runs from a point up to another, clockwise from upright [degrees]. */
export function turnFromUpright(from: Point, to: Point): number {
  return (Math.atan2(to.xMm - from.xMm, from.yMm - to.yMm) * 180) / Math.PI;
}

function mapped(items: readonly Item[], move: (at: Point) => Point): Item[] {
  return items.map((item) => mappedItem(item, move));
}

function mappedItem(item: Item, move: (at: Point) => Point): Item {
  switch (item.kind) {
    case "path":
      return { ...item, steps: item.steps.map((step) => mappedStep(step, move)) };
    case "circle": {
      const at = move(point(item.cxMm, item.cyMm));
      return { ...item, cxMm: at.xMm, cyMm: at.yMm };
    }
    case "text":
    case "image":
      return { ...item, ...move(point(item.xMm, item.yMm)) };
    case "group": {
      const origin = move(point(item.xMm, item.yMm));
      const inner = ({ xMm, yMm }: Point) => {
        const at = move(point(item.xMm + xMm, item.yMm + yMm));
        return point(at.xMm - origin.xMm, at.yMm - origin.yMm);
      };
      return { ...item, ...origin, items: mapped(item.items, inner) };
    }
  }
}

function mappedStep(step: PathStep, move: (at: Point) => Point): PathStep {
  if (step[0] === "Z") return step;
  const moved: number[] = [];
  const numbers = step.slice(1) as number[];
  for (let i = 0; i < numbers.length; i += 2) {
    const at = move(point(numbers[i]!, numbers[i + 1]!));
    moved.push(at.xMm, at.yMm);
  }
  return [step[0], ...moved] as unknown as PathStep;
}
