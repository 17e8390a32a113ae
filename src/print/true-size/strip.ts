import type { DrawingKit } from "../../drawing/kit.ts";
import type { Item, PathStep, TextItem } from "../../drawing/model.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { SolvedDepth, SolvedShot } from "../../model/solved.ts";
import { unbroken } from "../../words/shot-text.ts";
import { centimetreRuler, type Ruler } from "../../words/unit-systems.ts";

/** A mark of the strip: everything at one distance from the hook. */
interface StripMark {
  readonly fromHookMm: number;
  readonly label: string;
}

/** The strip is cut into pieces that are laid end to end. */
interface StripPiece {
  readonly fromMm: number;
  readonly toMm: number;
  readonly marks: readonly StripMark[];
}

/**
 * Marks of the shot on the line and of the loop, from the hook up, each at the figure that it is told with; shot at one
 * place share a mark.
 */
export function stripMarks(
  depth: SolvedDepth,
  hookLengthMm: number,
  { words, figures }: DrawingKit,
): StripMark[] {
  const { toldMm } = figures.ruler.strip;
  const told = (mm: number) => Math.round(mm / toldMm) * toldMm;
  const loopMm = told(hookLengthMm);
  const places = new Map<number, SolvedShot[]>([[loopMm, []]]);
  for (const shot of depth.lineShot) {
    const atMm = told(shot.fromHookMm);
    places.set(atMm, [...(places.get(atMm) ?? []), shot]);
  }
  return [...places]
    .sort(([a], [b]) => a - b)
    .map(([fromHookMm, shots]) => {
      const loop = fromHookMm === loopMm ? [words("handout.strip.loop")] : [];
      const what = [...loop, ...(shots.length > 0 ? [figures.shot(shots)] : [])].join(" + ");
      return { fromHookMm, label: unbroken(`${figures.shortGap(fromHookMm)} ${what}`) };
    });
}

/**
 * Pieces of equal length from the hook up, as many as the marks need and at most `piecesMax`; what is higher is left
 * to the card.
 */
export function stripPieces(marks: readonly StripMark[], pieceMm: number, piecesMax: number): StripPiece[] {
  const highest = marks[marks.length - 1]?.fromHookMm ?? 0;
  const count = Math.min(piecesMax, Math.floor(highest / pieceMm) + 1);
  return Array.from({ length: count }, (_, i) => {
    const fromMm = i * pieceMm;
    const toMm = fromMm + pieceMm;
    return { fromMm, toMm, marks: marks.filter(({ fromHookMm: at }) => at >= fromMm && at < toMm) };
  });
}

const textMm = 9 * mmPerPoint;

/** A piece as a ruler that runs upwards, true to size: a tick a centimetre or half an inch, figures, a mark a shot. */
export function drawStripPiece(
  { fromMm, toMm, marks }: StripPiece,
  leftMm: number,
  { unitMm, strip: { tickMm, ticksAFigure } }: Ruler = centimetreRuler,
): Item[] {
  const lengthMm = toMm - fromMm;
  const y = (atMm: number) => lengthMm - (atMm - fromMm);
  const ruler: PathStep[] = [
    ["M", leftMm, 0],
    ["L", leftMm, lengthMm],
  ];
  const items: Item[] = [];
  for (let tick = Math.ceil(fromMm / tickMm); tick * tickMm <= toMm; tick++) {
    const atMm = tick * tickMm;
    const long = tick % ticksAFigure === 0;
    ruler.push(["M", leftMm, y(atMm)], ["L", leftMm + (long ? 4 : 2), y(atMm)]);
    if (long) items.push(label(String(Math.round(atMm / unitMm)), leftMm - 1, y(atMm), "end"));
  }
  items.unshift({ kind: "path", steps: ruler, stroke: { ink: "ink", widthMm: 0.2 } });
  let freeBelowMm = Number.POSITIVE_INFINITY;
  for (const { fromHookMm, label: words } of marks) {
    const markMm = y(fromHookMm);
    const textAtMm = Math.min(markMm, freeBelowMm);
    freeBelowMm = textAtMm - textMm * 1.1;
    const steps: PathStep[] = [
      ["M", leftMm, markMm],
      ["L", leftMm + 5, markMm],
      ["L", leftMm + 7, textAtMm],
    ];
    items.push({ kind: "path", steps, stroke: { ink: "ink", widthMm: 0.6 } });
    items.push(label(words, leftMm + 7.8, textAtMm, "start"));
  }
  return items;
}

function label(text: string, xMm: number, middleMm: number, anchor: TextItem["anchor"]): TextItem {
  return {
    kind: "text",
    xMm,
    yMm: middleMm + 0.35 * textMm,
    text,
    sizeMm: textMm,
    face: "regular",
    ink: "ink",
    anchor,
  };
}
