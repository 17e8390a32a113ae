import type { WordKeyIn } from "../../words/words.ts";
import { arrow, bold, circle, type Point, point, polyline, rectangle, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathItem } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { mirrored, rotated } from "../transform.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";

const disgorgerSteps = ["on-the-line", "push", "out"] as const;
type DisgorgerStep = (typeof disgorgerSteps)[number];

const accent = { ink: "accent", widthMm: 0.9 } as const;
/** Height of the line that is held tight out of the mouth, in hundredths of the width. */
const lineY = 24;

/** Freeing a hook that is out of sight: slot on the tight line, down to the bend, a small push, and out together. */
export function drawDisgorger(box: Box, kit: DrawingKit): Drawing[] {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const textMm = sceneTextMm(box);
  const label = (
    key: WordKeyIn<"drawing.scenes.disgorger.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, kit.words(`drawing.scenes.disgorger.say.${key}`), textMm, { ink: "soft", anchor });
  const hookMm = mm(7);
  /** Shank along the line, bend to the right. */
  const hook = (bend: Point) =>
    rotated(mirrored(parts.hook.draw({ bend, heightMm: hookMm }), bend.xMm), -90, bend);
  const line = (toX: number) => polyline([at(2, lineY), at(toX, lineY)], strandStrokes["hook length"]);
  const tight = [
    label("tight", at(2, lineY + 10)),
    ...arrow(at(14, lineY + 5), at(4, lineY + 5), accent, 2.6),
  ];

  const scenes: Readonly<Record<DisgorgerStep, () => Item[]>> = {
    "on-the-line": () => [
      line(70),
      ...hook(at(77, lineY)),
      ...stick(grid, at(30, lineY - 12)),
      ...arrow(at(31, 12), at(31, lineY - 3), accent, 2.6),
      label("slot", at(34, 8)),
    ],
    push: () => [
      line(70),
      ...hook(at(77, lineY)),
      ...stick(grid, at(72, lineY)),
      ...arrow(at(32, 33), at(46, 33), accent, 2.6),
      label("push", at(39, 40), "middle"),
    ],
    out: () => [
      line(38),
      ...hook(at(45, lineY)),
      ...stick(grid, at(40, lineY)),
      ...arrow(at(44, 33), at(28, 33), accent, 2.6),
      label("together", at(34, 40), "middle"),
    ],
  };
  return stepPictures("disgorger", disgorgerSteps, box, kit, (step) => [
    ...head(grid),
    ...scenes[step](),
    ...tight,
  ]);
}

/** The head of a fish cut open, mouth to the left. */
function head({ at, mm }: Hundredths): Item[] {
  const curve = (a: Point, b: Point, c: Point) => ["C", a.xMm, a.yMm, b.xMm, b.yMm, c.xMm, c.yMm] as const;
  const upperLip = at(54, 19);
  const lowerLip = at(54, 29);
  const outline: PathItem = {
    kind: "path",
    steps: [
      ["M", upperLip.xMm, upperLip.yMm],
      curve(at(64, 10), at(84, 4), at(99, 5)),
      ["L", at(99, 43).xMm, at(99, 43).yMm],
      curve(at(84, 44), at(64, 38), lowerLip),
      curve(at(66, 30), at(80, 32), at(88, 24)),
      curve(at(80, 16), at(66, 18), upperLip),
      ["Z"],
    ],
    fill: "water",
    stroke: bold,
  };
  return [
    outline,
    circle(at(72, 12), mm(1.8), { fill: "paper", stroke: thin }),
    circle(at(72, 12), mm(0.8), { fill: "ink" }),
  ];
}

/** The disgorger lying level, its slotted end to the right. */
function stick({ mm }: Hundredths, end: Point): Item[] {
  const half = mm(1.1);
  const startMm = Math.max(mm(1), end.xMm - mm(34));
  return [
    rectangle(startMm, end.yMm - half, end.xMm - startMm, 2 * half, { fill: "paper", stroke: bold }),
    polyline([point(end.xMm - mm(6), end.yMm), end], bold),
  ];
}
