import { measureText } from "../../src/drawing/labels/font-metrics.ts";
import type { Drawing, Item, PathItem, PathStep, TextItem } from "../../src/drawing/model.ts";

interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Flat = Exclude<Item, { kind: "group" }>;

/** Items with their groups taken apart, in the coordinates of the drawing. */
export function flatItems(items: readonly Item[], xMm = 0, yMm = 0): Flat[] {
  return items.flatMap((item) => flatItem(item, xMm, yMm));
}

function flatItem(item: Item, xMm: number, yMm: number): Flat[] {
  switch (item.kind) {
    case "group":
      return flatItems(item.items, xMm + item.xMm, yMm + item.yMm);
    case "circle":
      return [{ ...item, cxMm: item.cxMm + xMm, cyMm: item.cyMm + yMm }];
    case "text":
    case "image":
      return [{ ...item, xMm: item.xMm + xMm, yMm: item.yMm + yMm }];
    case "path":
      return [{ ...item, steps: item.steps.map((step) => movedStep(step, xMm, yMm)) }];
  }
}

function movedStep([letter, ...numbers]: PathStep, xMm: number, yMm: number): PathStep {
  return [letter, ...numbers.map((n, i) => n + (i % 2 === 0 ? xMm : yMm))] as unknown as PathStep;
}

/** Where a line of text puts ink: capitals and ascenders 0.75 em up, descenders 0.22 em down. */
export function textRect(item: TextItem): Rect {
  const width = measureText(item.text, item.sizeMm, item.face);
  const shift = { start: 0, middle: width / 2, end: width }[item.anchor];
  const left = item.xMm - shift;
  return {
    left,
    top: item.yMm - 0.75 * item.sizeMm,
    right: left + width,
    bottom: item.yMm + 0.22 * item.sizeMm,
  };
}

type Segment = readonly [number, number, number, number];

/** A path as short straight pieces. */
function segments(path: PathItem): Segment[] {
  const pieces: Segment[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  const to = (nx: number, ny: number) => {
    pieces.push([x, y, nx, ny]);
    [x, y] = [nx, ny];
  };
  for (const step of path.steps) {
    if (step[0] === "M") [x, y, startX, startY] = [step[1], step[2], step[1], step[2]];
    else if (step[0] === "L") to(step[1], step[2]);
    else if (step[0] === "Z") to(startX, startY);
    else {
      const [, bx, by, cx, cy, dx, dy] = step;
      const [ax, ay] = [x, y];
      for (let i = 1; i <= 12; i += 1) {
        const t = i / 12;
        const u = 1 - t;
        to(
          u ** 3 * ax + 3 * u * u * t * bx + 3 * u * t * t * cx + t ** 3 * dx,
          u ** 3 * ay + 3 * u * u * t * by + 3 * u * t * t * cy + t ** 3 * dy,
        );
      }
    }
  }
  return pieces;
}

function rectOf(item: Flat): Rect {
  if (item.kind === "text") return textRect(item);
  if (item.kind === "image") {
    const { xMm: left, yMm: top, widthMm, heightMm } = item;
    return { left, top, right: left + widthMm, bottom: top + heightMm };
  }
  const half = (item.stroke?.widthMm ?? 0) / 2;
  if (item.kind === "circle") {
    const reach = item.radiusMm + half;
    return {
      left: item.cxMm - reach,
      top: item.cyMm - reach,
      right: item.cxMm + reach,
      bottom: item.cyMm + reach,
    };
  }
  const rect = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const [x1, y1, x2, y2] of segments(item)) {
    rect.left = Math.min(rect.left, x1, x2);
    rect.top = Math.min(rect.top, y1, y2);
    rect.right = Math.max(rect.right, x1, x2);
    rect.bottom = Math.max(rect.bottom, y1, y2);
  }
  return rect;
}

const slackMm = 0.02;

/** Items that leave the frame; a stroke along the edge may lie half outside. */
export function outOfFrame(drawing: Drawing): string[] {
  return flatItems(drawing.items)
    .filter((item) => {
      const rect = rectOf(item);
      return !(
        rect.left >= -slackMm &&
        rect.top >= -slackMm &&
        rect.right <= drawing.widthMm + slackMm &&
        rect.bottom <= drawing.heightMm + slackMm
      );
    })
    .map(name);
}

/** The texts of a drawing, and where they put ink. */
const labelsOf = (items: readonly Flat[]) =>
  items.filter((item) => item.kind === "text").map((item) => ({ text: item.text, rect: textRect(item) }));

/** Pairs of texts that overlap. */
export function overlappingTexts(drawing: Drawing): string[] {
  const labels = labelsOf(flatItems(drawing.items));
  return labels.flatMap((a, i) =>
    labels
      .slice(i + 1)
      .filter((b) => meet(a.rect, b.rect))
      .map((b) => `${a.text} / ${b.text}`),
  );
}

/** Strokes and discs that run through a text. Fills without a stroke are grounds and may. */
export function marksThroughTexts(drawing: Drawing): string[] {
  const items = flatItems(drawing.items);
  const labels = labelsOf(items);
  return items.flatMap((item) => {
    const runsThrough = wayOf(item);
    return labels.filter(({ rect }) => runsThrough(rect)).map(({ text }) => `${name(item)} / ${text}`);
  });
}

/** Tells of each rectangle whether an item runs through it; its way is found once. */
function wayOf(item: Flat): (rect: Rect) => boolean {
  if (item.kind === "text" || (item.kind === "path" && !item.stroke)) return () => false;
  const around = rectOf(item);
  if (item.kind === "circle" || item.kind === "image") return (rect) => meet(around, rect);
  const half = item.stroke!.widthMm / 2;
  const way = segments(item);
  return (rect) => {
    const grown = {
      left: rect.left - half,
      top: rect.top - half,
      right: rect.right + half,
      bottom: rect.bottom + half,
    };
    return touch(around, grown) && way.some((segment) => crosses(segment, grown));
  };
}

const touch = (a: Rect, b: Rect) =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

function meet(a: Rect, b: Rect): boolean {
  return (
    a.left < b.right - slackMm &&
    b.left < a.right - slackMm &&
    a.top < b.bottom - slackMm &&
    b.top < a.bottom - slackMm
  );
}

/** Liang and Barsky's clipping: whether any of a segment is inside a rectangle. */
function crosses([x1, y1, x2, y2]: Segment, { left, top, right, bottom }: Rect): boolean {
  let [enter, leave] = [0, 1];
  const edges = [
    [x1 - x2, x1 - left],
    [x2 - x1, right - x1],
    [y1 - y2, y1 - top],
    [y2 - y1, bottom - y1],
  ] as const;
  for (const [p, q] of edges) {
    if (p === 0 && q < 0) return false;
    if (p < 0) enter = Math.max(enter, q / p);
    if (p > 0) leave = Math.min(leave, q / p);
  }
  return enter < leave;
}

function name(item: Flat): string {
  return item.kind === "text" ? item.text : JSON.stringify(item).slice(0, 120);
}

/** Texts in an ink that is not dark enough for words. */
export function faintTexts(drawing: Drawing): string[] {
  return flatItems(drawing.items).flatMap((item) =>
    item.kind === "text" && !["ink", "soft", "accent"].includes(item.ink) ? [item.text] : [],
  );
}

/** The thinnest stroke that is drawn [mm]. */
export function thinnestStrokeMm(drawing: Drawing): number {
  const widths = flatItems(drawing.items).flatMap((item) =>
    "stroke" in item && item.stroke ? [item.stroke.widthMm] : [],
  );
  return Math.min(...widths);
}

/** Shot that what wipes out a line, where some of it is left out, touches. */
export function breaksOnShot({ items }: Drawing): string[] {
  const all = flatItems(items);
  const shots = all.flatMap((item) => (item.kind === "circle" && item.fill === "ink" ? [item] : []));
  const edges = all.flatMap((item) => {
    if (item.kind !== "path" || item.fill !== "paper" || item.stroke || item.steps.length !== 5) return [];
    const corners = item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step as [string, number, number]]));
    return corners.map(([, x, y], i) => ({ x, y, to: corners[(i + 1) % corners.length]! }));
  });
  return edges.flatMap(({ x, y, to: [, toX, toY] }) =>
    shots
      .filter(({ cxMm, cyMm, radiusMm }) => {
        const [dx, dy] = [toX - x, toY - y];
        const along = ((cxMm - x) * dx + (cyMm - y) * dy) / (dx * dx + dy * dy);
        const share = Math.min(1, Math.max(0, along));
        return Math.hypot(x + share * dx - cxMm, y + share * dy - cyMm) < radiusMm + clearOfShotMm;
      })
      .map(name),
  );
}

const clearOfShotMm = 0.2;

/** No stroke may be thinner [mm]: it would drop out on a laminated card. */
const leastStrokeMm = 0.35;

/** What no drawing may have: marks that leave the frame, words across words or marks, strokes too thin to print. */
export function drawingFaults(drawing: Drawing): string[] {
  return [
    ...outOfFrame(drawing),
    ...overlappingTexts(drawing),
    ...marksThroughTexts(drawing),
    ...(thinnestStrokeMm(drawing) < leastStrokeMm ? [`a stroke under ${leastStrokeMm} mm`] : []),
  ];
}
