import { last } from "../core/lists.ts";
import type { PathCommand } from "./font-file.ts";

interface Point {
  readonly x: number;
  readonly y: number;
  readonly isOn: boolean;
}

/** Cubic curves become so many quadratic ones each, which is closer than a unit of the em for letters. */
const partsOfCubic = 4;

/**
 * An outline as TrueType has it in its `glyf` table, from the steps of a path. Source: ISO/IEC 14496-22, `glyf`, simple
 * glyphs.
 */
export function simpleOutline(commands: readonly PathCommand[]): Uint8Array {
  const contours = contoursOf(commands).filter((contour) => contour.length > 1);
  const points = contours.flat();
  if (points.length === 0) return new Uint8Array();
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const header = [contours.length, Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  let end = -1;
  const ends = contours.map(({ length }) => {
    end += length;
    return end;
  });
  const words = [...header, ...ends, 0].flatMap(twoBytes);
  // Every point with two bytes a coordinate, as a difference to the one before.
  const flags = points.map(({ isOn }) => (isOn ? 1 : 0));
  const bytes = [...words, ...flags, ...differences(xs), ...differences(ys)];
  return Uint8Array.from(bytes.length % 2 === 0 ? bytes : [...bytes, 0]);
}

const twoBytes = (value: number): number[] => [(value >> 8) & 0xff, value & 0xff];

const differences = (values: readonly number[]): number[] =>
  values.flatMap((value, at) => twoBytes(value - (values[at - 1] ?? 0)));

function contoursOf(commands: readonly PathCommand[]): Point[][] {
  const contours: Point[][] = [];
  let pen = { x: 0, y: 0 };
  const add = (x: number, y: number, isOn: boolean) =>
    last(contours).push({ x: Math.round(x), y: Math.round(y), isOn });
  for (const { command, args } of commands) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0] = args;
    if (command === "moveTo") contours.push([]);
    if (command === "moveTo" || command === "lineTo") {
      add(x1, y1, true);
      pen = { x: x1, y: y1 };
    } else if (command === "quadraticCurveTo") {
      add(x1, y1, false);
      add(x2, y2, true);
      pen = { x: x2, y: y2 };
    } else if (command === "bezierCurveTo") {
      const x = quadraticParts(pen.x, x1, x2, x3);
      const y = quadraticParts(pen.y, y1, y2, y3);
      x.forEach(([control, end], i) => {
        const [controlY, endY] = y[i] ?? [0, 0];
        add(control, controlY, false);
        add(end, endY, true);
      });
      pen = { x: x3, y: y3 };
    }
  }
  return contours.map(closed);
}

/** A contour closes by itself: its last point is not to be its first again. */
function closed(contour: Point[]): Point[] {
  const [first] = contour;
  const end = contour.at(-1);
  const isTwice = contour.length > 1 && first?.x === end?.x && first?.y === end?.y && end?.isOn;
  return isTwice ? contour.slice(0, -1) : contour;
}

/** Parts of a cubic curve in one axis, each as control and end of the quadratic curve next to it. */
function quadraticParts(from: number, c1: number, c2: number, to: number): (readonly [number, number])[] {
  const at = (t: number) => {
    const u = 1 - t;
    return u * u * u * from + 3 * u * u * t * c1 + 3 * u * t * t * c2 + t * t * t * to;
  };
  const slope = (t: number) => {
    const u = 1 - t;
    return 3 * (u * u * (c1 - from) + 2 * u * t * (c2 - c1) + t * t * (to - c2));
  };
  return Array.from({ length: partsOfCubic }, (_, i) => {
    const [t0, t1] = [i / partsOfCubic, (i + 1) / partsOfCubic];
    const [p0, p1] = [at(t0), at(t1)];
    const quarter = (t1 - t0) / 4;
    return [(p0 + p1) / 2 + quarter * (slope(t0) - slope(t1)), p1] as const;
  });
}
