import { describe, expect, test } from "vitest";
import { lengthMm } from "../../src/core/float/float.ts";
import { moveFloat } from "../../src/core/float/moved-float.ts";
import type { HangPoint } from "../../src/core/flow/line-balance.ts";
import { neighbours, withId } from "../../src/core/lists.ts";
import { flatDegrees, floatPictures, floatPose } from "../../src/drawing/float/float-poses.ts";
import { drawFloatState } from "../../src/drawing/float/float-states.ts";
import type { Drawing, PathItem, TextItem } from "../../src/drawing/model.ts";
import type { PictureReference } from "../../src/model/pictures.ts";
import type { SolvedDepth, SolvedRig } from "../../src/model/solved.ts";
import { cardFormats } from "../../src/print/cards/card-formats.ts";
import { tipPicture } from "../../src/print/cards/card-pictures.ts";
import { shotTable } from "../../src/words/tables.ts";
import { pictureRoom, sinkDrawing } from "../../templates/pages/rig-picture.ts";
import { flatItems } from "../support/drawing-checks.ts";
import { drawnApart, pictures } from "../support/drawn-pictures.ts";
import { fallingDots, fallingFaults } from "../support/falling-dots.ts";
import { plotDots } from "../support/plot-dots.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { library, rigs, source, kit } = shippedGuide;
const { textMm } = pictureRoom;

/** Two things of a drawing: how far apart they are drawn, how far apart they are, and whether a mark says that it is shortened. */
interface Gap {
  readonly what: "hook length" | "short gaps";
  readonly drawnMm: number;
  readonly trueMm: number;
  readonly isBroken: boolean;
}

/** What a reader can tell by eye on a phone [mm of the drawing]. */
const seenMm = 0.3;

type At = readonly [x: number, y: number];

const pathsOf = ({ items }: Drawing): PathItem[] =>
  flatItems(items).flatMap((item) => (item.kind === "path" ? [item] : []));
const textsOf = ({ items }: Drawing): TextItem[] =>
  flatItems(items).flatMap((item) => (item.kind === "text" ? [item] : []));
const said = (drawing: Drawing) =>
  textsOf(drawing)
    .map(({ text }) => text)
    .join(" ")
    .replaceAll("\u00A0", " ");
const endsOf = ({ steps }: PathItem): At[] =>
  steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(-2) as unknown as At]));
const discsOf = ({ items }: Drawing) =>
  flatItems(items).flatMap((item) => (item.kind === "circle" && item.fill === "ink" ? [item] : []));
const dotsOf = ({ items }: Drawing) =>
  flatItems(items).flatMap((item) => (item.kind === "circle" && item.fill === "paper" ? [item] : []));

/** The heights at which a drawing has the mark of a line cut short: a slanted white strip between two strokes. */
const breaksOf = (drawing: Drawing): number[] =>
  pathsOf(drawing).flatMap((path) => {
    const ys = endsOf(path).map(([, y]) => y);
    const isStrip = path.fill === "paper" && !path.stroke && ys.length === 4;
    return isStrip ? [(Math.min(...ys) + Math.max(...ys)) / 2] : [];
  });

/** A scale at a side of a picture, from its figures in metres: millimetres of the drawing down from 0 for each of water. */
function depthScaleOf(drawing: Drawing): { zeroMm: number; scale: number } {
  const depths = textsOf(drawing).flatMap(({ text, anchor, xMm, yMm }) =>
    /^[\d.]+.m$/.test(text) ? [{ mm: 1000 * Number.parseFloat(text), anchor, xMm, yMm }] : [],
  );
  const surface = depths.find(({ mm }) => mm === 0)!;
  // One below the other; what dots say beside them stands elsewhere.
  const figures = depths.filter(({ anchor, xMm }) => anchor === surface.anchor && xMm === surface.xMm);
  const at = figures.indexOf(surface);
  const next = figures.findIndex(({ mm }, i) => i > at && mm <= figures[i - 1]!.mm);
  const panel = figures.slice(at, next < 0 ? undefined : next);
  const [zero, deepest] = [panel[0]!, panel.at(-1)!];
  return {
    zeroMm: zero.yMm - 0.35 * textMm,
    scale: (deepest.yMm - zero.yMm) / deepest.mm,
  };
}

/** How far up from the hook a place on the line is, in water that stands or runs. */
function upFrom(shape: readonly HangPoint[] | undefined, fromHookMm: number): number {
  if (!shape) return fromHookMm;
  const at = Math.max(
    1,
    shape.findIndex((one) => one.fromHookMm >= fromHookMm),
  );
  const [a, b] = [shape[at - 1]!, shape[at]!];
  const share = (fromHookMm - a.fromHookMm) / (b.fromHookMm - a.fromHookMm || 1);
  return shape[0]!.depthMm - (a.depthMm + share * (b.depthMm - a.depthMm));
}

/** Held back by a tenth, as most rigs are fished, or by what a rig is for. Common practice, no source. */
const shapeOf = ({ rig }: SolvedRig, { inWater }: SolvedDepth) =>
  inWater?.flow.find(
    (hang) => hang.paceMs === rig.pacesMs[0] && hang.heldBackShare === (rig.heldBackShare ?? 0.1),
  )?.shape;

/** A hook's bend, from its eye and the end of its shank: 0.7 of its height less 0.2 mm. */
function bendOf({ steps }: PathItem): At {
  const [eye, shank] = [steps[0]!.slice(1), steps[1]!.slice(1)] as unknown as [At, At];
  const [dx, dy] = [shank[0] - eye[0], shank[1] - eye[1]];
  const times = (Math.hypot(dx, dy) + 0.2) / 0.7 / Math.hypot(dx, dy);
  return [eye[0] + times * dx, eye[1] + times * dy];
}

/** Where hook, loop, shot and the float's eye of a hanging line are drawn, and where they are. */
function gapsOf(solved: SolvedRig, depth: SolvedDepth, drawing: Drawing): Gap[] {
  const { hookLengthMm, water } = solved.rig;
  const shape = shapeOf(solved, depth);
  const lyingMm = water === "still" ? Math.max(0, depth.overdepthMm) : 0;
  const hook = pathsOf(drawing).find(({ stroke }) => stroke?.ink === "accent" && stroke.cap === "round")!;
  const strand = pathsOf(drawing).find(({ stroke }) => stroke?.dashMm?.[0] === 1.6)!;
  const loop = endsOf(strand).at(-1)!;
  const line = pathsOf(drawing).find(
    (path) =>
      path.stroke?.widthMm === 0.5 &&
      !path.stroke.dashMm &&
      endsOf(path)[0]!.every((at, i) => at === loop[i]),
  )!;
  const shot = [...depth.lineShot].sort((a, b) => a.fromHookMm - b.fromHookMm);
  const discs = discsOf(drawing).sort((a, b) => b.cyMm - a.cyMm);
  const placed = [
    { fromHookMm: 0, yMm: bendOf(hook)[1] },
    { fromHookMm: hookLengthMm, yMm: loop[1] },
    ...shot.map(({ fromHookMm }, i) => ({ fromHookMm, yMm: discs[i]!.cyMm })),
    { fromHookMm: depth.floatToHookMm, yMm: endsOf(line).at(-1)![1] },
  ]
    .filter(({ fromHookMm }) => fromHookMm >= lyingMm)
    .sort((a, b) => a.fromHookMm - b.fromHookMm);
  const breaks = breaksOf(drawing);
  return neighbours(placed).map(([lower, upper]) => ({
    what: lower.fromHookMm === 0 ? "hook length" : "short gaps",
    drawnMm: lower.yMm - upper.yMm,
    trueMm: upFrom(shape, upper.fromHookMm) - upFrom(shape, lower.fromHookMm),
    isBroken: breaks.some((y) => y < lower.yMm && y > upper.yMm),
  }));
}

/** What of a rig is out of scale with nothing said of it. */
function untoldOf(solved: SolvedRig, depth: SolvedDepth, drawing: Drawing): string[] {
  const text = said(drawing);
  if (!text.includes("not to scale")) return ["no word of what is not to scale"];
  const whole = gapsOf(solved, depth, drawing).filter(({ isBroken }) => !isBroken);
  // What is held apart is drawn longer than it is: the scale is that of the shortest.
  const scale = Math.min(
    ...whole.filter(({ trueMm }) => trueMm > 20).map(({ drawnMm, trueMm }) => drawnMm / trueMm),
  );
  const named = /not to scale: (.*)$/.exec(text)?.[1];
  const isNone = named?.startsWith("go by the figures") ?? false;
  return [
    ...(isNone || named?.startsWith("float, shot, hook") ? [] : ["float, shot and hook are not named"]),
    ...whole.flatMap(({ what, drawnMm, trueMm }) =>
      Math.abs(drawnMm - scale * trueMm) > seenMm && !isNone && !named?.includes(what)
        ? [`${what}: ${trueMm} mm drawn ${drawnMm.toFixed(2)}, to scale ${(scale * trueMm).toFixed(2)}`]
        : [],
    ),
  ];
}

const rigOf = (id: string, depthMm: number) => {
  const solved = rigs.find(({ rig }) => rig.id === id)!;
  return [solved, solved.depths.find((one) => one.depthMm === depthMm)!] as const;
};

/** Outlines of the tips of floats, how high and how wide each is drawn. */
const tipsOf = (drawing: Drawing) =>
  pathsOf(drawing)
    .filter(({ fill, steps }) => fill === "accent" && steps.some(([kind]) => kind === "C"))
    .map((path) => {
      const ys = endsOf(path).map(([, y]) => y);
      return Math.max(...ys) - Math.min(...ys);
    });

type Of<K extends PictureReference["picture"]> = Extract<PictureReference, { picture: K }>;
type Reader<K extends PictureReference["picture"]> = (
  reference: Of<K>,
  drawing: Drawing,
) => readonly string[];

const near = (what: string, drawnMm: number, wantedMm: number) =>
  Math.abs(drawnMm - wantedMm) > seenMm ? [`${what}: ${drawnMm.toFixed(2)} for ${wantedMm.toFixed(2)}`] : [];

/** A figure with its unit, which a reader may lay a ruler beside. */
const figure = /\d\s?(mm|cm|m|in|ft|″|′)(?![\p{L}])/u;

/** A drawing that is no measure: where it has a figure in it, it says that it is no scale, or has the mark of a break. */
const notMeasured = (_: PictureReference, drawing: Drawing) =>
  figure.test(said(drawing)) && !/scale|larger/.test(said(drawing)) && breaksOf(drawing).length === 0
    ? [`a figure and nothing of the scale: ${said(drawing)}`]
    : [];

/** What is untrue and not told of, for every kind of picture; one without its line here does not compile. */
const readers: { readonly [K in PictureReference["picture"]]: Reader<K> } = {
  "rig-drawing": ({ rig, depthMm, variant }, drawing) => {
    const [solved, depth] = rigOf(rig, depthMm);
    return untoldOf(solved, moveFloat(depth, solved.rig.water, variant), drawing);
  },
  "spot-rig": ({ swim, spot }, drawing) => {
    const chosen = source.spots!.find((one) => one.swim.id === swim && one.spot.title === spot)!;
    const made = chosen.made!();
    return untoldOf(made, made.depths[0]!, drawing);
  },
  "float-drawing": ({ float: id }, drawing) => {
    const { float } = withId(library.floats, id);
    const outlines = pathsOf(drawing).filter(
      ({ fill, steps }) => fill && steps.some(([kind]) => kind === "C"),
    );
    const [xs, ys] = [0, 1].map((at) => outlines.flatMap((path) => endsOf(path).map((end) => end[at]!)));
    const scale = (Math.max(...ys!) - Math.min(...ys!)) / lengthMm(float);
    const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
    return [
      ...near("width", Math.max(...xs!) - Math.min(...xs!), scale * widest),
      ...near("tip", tipsOf(drawing)[0]!, scale * float.tipShowingMm),
    ];
  },
  "float-chart": ({ floats }, drawing) => {
    const tips = tipsOf(drawing);
    const shown = floats.map((id) => withId(library.floats, id).float.tipShowingMm);
    const scale = tips[0]! / shown[0]!;
    expect(tips).toHaveLength(shown.length);
    return shown.flatMap((mm, i) => near(`tip of ${floats[i]}`, tips[i]!, scale * mm));
  },
  // Their figures are of the tip, which stands on a scale beside them: float/float-states.test.ts.
  "float-states": (reference, drawing) =>
    said(drawing).includes("tip, mm") ? [] : notMeasured(reference, drawing),
  "pattern-chart": ({ rigs: [id], depthMm }, drawing) => {
    const [{ rig }, depth] = rigOf(id!, depthMm);
    const { lineShot, lockShot, overdepthMm } = depth;
    const { zeroMm, scale } = depthScaleOf(drawing);
    const all = discsOf(drawing).sort((a, b) => b.cyMm - a.cyMm);
    expect(all).toHaveLength(lineShot.length + lockShot.length);
    // In still water what is nearer to the hook than it is set over depth lies on the bed, beyond where the line comes down.
    const lies = ({ fromHookMm }: { fromHookMm: number }) =>
      rig.water === "still" && fromHookMm <= overdepthMm;
    const laid = all.slice(0, lineShot.filter(lies).length);
    const onBed = laid.flatMap(({ cyMm, radiusMm }) =>
      near("shot on the bed", cyMm + radiusMm, zeroMm + scale * depth.depthMm),
    );
    const discs = all.slice(laid.length, lineShot.length);
    const shot = lineShot.filter((one) => !lies(one)).sort((a, b) => a.fromHookMm - b.fromHookMm);
    const isTold = /short gaps/.test(said(drawing));
    const [falling, ...more] = fallingDots(drawing);
    expect(more).toEqual([]);
    const sinks = depth.inWater!.sink;
    const sink = sinks.find(({ landing }) => landing === "straight") ?? sinks[0]!;
    const fallen = fallingFaults(falling!, sink, { zeroMm, scale });
    const touch = neighbours(discs).map(
      ([lower, upper]) => lower.cyMm - upper.cyMm - lower.radiusMm - upper.radiusMm < seenMm,
    );
    const hanging = discs.flatMap((disc, i) => {
      const wanted = scale * (shot[i]!.fromHookMm - shot[0]!.fromHookMm);
      // One has its place, or is kept off it by its neighbours, or by what is at the float.
      const isKeptOff = touch[i - 1] || touch[i] || i === discs.length - 1;
      const off = near(`shot ${i} from the lowest`, discs[0]!.cyMm - disc.cyMm, wanted);
      return isKeptOff && isTold ? [] : off;
    });
    return [...onBed, ...hanging, ...fallen];
  },
  "hang-plot": ({ rig: id, depthMm }, drawing) => {
    const [{ rig }, { inWater }] = rigOf(id, depthMm);
    const { zeroMm, scale } = depthScaleOf(drawing);
    const shown = inWater!.flow.filter(
      ({ paceMs, heldBackShare }) => paceMs === rig.pacesMs[0] && [0, 0.5, 1].includes(heldBackShare),
    );
    const lines = pathsOf(drawing).filter(
      ({ steps, fill, stroke }) => steps.length > 12 && !fill && stroke?.widthMm === 0.6,
    );
    expect(lines).toHaveLength(shown.length);
    // Each is named in the picture, and told in the key below.
    expect(textsOf(drawing).filter(({ face }) => face === "bold")).toHaveLength(shown.length);
    return lines.flatMap((line, i) => {
      const [hook, eye] = [endsOf(line)[0]!, endsOf(line).at(-1)!];
      const { leadMm, shape } = shown[i]!;
      // Panels that stand below each other have surfaces of their own.
      const fallMm = scale * (shape[0]!.depthMm - shape.at(-1)!.depthMm);
      return [
        ...near("lead", hook[0] - eye[0], scale * leadMm),
        ...near("fall", hook[1] - eye[1], fallMm),
        ...(i === 0 ? near("depth of the hook", hook[1] - zeroMm, scale * shape[0]!.depthMm) : []),
      ];
    });
  },
  // Frames against the data of every rig: film/films.test.ts.
  film: () => [],
  bed: ({ swim, line }, drawing) => {
    const { zeroMm, scale } = depthScaleOf(drawing);
    const soundings = [...withId(library.swims, swim).lines[line]!.soundings].sort(
      (a, b) => a.fromBankMm - b.fromBankMm,
    );
    const dots = dotsOf(drawing);
    return [
      ...soundings.flatMap(({ depthMm }, i) => near("sounding", dots[i]!.cyMm - zeroMm, scale * depthMm)),
      ...(/depths drawn [\d.]+ × as tall/.test(said(drawing)) ? [] : ["nothing of the two scales"]),
    ];
  },
  "swim-days": ({ swim, of }, drawing) => {
    if (of === "pace") return [];
    const { zeroMm, scale } = depthScaleOf(drawing);
    const found = library.notes
      .filter((one) => one.swim === swim)
      .flatMap(({ depths }) => depths.map(({ depthMm }) => scale * depthMm));
    const drawn = plotDots(drawing).map(({ cyMm }) => cyMm - zeroMm);
    expect(drawn).toHaveLength(found.length);
    const rising = (list: readonly number[]) => [...list].sort((a, b) => a - b);
    return rising(found).flatMap((wanted, i) => near("depth of a day", rising(drawn)[i]!, wanted));
  },
  knot: notMeasured,
  fish: notMeasured,
  bait: ({ bait }, drawing) => {
    const { looks } = library.baits.find((one) => one.bait.id === bait)!;
    const label = textsOf(drawing).find(({ text }) => text.startsWith(`${kit.figures.diameter(10)},`))!;
    const bar = pathsOf(drawing)
      .map(endsOf)
      .find(([a, b]) => b && a![1] === b[1] && Math.abs(a![1] - (label.yMm - 0.35 * textMm)) < 1e-6)!;
    const scale = (bar[1]![0] - bar[0]![0]) / 10;
    const [larger, smaller] = label.text
      .match(/\d+ : \d+/)![0]
      .split(" : ")
      .map(Number);
    if (Math.abs(scale - larger! / smaller!) > 1e-6) return [`${label.text} beside a scale of ${scale}`];
    const body = pathsOf(drawing).flatMap((path) => (path.fill ? endsOf(path) : []));
    const round = flatItems(drawing.items).flatMap((item) =>
      item.kind === "circle"
        ? [
            [item.cxMm - item.radiusMm, item.cyMm - item.radiusMm] as const,
            [item.cxMm + item.radiusMm, item.cyMm + item.radiusMm] as const,
          ]
        : [],
    );
    const all = [...body, ...round];
    const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
    const reach = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
    // Curled up or with several on a hook it reaches less or more far than one laid straight.
    return reach > 0.35 * scale * looks!.lengthMm && reach < 2.4 * scale * looks!.lengthMm
      ? []
      : [`${reach.toFixed(1)} mm for ${scale} × ${looks!.lengthMm}`];
  },
  scene: notMeasured,
  image: () => [],
};

describe("what is drawn is to scale, or said not to be", () => {
  test.each(Object.entries(pictures))("%s", (kind, references) => {
    const read = readers[kind as "knot"] as Reader<PictureReference["picture"]>;
    const untold = references.flatMap((reference) =>
      drawnApart(reference).flatMap(({ drawing }) =>
        read(reference, drawing).map((one) => `${JSON.stringify(reference)}: ${one}`),
      ),
    );
    expect(untold).toEqual([]);
  });

  test("a sinking bait, second by second, to the depths beside it", () => {
    for (const rig of rigs)
      for (const depth of rig.depths) {
        const drawing = sinkDrawing(rig, depth, kit)!;
        const { sink, sister } = depth.inWater!;
        const shown = sink.flatMap((one, i) => [one, ...(sister ? [sister.sink[i]!] : [])]);
        const columns = fallingDots(drawing);
        expect(columns).toHaveLength(shown.length);
        for (const [i, column] of columns.entries())
          expect(fallingFaults(column, shown[i]!, depthScaleOf(drawing))).toEqual([]);
      }
  });
});

/** The tip that stands in a text [mm]. */
const toldIn = (text: string | undefined) => Number(/(\d+)\smm/.exec(text ?? "")?.[1]);

/** The top of an outline that goes down a tip and up again, midway between the places that it starts and ends with. */
function tipTop(outline: PathItem): number {
  const [start, end] = [endsOf(outline)[0]!, endsOf(outline).at(-1)!];
  return (start[1] + end[1]) / 2;
}

describe("a tip is drawn as high as it is told", () => {
  test.each(rigs)("$rig.id, beside each state of its float", (solved) => {
    for (const [i, depth] of solved.depths.entries())
      for (const picture of floatPictures) {
        const drawing = drawFloatState(picture, solved, depth, 80, kit, { textMm });
        const pose = drawing && floatPose(picture, solved, depth, kit);
        if (!pose || pose.tipMm === null || pose.leanDegrees === flatDegrees) continue;
        const isAsSet = picture === "depth-right";
        const told = toldIn(
          isAsSet ? shotTable(solved, kit).rows[i]!.at(-1) : said(drawing).split("tip, mm")[1],
        );
        if (Number.isNaN(told)) continue;
        const [zero, next] = textsOf(drawing).filter(({ text }) => /^\d+$/.test(text));
        const perMm = (zero!.yMm - next!.yMm) / (Number(next!.text) - Number(zero!.text));
        const tip = pathsOf(drawing).findLast(({ fill, stroke }) => fill === "accent" && stroke)!;
        const drawnMm = (zero!.yMm - 0.35 * zero!.sizeMm - tipTop(tip)) / perMm;
        expect([picture, drawnMm / Math.cos((pose.leanDegrees * Math.PI) / 180)]).toEqual([
          picture,
          expect.closeTo(told, 6),
        ]);
      }
  });

  test.each(rigs)("$rig.id, true to size on its card", (solved) => {
    const { alt, widthMm, heightMm, draw } = tipPicture(solved, kit, cardFormats.A6.fronts[0]);
    const paths = flatItems(draw(widthMm, heightMm)).flatMap((item) => (item.kind === "path" ? [item] : []));
    const tip = paths.find(({ fill }) => fill === "accent")!;
    const surface = paths.find(({ fill, steps }) => !fill && steps[0]![1] === 0)!;
    const top = Math.min(...endsOf(tip).map(([, y]) => y));
    expect(endsOf(surface)[0]![1] - top).toBeCloseTo(toldIn(alt), 6);
  });
});
