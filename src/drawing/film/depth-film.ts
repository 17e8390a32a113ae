import type { GuideStep } from "../../core/depth/guide-step.ts";
import { lyingMm } from "../../core/depth/lying.ts";
import { first, rising } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { untoldOther } from "../../words/untold-text.ts";
import { keyOf } from "../../words/words.ts";
import { arrow, type Point, point, polyline, rectangle, text, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel, type Run } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { placed, shotAt, shotRadiusMm } from "./moving.ts";
import { ringKey, ringsRound } from "./ring-round.ts";
import { besidePanelMm, type ShownTip, tipPanel, toldTip } from "./tip-panel.ts";

const aboveMm = 38;
/** How long a hook is drawn: less where the lowest shot is near to it, which it would lie over. */
const hookMm = { most: 4, least: 2.6, clear: 0.2 };
/** Line that is drawn above the highest shot that comes to lie on the bed [mm of water]. */
const spareMm = 120;
const barMm = 100;
/** What lies on the bed is drawn just above its line. */
const lyingLiftMm = 0.9;

/** From the left to the line: the bar of the scale and its length stand before it. */
const besideBarMm = 17;

/** Where the drawn part of the rig stands: its line above the bed, and so much paper for each millimetre of water. */
interface NearBed {
  readonly lineX: number;
  readonly topMm: number;
  readonly bedMm: number;
  readonly scale: number;
  readonly hookMm: number;
}

/**
 * The depth guide, line by line: the rig near the bed to one scale, from a hook that hangs clear until shot after shot
 * lies on the bed, and the tip that the float then shows.
 */
export function depthFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words, figures } = kit;
  const { widthMm, textMm } = room;
  const steps = depth.depthGuide;
  const pictureMm = besidePanelMm(room);
  const topMm = 1.4 * textMm;
  const bedMm = topMm + aboveMm + 6;
  const near = nearBed(depth, { pictureMm, topMm, bedMm });
  const tips = steps.map(shownTip);
  const surfaceMm = topMm + aboveMm;
  const panel = tipPanel(solved.rig.float, tips, room, { surfaceMm, aboveMm }, kit);
  // What a tip that rises is held against.
  const hanging = steps.findIndex(({ state }) => state === "hangs");
  const clearTip = tips[hanging];
  const clear = typeof clearTip === "number" ? panel.wanted(clearTip, words("state.hangs")) : [];
  const beside = { rightMm: pictureMm - 1, topMm: topMm + 1.9 * textMm };
  const ringWords = ringKey(
    point(0, bedMm + bedThicknessMm + 1.1 * textMm),
    words("drawing.film.depth.ring"),
    textMm,
  );
  const moments = steps.map(
    (step, i): Moment => ({
      get caption() {
        return tell(step, depth, kit);
      },
      get moving() {
        return [
          text(point(0, textMm), whereHook(step, kit), textMm, { face: "bold" }),
          ...besideLine(step, depth, beside, textMm, kit),
          ...rigNearBed(solved, depth, step, near, textMm, kit),
          ...(step.shotOnBed.length > 0 ? ringWords : []),
          ...panel.moving(tips[i]),
          ...(typeof tips[i] === "number" ? clear : []),
        ];
      },
    }),
  );
  const startsAt = steps.findIndex(({ advice }) => advice === "start-here");
  const rests = steps.findIndex(({ shotOnBed }) => shotOnBed.length > 0);
  const chosen = [0, startsAt, rests, steps.length - 1].filter((at) => at >= 0);
  return {
    widthMm,
    heightMm: bedMm + bedThicknessMm + 1.5 * textMm,
    title: words("drawing.film.depth.title", {
      rig: solved.rig.title,
      depth: figures.shortDepth(depth.depthMm),
    }),
    description: words("drawing.film.depth.about"),
    still: [
      rectangle(0, topMm, pictureMm, bedMm - topMm, { fill: "water" }),
      ...parts.bed.draw({ leftMm: 0, rightMm: pictureMm, yMm: bedMm }),
      ...toTheFloat(near, textMm, kit),
      ...scaleBar(point(2, topMm + 3), barMm * near.scale, figures.shortGap(barMm), textMm),
      ...panel.still,
    ],
    moments,
    strip: rising(chosen),
  };
}

/** Where to start, and what the tip cannot tell: up to the right of the water and clear of the line. */
function besideLine(
  step: GuideStep,
  depth: SolvedDepth,
  { rightMm, topMm }: { readonly rightMm: Mm; readonly topMm: Mm },
  textMm: Mm,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const other = untoldOther(step, depth, kit, "less");
  const said: Run[] = [
    ...(step.advice === "start-here"
      ? [{ text: words("drawing.film.depth.start"), face: "bold" } as const]
      : []),
    ...(other === undefined ? [] : [{ text: words("drawing.film.depth.same", { other }) }]),
  ];
  let y = topMm;
  return said.flatMap((run) => {
    const label = layLabel([run], rightMm - besideBarMm - 2, textMm, measure);
    const middleY = y + label.heightMm / 2;
    y += label.heightMm;
    return paintLabel(label, rightMm - label.widthMm, middleY, measure);
  });
}

/** The line goes on above the picture: an arrow beside it, and where it goes. */
function toTheFloat({ lineX, topMm }: NearBed, textMm: number, { words }: DrawingKit): Item[] {
  const x = lineX + 2.2;
  return [
    ...arrow(point(x, topMm + 1.3 * textMm), point(x, topMm + 0.4), thinSoft, 1.6),
    text(point(x + 1.6, topMm + 1.2 * textMm), words("drawing.film.depth.up"), textMm, { ink: "soft" }),
  ];
}

/** A bar down from a place with its length beside it. */
function scaleBar({ xMm, yMm }: Point, lengthMm: number, say: string, textMm: number): Item[] {
  const end = (y: number) => polyline([point(xMm - 1, y), point(xMm + 1, y)], thinSoft);
  return [
    polyline([point(xMm, yMm), point(xMm, yMm + lengthMm)], thinSoft),
    end(yMm),
    end(yMm + lengthMm),
    text(point(xMm + 1.6, yMm + lengthMm / 2 + 0.35 * textMm), say, textMm, { ink: "soft" }),
  ];
}

/** Undefined where the float lies flat. */
function shownTip({ state, tipShowingMm }: GuideStep): ShownTip {
  return state === "lies flat" ? undefined : toldTip(tipShowingMm);
}

function nearBed(
  depth: SolvedDepth,
  { pictureMm, topMm, bedMm }: { pictureMm: number; topMm: number; bedMm: number },
): NearBed {
  const { depthGuide, lineShot } = depth;
  const most = Math.max(0, ...depthGuide.map(({ shotOnBed }) => shotOnBed.length));
  const highestMm = lineShot[Math.max(0, most - 1)]?.fromHookMm ?? 0;
  const offMm = Math.max(0, ...depthGuide.map(({ hookOffBedMm }) => hookOffBedMm));
  const lyingMm = Math.max(0, ...depthGuide.map((step) => lyingOf(step, depth)));
  const scale = Math.min(
    (bedMm - topMm) / (highestMm + offMm + spareMm),
    (pictureMm - besideBarMm - 2) / Math.max(1, lyingMm),
  );
  const lowest = first(lineShot);
  const freeMm = lowest.fromHookMm * scale - shotRadiusMm(lowest.diameterMm) - hookMm.clear;
  const longMm = Math.min(hookMm.most, Math.max(hookMm.least, freeMm));
  return { lineX: besideBarMm, topMm, bedMm, scale, hookMm: longMm };
}

/** Line that lies on the bed: what is longer than the water is deep below the float as it then stands. */
function lyingOf({ floatToHookMm, tipShowingMm, shotOnBed }: GuideStep, depth: SolvedDepth): Mm {
  const tipMm = tipShowingMm ?? depth.tipShowingMm;
  const draughtMm = depth.draughtMm + depth.tipShowingMm - tipMm;
  const highestOnBed = depth.lineShot[shotOnBed.length - 1]?.fromHookMm ?? 0;
  return Math.max(highestOnBed, lyingMm({ floatToHookMm, draughtMm, depthMm: depth.depthMm }));
}

/** The lowest part of the rig as one line of the guide has it. */
function rigNearBed(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  step: GuideStep,
  near: NearBed,
  textMm: Mm,
  kit: DrawingKit,
): Item[] {
  const { lineX, topMm, bedMm, scale } = near;
  const lyingMm = step.hookOffBedMm > 0 ? 0 : lyingOf(step, depth);
  /** Above the bed, or along it where that is below 0. */
  const at = (fromHookMm: Mm) => {
    const up = fromHookMm - lyingMm + step.hookOffBedMm;
    const aboveBedMm = bedMm - lyingLiftMm;
    return up >= 0
      ? point(lineX, Math.min(aboveBedMm, bedMm - scale * up))
      : point(lineX - scale * up, aboveBedMm);
  };
  const topFromHookMm = (bedMm - topMm) / scale + lyingMm - step.hookOffBedMm;
  const loopMm = rig.hookLengthMm;
  const shown = depth.lineShot.filter(({ fromHookMm }) => fromHookMm < topFromHookMm - 1.5 / scale);
  const corner = point(lineX, bedMm - lyingLiftMm);
  const strand = (fromMm: Mm, toMm: Mm, from = at(fromMm)) => [
    from,
    lyingMm > fromMm && lyingMm < toMm ? corner : at(toMm),
    at(toMm),
  ];
  const hook = hookAt(at(0), near);
  return [
    polyline(strand(loopMm, Math.max(loopMm, topFromHookMm)), strandStrokes["main line"]),
    polyline(
      strand(near.hookMm / scale, Math.min(loopMm, topFromHookMm), hook.eye),
      strandStrokes["hook length"],
    ),
    ...shown.map(({ fromHookMm, diameterMm }) => shotAt(at(fromHookMm), diameterMm)),
    // Those that lie on the bed are why the tip stands higher.
    ...ringsRound(
      shown
        .slice(0, step.shotOnBed.length)
        .map(({ fromHookMm, diameterMm }) => ({ at: at(fromHookMm), diameterMm })),
      // Clear of the line and of shot that still hang on it.
      { leastX: lineX + 2.5, textMm },
      kit,
    ),
    placed(at(0), hook.items),
  ];
}

/** The hook by the place of its bend, from which all is measured: hanging, its eye on the line that comes down, or lying behind it. */
function hookAt({ xMm, yMm }: Point, { lineX, hookMm }: NearBed): { items: Item[]; eye: Point } {
  const leanRad = Math.asin(Math.min(1, (xMm - lineX) / hookMm));
  const upright = parts.hook.draw({ bend: point(0, 0), heightMm: hookMm });
  return {
    items: rotated(upright, (-180 * leanRad) / Math.PI, point(0, 0)),
    eye: point(xMm - hookMm * Math.sin(leanRad), yMm - hookMm * Math.cos(leanRad)),
  };
}

/** Where the hook is, in a few words. */
function whereHook({ hookOffBedMm, overdepthMm }: GuideStep, { words, figures }: DrawingKit): string {
  if (hookOffBedMm > 0) return words("drawing.film.depth.off", { gap: figures.shortGap(hookOffBedMm) });
  return overdepthMm > 0
    ? words("drawing.film.depth.over", { gap: figures.shortGap(overdepthMm) })
    : words("drawing.film.depth.touches");
}

function tell(step: GuideStep, depth: SolvedDepth, kit: DrawingKit): string {
  const { words, figures } = kit;
  const where = figures.hookSet(step.overdepthMm, step.overdepthMm);
  const { shotOnBed, tipShowingMm } = step;
  const tip =
    tipShowingMm === null ? [] : [words("drawing.film.depth.tip", { tip: figures.tip(tipShowingMm) })];
  const lying = depth.lineShot.slice(0, shotOnBed.length);
  const bed = lying.length === 0 ? [] : [words("told.says.on-the-bed", { shot: figures.shot(lying) })];
  const state = step.state === "rests on the bed" ? [] : [words(`state.${keyOf(step.state)}`)];
  const other = untoldOther(step, depth, kit, "less");
  const told = [
    words("drawing.film.depth.moment", { where, says: [...state, ...bed, ...tip].join(", ") }),
    ...(other === undefined ? [] : [words("drawing.film.depth.also", { other })]),
  ].join(" ");
  return step.advice === "start-here" ? `${told} ${words("told.advice.start-here")}` : told;
}
