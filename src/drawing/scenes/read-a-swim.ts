import type { WordKeyIn } from "../../words/words.ts";
import {
  accent,
  arrow,
  bold,
  circle,
  curveTo,
  type Point,
  pathFrom,
  polygon,
  polyline,
  text,
  thin,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth as curved } from "../smooth.ts";
import { ground } from "./ground.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";

const readSteps = ["pool", "river"] as const;
type ReadStep = (typeof readSteps)[number];

type Anchor = "start" | "middle" | "end";

/** The water is drawn this much less deep than wide, so that a page has room for its words. */
const flatness = 0.8;

/** Where fish are likely, seen from above: along the bank of a pool, and in a bend of a river. */
export function drawReadASwim(box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const grid: Hundredths = { at: (x, y) => at(x, flatness * y), mm };
  const textMm = sceneTextMm(box);
  const label = (
    key: WordKeyIn<"drawing.scenes.read.say">,
    [x, y]: readonly [number, number],
    anchor: Anchor = "middle",
  ) => text(grid.at(x, y), kit.words(`drawing.scenes.read.say.${key}`), textMm, { face: "bold", anchor });
  const scenes: Readonly<Record<ReadStep, () => Item[]>> = {
    pool: () => [...pool(grid), ...poolNames.map(([key, place, anchor]) => label(key, place, anchor))],
    river: () => [...river(grid), ...riverNames.map(([key, place, anchor]) => label(key, place, anchor))],
  };
  return stepPictures("read", readSteps, box, kit, (step) => scenes[step]());
}

type Name = readonly [
  key: WordKeyIn<"drawing.scenes.read.say">,
  place: readonly [number, number],
  anchor?: Anchor,
];

const poolNames: readonly Name[] = [
  ["wind", [20, 7], "end"],
  ["inflow", [76, 9], "end"],
  ["bubbles", [46, 28]],
  ["lilies", [24, 48]],
  ["shelf", [46, 63]],
  ["tree", [86, 58]],
  ["reeds", [14, 74]],
  ["you", [50, 88]],
];

function pool(grid: Hundredths): Item[] {
  const { at, mm } = grid;
  return [
    polygon([at(0, 0), at(100, 0), at(100, 78), at(0, 78)], "water"),
    shade(grid, 86, 71, 9),
    ...ground([at(0, 78), at(38, 78), at(62, 78), at(100, 78)]),
    ...tree(grid, 88, 80, 8),
    // The edge of the shelf.
    smooth(grid, [0, 58], [30, 50], [60, 62], [100, 38], { ink: "soft", widthMm: 0.5, dashMm: [1.6, 1.2] }),
    ...[4, 7, 10, 13, 16, 19, 22, 25].flatMap((x, i) => reed(at(x, 67.5 - (i % 2) * 2), mm(2))),
    ...spots([
      [18, 33],
      [24, 31],
      [30, 34],
      [21, 37.5],
      [27.5, 38],
    ]).map(([x, y]) => circle(at(x, y), mm(2.6), { fill: "paper", stroke: thin })),
    ...spots([
      [42, 20],
      [45, 17],
      [48.5, 20.5],
      [51, 17.5],
    ]).map(([x, y]) => circle(at(x, y), Math.max(0.5, mm(0.8)), { stroke: thin })),
    ...arrow(at(22, 5.4), at(42, 5.4), { ink: "ink", widthMm: 0.6 }, 2.4),
    // A ditch that runs in.
    ...arrow(at(98, 3), at(84, 14), accent, 2.6),
    ...seat(grid, 50, 79.5),
  ];
}

const riverNames: readonly Name[] = [
  ["stream", [4, 21], "start"],
  ["bush", [45, 13], "start"],
  ["boulder", [71, 31], "start"],
  ["crease", [80, 55]],
  ["slack", [82, 70]],
  ["you", [30, 90.2]],
];

function river(grid: Hundredths): Item[] {
  const { at, mm } = grid;
  const bank = [at(0, 80), at(44, 80), at(52, 72), at(58, 66), at(61, 72), at(66, 82), at(100, 83)];
  return [
    polygon([...bank, at(100, 4), at(66, 2.2), at(30, 3), at(0, 2)], "water"),
    ...ground(bank),
    // The far bank, the other way up.
    smooth(grid, [0, 2], [30, 4], [66, 1], [100, 4], bold),
    shade(grid, 36, 11, 6),
    ...tree(grid, 36, 7, 6),
    ...[25, 40, 55].flatMap((y) => parts.flowArrow.draw({ from: at(4, y), lengthMm: mm(18) })),
    // Behind the point quick water meets slow water, and the slow water turns back.
    smooth(grid, [59, 65], [70, 59], [84, 58], [100, 60], {
      ink: "accent",
      widthMm: 0.6,
      dashMm: [1.6, 1.2],
    }),
    ...curl(grid, 76, 76),
    boulder(grid, 62, 29),
    ...curl(grid, 70, 38),
    ...seat(grid, 30, 81.5),
  ];
}

function boulder({ at }: Hundredths, x: number, y: number): Item {
  const outline = [
    [-5, 2],
    [-4, -3],
    [0, -4.5],
    [4.5, -2.5],
    [5.5, 1.5],
    [1, 4],
  ] as const;
  return polygon(
    outline.map(([dx, dy]) => at(x + dx, y + dy)),
    "paper",
    bold,
  );
}

const spots = (places: readonly (readonly [number, number])[]) => places;

function smooth(
  { at }: Hundredths,
  from: readonly [number, number],
  a: readonly [number, number],
  b: readonly [number, number],
  to: readonly [number, number],
  stroke: Stroke,
): Item {
  const [p, q, r, s] = [from, a, b, to].map(([x, y]) => at(x, y)) as [Point, Point, Point, Point];
  return pathFrom(p, [curveTo(q, r, s)], stroke);
}

/** One stalk with a leaf to each side. */
function reed({ xMm, yMm }: Point, mm: number): Item[] {
  return [-0.5, 0, 0.5].map((lean) =>
    polyline(
      [
        { xMm, yMm },
        { xMm: xMm + lean * mm, yMm: yMm - 1.6 * mm },
      ],
      thin,
    ),
  );
}

/** A crown from above with its scalloped rim, and the trunk with a few boughs in it. */
function tree({ at, mm }: Hundredths, x: number, y: number, size: number): Item[] {
  const around = (share: number, of: number, at360: number) => {
    const turn = (at360 * 2 * Math.PI) / of;
    return at(x + share * size * Math.cos(turn), y + share * size * Math.sin(turn));
  };
  const rim = Array.from({ length: 18 }, (_, i) => around(i % 2 === 0 ? 1.04 : 0.86, 18, i));
  return [
    polygon(curved(rim, true), "paper", thin),
    ...[0, 1, 2, 3, 4].map((i) => polyline([at(x, y), around(0.55, 5, i + 0.3)], thin)),
    circle(at(x, y), mm(0.16 * size), { fill: "ink" }),
  ];
}

/** What lies in the shade of a tree on the bank. */
function shade({ at }: Hundredths, x: number, y: number, size: number): Item {
  const edge = Array.from({ length: 12 }, (_, i) => {
    const turn = (i * Math.PI) / 6;
    return at(x + size * Math.cos(turn), y + 0.8 * size * Math.sin(turn));
  });
  return polygon(curved(edge, true), "faint");
}

/** Water that turns round on itself. */
function curl({ at }: Hundredths, x: number, y: number): Item[] {
  const [a, b, c, d] = [at(x + 4, y), at(x + 4, y - 4.4), at(x - 4, y - 4.4), at(x - 3.6, y)];
  return [pathFrom(a, [curveTo(b, c, d)], thin), ...arrow(d, at(x - 3, y + 2.4), thin, 1.8)];
}

/** Where you sit: a dot in a ring, with the way you look. */
function seat({ at, mm }: Hundredths, x: number, y: number): Item[] {
  return [
    circle(at(x, y), Math.max(1, mm(1.8)), { fill: "accent" }),
    ...arrow(at(x, y - 3), at(x, y - 11), accent, 2.6),
  ];
}
