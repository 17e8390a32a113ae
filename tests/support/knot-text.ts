import { placeAt } from "../../src/drawing/curve.ts";
import type { Box } from "../../src/drawing/kit.ts";
import { crossingsOf } from "../../src/drawing/knots/crossings.ts";
import { drawKnotStep, fitFrame, stepStrands } from "../../src/drawing/knots/draw-knot.ts";
import type { KnotPicture } from "../../src/model/knot-picture.ts";
import { flatItems } from "./drawing-checks.ts";
import { drawingKit } from "./drawing-kit.ts";

const tenth = (value: number) => String(Math.round(value * 10) / 10 || 0);

/**
 * A step of a knot as it is to be followed: each strand from its start, what it passes over and under on its way, and
 * the words of the picture. To a tenth of a millimetre, so that it is the same wherever it is reckoned.
 */
export function knotText(knot: KnotPicture, index: number, box: Box): string {
  const drawing = drawKnotStep(knot, index, box, drawingKit);
  const { strands, eyes } = stepStrands(knot.steps[index]!, fitFrame(knot.frame, box));
  const all = [...strands, ...eyes];
  const passes = crossingsOf(all).flatMap(({ x, y, over, under }) => [
    { ...over, words: `over ${all[under.strand]!.name}`, x, y },
    { ...under, words: `under ${all[over.strand]!.name}`, x, y },
  ]);
  const told = all.flatMap(({ name, pattern, curve, widthMm, tagFromMm }, strand) => {
    const place = (s: number) => {
      const { x, y } = placeAt(curve, s);
      return `${tenth(x)} ${tenth(y)}`;
    };
    const tag = tagFromMm < curve.length ? `, tag end from ${tenth(tagFromMm)}` : "";
    return [
      `${name}: ${pattern}, ${tenth(widthMm)} wide, ${tenth(curve.length)} long${tag}`,
      `  from ${place(0)}`,
      ...passes
        .filter((pass) => pass.strand === strand)
        .sort((a, b) => a.s - b.s)
        .map(({ s, words, x, y }) => `  ${tenth(s)} ${words} at ${tenth(x)} ${tenth(y)}`),
      `  to ${place(curve.length)}`,
    ];
  });
  const labels = flatItems(drawing.items).flatMap((item) =>
    item.kind === "text" ? [`text ${tenth(item.xMm)} ${tenth(item.yMm)} "${item.text}"`] : [],
  );
  return [
    `${tenth(drawing.widthMm)} × ${tenth(drawing.heightMm)} mm`,
    `title: ${drawing.title}`,
    `description: ${drawing.description}`,
    ...told,
    ...labels,
    "",
  ].join("\n");
}
