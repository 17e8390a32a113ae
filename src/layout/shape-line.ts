import type { PathStep, TextItem } from "../drawing/model.ts";
import type { FileFonts, PathCommand } from "./font-file.ts";
import type { Fonts, GlyphRun, Typeface } from "./fonts.ts";

/** A line of text shaped: its glyphs, and where it starts once its anchor is taken off. */
interface ShapedLine {
  readonly typeface: Typeface;
  readonly run: GlyphRun;
  readonly xMm: number;
}

export function shapeLine(item: TextItem, fonts: Fonts): ShapedLine {
  const typeface = fonts.faces[item.face];
  const run = typeface.layout(item.text);
  const widthMm = (run.width * item.sizeMm) / typeface.source.unitsPerEm;
  const before = { start: 0, middle: 0.5, end: 1 }[item.anchor];
  return { typeface, run, xMm: item.xMm - before * widthMm };
}

/** The outlines of a line of text. */
export function lineOutlines(item: TextItem, fonts: FileFonts): PathStep[] {
  const { run, xMm } = shapeLine(item, fonts);
  const file = fonts.files[item.face];
  const scale = item.sizeMm / file.unitsPerEm;
  const steps: PathStep[] = [];
  let pen = 0;
  for (const { id, advance, kern } of run.glyphs) {
    const from = pen;
    const x = (units: number) => xMm + (from + units) * scale;
    const y = (units: number) => item.yMm - units * scale;
    steps.push(...glyphSteps(file.path(id), x, y));
    pen += advance + kern;
  }
  return steps;
}

type Axis = (units: number) => number;

/** Quadratic curves are written as the cubic ones they equal. */
function glyphSteps(commands: readonly PathCommand[], x: Axis, y: Axis): PathStep[] {
  let atX = 0;
  let atY = 0;
  return commands.map(({ command, args }): PathStep => {
    if (command === "closePath") return ["Z"];
    const [fromX, fromY] = [atX, atY];
    atX = args[args.length - 2]!;
    atY = args[args.length - 1]!;
    if (command === "moveTo") return ["M", x(atX), y(atY)];
    if (command === "lineTo") return ["L", x(atX), y(atY)];
    const third = (a: number, b: number) => a + (2 / 3) * (b - a);
    const [c1x, c1y, c2x, c2y] =
      command === "quadraticCurveTo"
        ? [third(fromX, args[0]!), third(fromY, args[1]!), third(atX, args[0]!), third(atY, args[1]!)]
        : [args[0]!, args[1]!, args[2]!, args[3]!];
    return ["C", x(c1x), y(c1y), x(c2x), y(c2y), x(atX), y(atY)];
  });
}
