import type { PathStep, TextItem } from "../drawing/model.ts";
import type { FileFonts, PathCommand } from "./font-file.ts";
import type { Fonts } from "./fonts.ts";

/** Where a line of text starts once its anchor is taken off [mm]. */
export function lineStartMm({ xMm, text, sizeMm, face, anchor }: TextItem, { measure }: Fonts): number {
  if (anchor === "start") return xMm;
  return xMm - (anchor === "middle" ? 0.5 : 1) * measure(text, sizeMm, face);
}

/** The outlines of a line of text. */
export function lineOutlines(item: TextItem, fonts: FileFonts): PathStep[] {
  const run = fonts.faces[item.face].layout(item.text);
  const startMm = lineStartMm(item, fonts);
  const file = fonts.files[item.face];
  const scale = item.sizeMm / file.unitsPerEm;
  const steps: PathStep[] = [];
  let pen = 0;
  for (const { id, advance, kern } of run.glyphs) {
    const from = pen;
    const x = (units: number) => startMm + (from + units) * scale;
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
