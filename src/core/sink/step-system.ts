/**
 * The unknowns of one step: the speeds of every point and the tension of every link, each with its row of the band.
 *
 * The rows go down the chain: of each point its speed along x, that along y, then the tension of the link above it. So a
 * link meets its upper point's speed 3 places left of the lower one's in the same direction, 4 or 2 places left in the
 * other. The top has the same three rows, so that it is a point like any other; all but its speed along x are held.
 */
import type { G, Mm } from "../units.ts";
import type { DragLaw } from "../water/drag.ts";
import { type BandRow, emptyRow } from "./banded.ts";
import { type ChainPoint, type ChainState, type HungNode, stretchMmPerUn } from "./chain.ts";

/** A point of the chain with the speeds that are tried for it. */
export interface TriedPoint {
  readonly point: ChainPoint;
  readonly movedMassG: G;
  readonly weightUn: number;
  readonly drags: readonly DragLaw[];
  vx: number;
  vy: number;
  readonly rowX: BandRow;
  readonly rowY: BandRow;
}

/** A place of a link at which its drag is taken. */
export interface DragPlace {
  /** Share of the link from its upper end. */
  readonly fromUpper: number;
  /** The tensor that leaves of a speed what goes across the line. */
  acrossXx: number;
  acrossXy: number;
  acrossYy: number;
}

/** A link of the chain with the tension that is tried for it. */
export interface TriedLink {
  readonly upper: TriedPoint;
  readonly lower: TriedPoint;
  /** What hangs on it. */
  readonly hung: HungNode;
  /** The link below it. */
  next: TriedLink | undefined;
  readonly lengthMm: Mm;
  readonly diameterMm: Mm;
  readonly stretchMmPerUn: number;
  tensionUn: number;
  taut: boolean;
  readonly row: BandRow;
  /** Its direction. */
  alongX: number;
  alongY: number;
  /** Share of its length from end to end. */
  drawnOutShare: number;
  axialDragGMmS: number;
  readonly dragPlaces: readonly [DragPlace, DragPlace];
}

export interface StepSystem {
  readonly top: TriedPoint;
  /** The top and what hangs on it. */
  readonly points: readonly TriedPoint[];
  readonly links: readonly TriedLink[];
  readonly rows: readonly BandRow[];
  /** The same from the last to the first. */
  readonly backwards: readonly BandRow[];
}

export function stepSystem({ chain, top, hung }: ChainState): StepSystem {
  const topMassG = chain.top.kind === "sliding" ? chain.top.massG : 0;
  const triedTop = triedPoint(top, topMassG, 0, []);
  triedTop.rowX.held = chain.top.kind === "held";
  triedTop.rowY.held = true;
  const rows = [triedTop.rowX, triedTop.rowY, emptyRow(true)];
  const points = [triedTop];
  const links: TriedLink[] = [];
  let upper = triedTop;
  let above: TriedLink | undefined;
  for (const one of hung) {
    const { movedMassG, weightUn, drags } = one.node;
    const lower = triedPoint(one.point, movedMassG, weightUn, drags);
    const link = triedLink(upper, lower, one);
    rows.push(lower.rowX, lower.rowY, link.row);
    points.push(lower);
    links.push(link);
    if (above !== undefined) above.next = link;
    above = link;
    upper = lower;
  }
  return { top: triedTop, points, links, rows, backwards: rows.toReversed() };
}

function triedPoint(
  point: ChainPoint,
  movedMassG: G,
  weightUn: number,
  drags: readonly DragLaw[],
): TriedPoint {
  return { point, movedMassG, weightUn, drags, vx: 0, vy: 0, rowX: emptyRow(), rowY: emptyRow() };
}

/** Places along a piece, as shares from its upper end, at which the drag is taken: Gauss's two points. */
const gaussPlaces = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)] as const;

function triedLink(upper: TriedPoint, lower: TriedPoint, hung: HungNode): TriedLink {
  const { link } = hung.node;
  const [nearUpper, nearLower] = gaussPlaces;
  return {
    upper,
    lower,
    hung,
    next: undefined,
    lengthMm: link.lengthMm,
    diameterMm: link.diameterMm,
    stretchMmPerUn: stretchMmPerUn(link),
    tensionUn: 0,
    taut: false,
    row: emptyRow(),
    alongX: 0,
    alongY: 0,
    drawnOutShare: 0,
    axialDragGMmS: 0,
    dragPlaces: [dragPlace(nearUpper), dragPlace(nearLower)],
  };
}

function dragPlace(fromUpper: number): DragPlace {
  return { fromUpper, acrossXx: 0, acrossXy: 0, acrossYy: 0 };
}
