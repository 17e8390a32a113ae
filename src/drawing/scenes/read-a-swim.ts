import type { WordKeyIn } from "../../words/words.ts";
import {
  arrow,
  bold,
  circle,
  curveTo,
  type Point,
  pathFrom,
  point,
  polygon,
  polyline,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth as curved } from "../smooth.ts";
import { anglerFromAbove, bankFromAbove, crownFromAbove, fishFromAbove } from "./from-above.ts";
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
    pool: () => [...pool(grid, box), ...poolNames.map(([key, place, anchor]) => label(key, place, anchor))],
    river: () => [
      ...river(grid, box),
      ...riverNames.map(([key, place, anchor]) => label(key, place, anchor)),
    ],
  };
  return stepPictures("read", readSteps, box, kit, (step) => scenes[step]());
}

type Name = readonly [
  key: WordKeyIn<"drawing.scenes.read.say">,
  place: readonly [number, number],
  anchor?: Anchor,
];

const poolNames: readonly Name[] = [
  ["wind", [18, 7], "end"],
  ["inflow", [92, 31], "end"],
  ["bubbles", [39, 30]],
  ["lilies", [15, 43]],
  ["deep", [62, 41]],
  ["shelf", [45.5, 61], "start"],
  ["fish", [57, 21.4], "start"],
  ["tree", [72, 75], "end"],
  ["reeds", [13, 67]],
  ["you", [47, 90], "start"],
];

/** A place by the picture's grid, and how a fish is turned there [degrees]. */
type FishPlace = readonly [x: number, y: number, degrees: number];

const shoal = ({ at, mm }: Hundredths, places: readonly FishPlace[]): Item[] =>
  places.flatMap(([x, y, degrees]) => fishFromAbove(at(x, y), mm(8), degrees));

function pool(grid: Hundredths, box: Box): Item[] {
  const { at, mm } = grid;
  const edgeOfShelf = curved([at(0, 55), at(26, 50), at(50, 53), at(74, 46), at(94, 37)]);
  return [
    polygon([at(0, 0), at(100, 0), at(100, 78), at(0, 78)], "water"),
    ...shade(grid, 83, 69, 9, [79, 66, 0]),
    ...farBank(grid),
    ...bankFromAbove([at(0, 78), at(38, 77.4), at(66, 78.4), at(100, 78)], box, [
      at(32, 0).xMm,
      at(66, 0).xMm,
    ]),
    ...shelfEdge(edgeOfShelf),
    ...[4, 7, 10, 13, 16, 19, 22].flatMap((x, i) => reed(at(x, 77 - (i % 2) * 1.6), mm(2.6))),
    ...spots([
      [8, 26],
      [14.5, 23.5],
      [21, 26.5],
      [11.5, 31.5],
      [18.5, 32],
    ]).map((place, i) => lilyPad(at(...place), mm(2.8), 0.7 + 1.3 * i)),
    ...spots([
      [35, 18],
      [38, 14.5],
      [41.5, 18.5],
      [44.5, 15],
      [38.6, 21],
    ]).map(([x, y]) => circle(at(x, y), Math.max(0.5, mm(0.8)), { fill: "paper", stroke: thin })),
    ...arrow(at(20, 5.4), at(38, 5.4), { ink: "ink", widthMm: 0.6 }, 2.4),
    ...arrow(at(99.5, 16), at(86, 16), bold, 2.4),
    ...crownFromAbove(at(87, 80), mm(8)),
    ...shoal(grid, [
      [25, 72, 0],
      [25, 31, 20],
      [48, 20, -15],
      [37, 46, 6],
      [76, 19, 8],
      [89, 44, 60],
      [79, 66, 0],
    ]),
    ...seat(grid, 40, 82),
  ];
}

/** Far banks at the right, with a ditch between that runs into the pool. */
function farBank({ at }: Hundredths): Item[] {
  const shore = (points: readonly Point[], corner: Point): Item[] => [
    polygon([...points, corner], "paper"),
    polyline(points, bold),
  ];
  return [
    ...shore([at(95, 0), at(94, 7), at(96, 12), at(100, 12.6)], at(100, 0)),
    ...shore([at(100, 19.4), at(96, 20), at(94, 28), at(95.6, 50), at(100, 62)], at(100, 40)),
  ];
}

/** The edge of a shelf, with strokes down to the deep side, as maps show a drop. */
function shelfEdge(edge: readonly Point[]): Item[] {
  const strokes = edge.flatMap((from, i) =>
    i % 2 === 1 ? [polyline([from, point(from.xMm + 0.4, from.yMm - 1.9)], thinSoft)] : [],
  );
  return [...strokes, polyline(edge, { ink: "soft", widthMm: 0.5, dashMm: [1.6, 1.2] })];
}

/** A leaf that floats, with its notch. */
function lilyPad(middle: Point, radiusMm: number, turn: number): Item {
  const at = (share: number) =>
    point(
      middle.xMm + radiusMm * Math.cos(turn + 2 * Math.PI * share),
      middle.yMm + radiusMm * Math.sin(turn + 2 * Math.PI * share),
    );
  const rim = Array.from({ length: 15 }, (_, i) => at(0.06 + (0.88 * i) / 14));
  return polygon([middle, ...rim], "paper", thin);
}

const riverNames: readonly Name[] = [
  ["stream", [4, 22], "start"],
  ["bush", [48, 19], "start"],
  ["boulder", [70, 29], "start"],
  ["crease", [76, 52]],
  ["fish", [78.6, 36.6], "start"],
  ["slack", [87, 79]],
  ["you", [37, 90.2], "start"],
];

function river(grid: Hundredths, box: Box): Item[] {
  const { at, mm } = grid;
  const edge = [
    at(0, 79),
    at(42, 80),
    at(51, 74),
    at(56, 66),
    at(60, 66),
    at(64, 76),
    at(70, 82),
    at(100, 83),
  ];
  const far = curved([at(0, 4), at(30, 6), at(66, 3), at(100, 6)]);
  return [
    polygon([at(0, 0), at(100, 0), at(100, 84), at(0, 84)], "water"),
    polygon([...far, at(100, 0), at(0, 0)], "paper"),
    polyline(far, bold),
    ...shade(grid, 38, 17, 6),
    ...crownFromAbove(at(38, 11.4), mm(5.6)),
    ...bankFromAbove(curved(edge), box, [at(22, 0).xMm, at(56, 0).xMm]),
    ...[28, 42, 56].flatMap((y) => parts.flowArrow.draw({ from: at(4, y), lengthMm: mm(20) })),
    // Behind the point quick water meets slow water, and the slow water turns back.
    smooth(grid, [60, 64], [70, 58], [84, 57], [100, 59], { ...bold, dashMm: [1.6, 1.2] }),
    ...curl(grid, 74, 74),
    boulder(grid, 62, 29),
    ...curl(grid, 70, 39),
    ...shoal(grid, [
      [41, 25, 10],
      [70, 34, 0],
      [68, 63.5, -8],
      [82, 61.5, 0],
      [79, 70, 12],
    ]),
    ...seat(grid, 30, 84),
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

/** Stalks that stand out of the water together. */
function reed({ xMm, yMm }: Point, mm: number): Item[] {
  return [-0.4, 0, 0.4].map((lean) =>
    polyline(
      [
        { xMm, yMm },
        { xMm: xMm + lean * mm, yMm: yMm - 1.6 * mm },
      ],
      thin,
    ),
  );
}

/** What lies in the shade of a tree on the bank: hatched, as a tone would be light on a dark page; clear of a fish in it. */
function shade({ at }: Hundredths, x: number, y: number, size: number, fish?: FishPlace): Item[] {
  return [-0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75].flatMap((up) => {
    const half = size * Math.sqrt(1 - up * up);
    const level = y + 0.9 * size * up;
    const isBeside = fish && Math.abs(level - fish[1]) < fishFree.up;
    const gap = isBeside ? [fish[0] - fishFree.along, fish[0] + fishFree.along] : [];
    const ends = [x - half, ...gap, x + half];
    return ends.flatMap((from, i) => {
      const to = ends[i + 1];
      return i % 2 === 0 && to !== undefined && to - from > 0.5
        ? [polyline([at(from, level), at(to, level)], thinSoft)]
        : [];
    });
  });
}

/** Hundredths of the picture that are kept free round a fish. */
const fishFree = { along: 5.4, up: 2.4 } as const;

/** Water that turns round on itself. */
function curl({ at }: Hundredths, x: number, y: number): Item[] {
  const [a, b, c, d] = [at(x + 4, y), at(x + 4, y - 4.4), at(x - 4, y - 4.4), at(x - 3.6, y)];
  return [pathFrom(a, [curveTo(b, c, d)], thin), ...arrow(d, at(x - 3, y + 2.4), thin, 1.8)];
}

/** Where you sit, with your rod out over the water. */
function seat({ at, mm }: Hundredths, x: number, y: number): Item[] {
  return [polyline([at(x + 0.6, y - 4), at(x + 3, y - 21)], bold), ...anglerFromAbove(at(x, y), mm(1.35))];
}
