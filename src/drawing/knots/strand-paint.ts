import { entry, paired } from "../../core/lists.ts";
import type { StrandPattern } from "../../model/knot-picture.ts";
import { type Curve, slice, wholePath } from "../curve.ts";
import { thinMm } from "../items.ts";
import type { Ink, Item, PathStep } from "../model.ts";
import type { Crossing } from "./crossings.ts";

/** A strand ready to paint, in millimetres on the picture. */
export interface Strand {
  readonly name: string;
  /** The wire of a hook's or float's eye is painted like a strand. */
  readonly pattern: StrandPattern | "wire";
  readonly curve: Curve;
  readonly widthMm: number;
  /** Distance from the start at which the tag end begins; the strand's length where there is none. */
  readonly tagFromMm: number;
  /** Ink of its two edges, where strands have colours. */
  readonly edge?: Ink;
  /** A part of it that is not there yet [mm along it]. */
  readonly unlaid?: Stretch;
  /** The numbers of its coils' turns, and how far along it each is made [mm]. */
  readonly turns?: readonly { readonly atMm: number; readonly number: Item }[];
}

/** What fills a strand between its two edges; the pattern tells strands apart without colour. */
const cores: Readonly<Record<Strand["pattern"], Ink>> = {
  line: "ink",
  "hook length": "paper",
  cord: "paper",
  wire: "tone",
};

/** Marks on the core, lengths as multiples of the strand's width. The tag end of any strand is beaded. */
const bars = { length: 0.32, pitch: 1.15 };
const beads = { length: 0.02, pitch: 1.05 };

/** White kept free beside the strand on top. */
const clearMm = 0.28;

/** A stretch put back is this much longer than the gap, so that no hairline shows at its ends. */
const overlapMm = 0.1;

/** Between two breaks a strand shows only where this much of it would be seen, as a share of its width. */
const leastSeen = 0.3;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The strands as they lie on each other. Each is broken where it passes below another: white is kept free on both
 * sides of the one on top, which is then put back across it.
 */
export function paintStrands(
  strands: readonly Strand[],
  crossings: readonly Crossing[],
  { body, clear }: Brush = brush,
): Item[] {
  const hidden = strands.map(({ unlaid }, index) => {
    const breaks = hiddenStretches(strands, crossings, index);
    return unlaid ? [...breaks, unlaid].sort((a, b) => a.from - b.from) : breaks;
  });
  const bridges = crossings.flatMap((crossing) => bridge(strands, hidden, crossing));
  return [
    ...paired(strands, hidden).flatMap(([strand, gaps]) =>
      without({ from: 0, to: strand.curve.length }, gaps).flatMap(({ from, to }) => body(strand, from, to)),
    ),
    ...bridges.flatMap(({ strand, from, to }) => clear(strand, from, to)),
    ...bridges.flatMap(({ strand, from, to }) => body(strand, from - overlapMm, to + overlapMm)),
  ];
}

/** How a strand lies across the one above or below it. */
function slant({ over, under }: Crossing): { sine: number; cosine: number } {
  const sine = Math.abs(over.direction.x * under.direction.y - over.direction.y * under.direction.x);
  const cosine = Math.abs(over.direction.x * under.direction.x + over.direction.y * under.direction.y);
  return { sine: Math.max(sine, 0.2), cosine };
}

/**
 * Where a strand is not painted. A break ends below the white beside the strand on top, whose edge gives it its shape;
 * breaks with next to nothing to see between them are one.
 */
function hiddenStretches(
  strands: readonly Strand[],
  crossings: readonly Crossing[],
  index: number,
): Stretch[] {
  const { widthMm } = entry(strands, index);
  const breaks = crossings
    .filter(({ under }) => under.strand === index)
    .sort((a, b) => a.under.s - b.under.s)
    .map((crossing) => {
      const { sine, cosine } = slant(crossing);
      const reach = entry(strands, crossing.over.strand).widthMm / 2 + clearMm;
      const slope = (widthMm / 2) * cosine;
      return { s: crossing.under.s, cut: Math.max(0, (reach - slope) / sine), seen: (reach + slope) / sine };
    });
  const hidden: Stretch[] = [];
  for (const [i, { s, cut, seen }] of breaks.entries()) {
    const before = breaks[i - 1];
    const last = hidden[hidden.length - 1];
    if (before && last && s - seen - (before.s + before.seen) < leastSeen * widthMm) {
      hidden[hidden.length - 1] = { from: last.from, to: Math.max(last.to, s + cut) };
    } else {
      hidden.push({ from: s - cut, to: s + cut });
    }
  }
  return hidden;
}

/** The part of a stretch that the hidden ones leave. */
function without(stretch: Stretch, hidden: readonly Stretch[]): Stretch[] {
  const left: Stretch[] = [];
  let from = stretch.from;
  for (const gap of hidden) {
    if (gap.to <= from || gap.from >= stretch.to) continue;
    if (gap.from > from) left.push({ from, to: gap.from });
    from = gap.to;
  }
  return from < stretch.to ? [...left, { from, to: stretch.to }] : left;
}

/** The stretch of the strand on top that spans a crossing. */
function bridge(
  strands: readonly Strand[],
  hidden: readonly (readonly Stretch[])[],
  crossing: Crossing,
): (Stretch & { strand: Strand })[] {
  const { over, under } = crossing;
  const strand = entry(strands, over.strand);
  const bottom = entry(strands, under.strand);
  const { sine, cosine } = slant(crossing);
  const half = (bottom.widthMm / 2 + clearMm + (strand.widthMm / 2) * cosine) / sine;
  const stretch = {
    from: Math.max(0, over.s - half),
    to: Math.min(strand.curve.length, over.s + half),
  };
  return without(stretch, entry(hidden, over.strand)).map((seen) => ({ ...seen, strand }));
}

type PaintStretch = (strand: Strand, from: number, to: number) => readonly Item[];

/** Paints a stretch of a strand, and the white beside one that lies on top. */
interface Brush {
  readonly body: PaintStretch;
  readonly clear: PaintStretch;
}

const brush: Brush = {
  body,
  clear: (strand, from, to) => {
    const stroke = { ink: "paper", widthMm: strand.widthMm + 2 * clearMm } as const;
    return [{ kind: "path", steps: slice(strand.curve, from, to), stroke }];
  },
};

/** More stretches than a strand shows while its end goes its way are forgotten. */
const mostKept = 300;

/** A brush that gives the same marks again for a stretch that lies as it lay before: a frame paints what is new in it. */
export function keepingBrush(): Brush {
  const kept = (paint: PaintStretch): PaintStretch => {
    const byCurve = new WeakMap<Curve["samples"], Map<string, readonly Item[]>>();
    return (strand, from, to) => {
      const { samples, length } = strand.curve;
      const stretches = byCurve.get(samples) ?? new Map<string, readonly Item[]>();
      byCurve.set(samples, stretches);
      const key = [from, Math.min(to, length), to >= length].join();
      const known = stretches.get(key);
      if (known) return known;
      if (stretches.size >= mostKept) stretches.clear();
      const painted = paint(strand, from, to);
      stretches.set(key, painted);
      return painted;
    };
  };
  return { body: kept(brush.body), clear: kept(brush.clear) };
}

function body(strand: Strand, from: number, to: number): Item[] {
  const { curve, pattern, widthMm, edge = "ink" } = strand;
  const whole = from <= 0 && to >= curve.length;
  const start = Math.max(0, from);
  const end = Math.min(curve.length, to);
  const outline = whole ? wholePath(curve) : slice(curve, start, end);
  const coreMm = widthMm - 2 * thinMm;
  // The core stops short of a cut end, which closes the outline there; elsewhere it reaches over the outline's end.
  const coreFrom = start === 0 && !curve.closed ? thinMm : start - overlapMm;
  const coreTo = end === curve.length && !curve.closed ? end - thinMm : end + overlapMm;
  const core: Item[] =
    cores[pattern] === "ink" || coreTo <= coreFrom
      ? []
      : [
          {
            kind: "path",
            steps: whole && curve.closed ? outline : slice(curve, coreFrom, coreTo),
            stroke: { ink: cores[pattern], widthMm: coreMm },
          },
        ];
  return [
    { kind: "path", steps: outline, stroke: { ink: edge, widthMm } },
    ...core,
    ...marks(strand, coreFrom, coreTo),
  ];
}

/** Bars on a cord and beads on a tag end, always at the same places of the strand. */
function marks(strand: Strand, from: number, to: number): Item[] {
  const { curve, pattern, widthMm, tagFromMm } = strand;
  const ink = cores[pattern] === "ink" ? "paper" : "ink";
  const row = (mark: { length: number; pitch: number }, first: number, last: number): PathStep[] => {
    const pitch = mark.pitch * widthMm;
    const steps: PathStep[] = [];
    const length = mark.length * widthMm;
    for (let i = Math.ceil((first - tagFromMm) / pitch - 0.5); ; i++) {
      const s = tagFromMm + (i + 0.5) * pitch;
      if (s + length > last) break;
      steps.push(...slice(curve, s, s + length));
    }
    return steps;
  };
  const barred = pattern === "cord" ? row(bars, from, Math.min(to, tagFromMm)) : [];
  const beaded = row(beads, Math.max(from, tagFromMm), to);
  const coreMm = widthMm - 2 * thinMm;
  const items: Item[] = [];
  if (barred.length > 0)
    items.push({ kind: "path", steps: barred, stroke: { ink, widthMm: coreMm + thinMm } });
  if (beaded.length > 0) {
    items.push({
      kind: "path",
      steps: beaded,
      stroke: { ink, widthMm: Math.max(thinMm, coreMm), cap: "round" },
    });
  }
  return items;
}
