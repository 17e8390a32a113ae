import { type Mm, mmPerFoot } from "../../core/units.ts";
import type { FlowFigure } from "../../model/in-water.ts";
import { bold, circle, type Point, point, polyline, rectangle, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, together } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { ticks } from "../plots/axis.ts";
import { anglerFromAbove } from "../scenes/from-above.ts";
import { baitRadiusMm, placed } from "./moving.ts";

interface BankRoom {
  readonly topMm: number;
  readonly widthMm: number;
  readonly textMm: number;
}

const edgeMm = 2.5;
const waterMm = 4.6;
const flowMm = 10;
const tickMm = 1.4;
/** Between two figures along the bank, and round what stands between them. */
const apartMm = 4;
/**
 * Where whoever casts sits, downstream of the cast: it goes a little upstream, how far no sum says. The person is drawn much larger
 * than the water.
 */
const angler = { besideMm: 3.4, belowMm: 2.6, unit: 0.5 } as const;
/** From the bank's edge to the words about its marks. */
const bankMm = 5.4;
/** Half the side of a square that stands for feed; the cast's ring goes round it where both are at one place. */
const feedHalfMm = 0.9;
const castRadiusMm = 1.9;
const meetHalfMm = baitRadiusMm + 0.5;
/** Before the words about a mark. */
const keyMm = 2 * meetHalfMm + 1.6;
const rowEms = 1.3;

/**
 * Along the bank from above, to a scale of its own: where whoever casts sits, where the float goes in, where the feed does, and where
 * bait and feed meet on the bed; below it what each mark is, and how far it is from the cast.
 */
export function alongBank(
  hangs: readonly FlowFigure[],
  { topMm, widthMm, textMm }: BankRoom,
  kit: DrawingKit,
) {
  const { measure } = kit;
  const { fromMm, toMm } = wayOf(hangs);
  const perMm = (widthMm - 2 * edgeMm) / (toMm - fromMm);
  const along = (mm: Mm) => edgeMm + perMm * (mm - fromMm);
  const waterTopMm = topMm + 1.5 * textMm;
  const bankTopMm = waterTopMm + waterMm;
  const middleMm = waterTopMm + waterMm / 2;
  const keyTopMm = bankTopMm + bankMm;
  const lay = (said: string) => layLabel([{ text: said }], widthMm - keyMm - 0.5, textMm, measure);
  const rowsOf = ({ feed }: FlowFigure) => [
    { mark: feedMark, label: lay(feedTold(feed, kit)) },
    { mark: meetMark, label: lay(meetTold(feed, kit)) },
  ];
  /** As many lines as any share needs, so that the words stay where they are. */
  const lines = hangs
    .map((hang) => rowsOf(hang).map(({ label }) => label.lines.length))
    .reduce((most, counts) => most.map((count, row) => Math.max(count, counts[row] ?? 1)));
  const rowTop = (row: number) =>
    keyTopMm + lines.slice(0, row).reduce((sum, count) => sum + (rowEms + (count - 1) * leading) * textMm, 0);
  return {
    heightMm: rowTop(lines.length) - topMm,
    /** What is alike at every share. */
    still: bankOf({ fromMm, toMm, along, topMm, waterTopMm, bankTopMm, widthMm, textMm }, kit),
    /** The marks of one share, and what they are. */
    moving(hang: FlowFigure): Item[] {
      const { feed } = hang;
      return [
        placed(point(along(-feed.upstreamOfCastMm), middleMm), feedMark),
        placed(point(along(feed.belowCastMm), middleMm), meetMark),
        ...rowsOf(hang).flatMap(({ mark, label }, row) => {
          const top = rowTop(row);
          return [
            placed(point(meetHalfMm + 0.5, top + 0.6 * textMm), mark),
            ...paintLabel(label, keyMm, top + label.heightMm / 2, measure),
          ];
        }),
      ];
    },
  };
}

// Told apart by their shapes, as forced colours and paper have no red.
const feedMark: readonly Item[] = [
  rectangle(-feedHalfMm, -feedHalfMm, 2 * feedHalfMm, 2 * feedHalfMm, { fill: "tone", stroke: thin }),
];
const castMark: readonly Item[] = [circle(point(0, 0), castRadiusMm, { stroke: thin })];
/** The bait among the feed. */
const meetMark: readonly Item[] = [
  rectangle(-meetHalfMm, -meetHalfMm, 2 * meetHalfMm, 2 * meetHalfMm, { fill: "tone", stroke: thin }),
  ...parts.baitMark.draw({ at: point(0, 0), radiusMm: baitRadiusMm }),
];

/** All places along the surface where feed goes in or meets the bait, and the cast. */
function wayOf(hangs: readonly FlowFigure[]): { readonly fromMm: Mm; readonly toMm: Mm } {
  const places = hangs.flatMap(({ feed }) => [-feed.upstreamOfCastMm, feed.belowCastMm]);
  return { fromMm: Math.min(0, ...places), toMm: Math.max(1, ...places) };
}

interface Bank {
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly along: (mm: Mm) => number;
  readonly topMm: number;
  readonly waterTopMm: number;
  readonly bankTopMm: number;
  readonly widthMm: number;
  readonly textMm: number;
}

/** Water and bank, with a scale along its edge and whoever casts, whose rod points to where the float goes in. */
function bankOf(bank: Bank, kit: DrawingKit): Item[] {
  const { along, topMm, waterTopMm, bankTopMm, widthMm, textMm } = bank;
  const { words, measure } = kit;
  const said = words("drawing.film.current.bank");
  const yours = words("drawing.film.current.cast");
  const seat = point(along(0) + angler.besideMm, bankTopMm + angler.belowMm);
  const halfMm = 3.4 * angler.unit;
  const yoursX = seat.xMm + halfMm + 1;
  const cast = point(along(0), (waterTopMm + bankTopMm) / 2);
  return [
    text(point(0.5, topMm + textMm), said, textMm, { ink: "soft" }),
    ...parts.flowArrow.draw({
      from: point(measure(said, textMm, "regular") + 2.5, topMm + 0.65 * textMm),
      lengthMm: flowMm,
    }),
    rectangle(0, waterTopMm, widthMm, waterMm, { fill: "water" }),
    polyline([point(0, bankTopMm), point(widthMm, bankTopMm)], bold),
    ...scaleAlong(bank, [seat.xMm - halfMm, yoursX + measure(yours, textMm, "regular")], kit),
    ...anglerFromAbove(seat, angler.unit),
    polyline([point(seat.xMm, seat.yMm - halfMm), cast], bold),
    text(point(yoursX, bankTopMm + tickMm + 0.9 * textMm), yours, textMm),
    placed(cast, castMark),
  ];
}

/** Ticks along the bank, in metres or in feet from the cast on, with a figure at each that has room for it. */
function scaleAlong(
  { fromMm, toMm, along, bankTopMm, widthMm, textMm }: Bank,
  /** From where to where something else stands below the edge. */
  taken: readonly [number, number],
  { figures, measure }: DrawingKit,
): Item[] {
  const unitMm = figures.ruler.unit === "in" ? mmPerFoot : 1000;
  const perUnit = along(unitMm) - along(0);
  const longest = Math.max(toMm, -fromMm) / unitMm;
  const widest = measure(figures.about(Math.ceil(longest) * unitMm), textMm, "regular");
  const even = ticks(longest, longest * perUnit, widest + apartMm).slice(1);
  const left = even.map((one) => -one * unitMm).filter((mm) => mm >= fromMm);
  const right = even.map((one) => one * unitMm).filter((mm) => mm <= toMm);
  return [...left, 0, ...right].flatMap((mm): Item[] => {
    const x = along(mm);
    const said = figures.about(Math.abs(mm));
    const half = measure(said, textMm, "regular") / 2;
    const isFree = mm !== 0 && (x + half + 1 < taken[0] || x - half - 1 > taken[1]);
    return [
      polyline([point(x, bankTopMm), point(x, bankTopMm + tickMm)], thin),
      ...(isFree
        ? [
            text(figureAt(x, half, widthMm, bankTopMm, textMm), said, textMm, {
              anchor: "middle",
            }),
          ]
        : []),
    ];
  });
}

/** Below its tick, but within the picture. */
const figureAt = (x: number, half: number, widthMm: number, bankTopMm: number, textMm: number): Point =>
  point(Math.min(Math.max(x, half + 0.3), widthMm - half - 0.3), bankTopMm + tickMm + 0.9 * textMm);

/** To a tenth of a metre: nobody throws feed nearer than that. */
const farMm = (mm: Mm): Mm => 100 * Math.round(Math.abs(mm) / 100);

function feedTold({ upstreamOfCastMm }: FlowFigure["feed"], { words, figures }: DrawingKit): string {
  const gap = together(figures.shortDepth(farMm(upstreamOfCastMm)));
  if (farMm(upstreamOfCastMm) === 0) return words("drawing.film.current.feed-at");
  return words(upstreamOfCastMm > 0 ? "drawing.film.current.feed-above" : "drawing.film.current.feed-below", {
    gap,
  });
}

function meetTold({ belowCastMm, afterS }: FlowFigure["feed"], { words, figures }: DrawingKit): string {
  const time = together(figures.time(afterS));
  const gap = together(figures.shortDepth(farMm(belowCastMm)));
  if (farMm(belowCastMm) === 0) return words("drawing.film.current.meet-at", { time });
  return words(belowCastMm > 0 ? "drawing.film.current.meet-below" : "drawing.film.current.meet-above", {
    gap,
    time,
  });
}
