import { last, neighbours } from "../../core/lists.ts";
import type { Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import { point, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";

/** Where a bait is seen on its way down. */
interface FallingColumn {
  readonly xMm: number;
  readonly yOf: (depthMm: Mm) => number;
  /** The bed, which no words cover. */
  readonly bedMm: number;
  readonly textMm: number;
}

const radiusMm = { second: 0.95, end: 1.35 } as const;
/** From the middle of a mark to its time, and from line to line of those, in ems. */
const asideMm = 1.9;
const apartEms = 1.1;
/** Between the foot of a time and the bed. */
const bedFreeMm = 0.4;
/** A second that ends so shortly before the bait is down has no mark of its own. */
const shortlyS = 0.25;
/** The most times that are written beside a column, besides the last. */
const mostTimes = 6;

/**
 * A bait seen once each second from its landing, straight down as it is in the water, and where it is all but down; with
 * times at even steps, and the last in bold. Nothing joins the marks, or they would be read as shot on a line that lies aslant.
 */
export function fallingBait(
  sink: Sink,
  column: FallingColumn,
  kit: Pick<DrawingKit, "figures" | "measure">,
): Item[] {
  const { xMm, yOf, bedMm, textMm } = column;
  const endS = last(sink.tenthsS);
  const seconds = Array.from({ length: Math.ceil(endS - shortlyS) }, (_, i) => i).slice(1);
  const y = (timeS: S) => yOf(depthAt(sink.track, timeS));
  const stepS = [1, 2, 5, 10, 20, 50].find((one) => endS / one <= mostTimes) ?? 100;
  const endMm = Math.min(y(endS), bedMm - bedFreeMm - 0.57 * textMm);
  let freeMm = Number.NEGATIVE_INFINITY;
  const { time: said } = kit.figures;
  const told = seconds.filter((second) => {
    const isFree = y(second) >= freeMm && y(second) <= endMm - apartEms * textMm;
    if (second % stepS !== 0 || !isFree || said(second) === said(endS)) return false;
    freeMm = y(second) + apartEms * textMm;
    return true;
  });
  const time = (timeS: S, middleMm: number, face: "regular" | "bold") =>
    text(point(xMm + asideMm, middleMm + 0.35 * textMm), said(timeS), textMm, { face });
  const mark = (timeS: S, reachMm: number) =>
    parts.baitMark.draw({ at: point(xMm, y(timeS)), radiusMm: reachMm });
  return [
    ...seconds.flatMap((second) => mark(second, radiusMm.second)),
    ...mark(endS, radiusMm.end),
    ...told.map((second) => time(second, y(second), "regular")),
    time(endS, endMm, "bold"),
  ];
}

/** Width of a column: half a mark, and the widest time beside it. */
export function fallingWidthMm(endS: S, textMm: number, { figures, measure }: DrawingKit): number {
  return radiusMm.end + asideMm + measure(figures.time(endS), textMm, "bold");
}

/** How deep a bait is at a time. */
function depthAt(track: Sink["track"], timeS: S): Mm {
  const [a, b] = neighbours(track).find(([, one]) => one.timeS >= timeS) ?? last(neighbours(track));
  const share = b.timeS === a.timeS ? 1 : (timeS - a.timeS) / (b.timeS - a.timeS);
  return a.depthMm + share * (b.depthMm - a.depthMm);
}
