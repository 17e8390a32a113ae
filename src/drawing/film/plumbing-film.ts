import { type PlumbingStep, slackTipMm } from "../../core/depth/plumbing.ts";
import { lengthMm } from "../../core/float/float.ts";
import { rising } from "../../core/lists.ts";
import { lockShotOf, totalPullG } from "../../core/loading/loading.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import { seenMm, seenTip } from "../float/seen-tip.ts";
import { arrow, bold, type Point, point, polyline, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { leading } from "../labels/label-text.ts";
import type { Item, PathItem } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotatedPoint } from "../transform.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { pinchingHand } from "./hand.ts";
import { movingFloat, placed, waterOverBed } from "./moving.ts";
import { besidePanelMm, flatDegrees, type ShownTip, tipPanel, toldTip } from "./tip-panel.ts";

const aboveMm = 26;
const waterMm = 46;
const plummetMm = 4;
/** Where the hand is drawn, below the panel of the tip, and how long the float is there. */
const underPanelMm = 13;
const heldFloatMm = 9;
const handUnitMm = 0.8;

interface Water {
  readonly middleMm: number;
  readonly surfaceMm: number;
  readonly bedMm: number;
  /** Drawn length per length. */
  readonly scale: number;
}

/**
 * Finding the depth with a plummet, try by try: it stands on the bed or hangs by as much as the setting is short, the
 * water to one scale of depth, and the tip as each setting has it.
 */
export function plumbingFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words, figures } = kit;
  const { widthMm, textMm } = room;
  const { steps } = depth.plumbing;
  const pictureMm = besidePanelMm(room);
  const surfaceMm = aboveMm + 1.4 * textMm;
  const scale = waterMm / depth.depthMm;
  const water = { middleMm: pictureMm / 2, surfaceMm, bedMm: surfaceMm + waterMm, scale };
  const tips = steps.map((step) => tipOf(step, solved, depth));
  const panel = tipPanel(solved.rig.float, tips, room, { surfaceMm, aboveMm }, kit);
  const settings = steps.map(({ settingMm }) => settingMm);
  const handRoom = {
    lineX: besidePanelMm(room) + 9,
    topMm: surfaceMm + underPanelMm,
    bedMm: water.bedMm,
    leastMm: Math.min(...settings),
    mostMm: Math.max(...settings),
    textMm,
  };
  const last = steps.length - 1;
  const strip = rising([0, 1, Math.max(0, last - 1), last].filter((at) => at <= last));
  /** Whether the strip leaves out the tries after one. */
  const goesOn = (at: number) => strip.includes(at) && at < last && !strip.includes(at + 1);
  const moments = steps.map(
    (step, i): Moment => ({
      caption: tell(solved, step, kit),
      onPaper: goesOn(i)
        ? [goesOnWords(byHand(heldBy(solved, step, handRoom).at, handRoom, 1), textMm, kit)]
        : [],
      moving: [
        ...plumbed(solved, depth, step, tips[i], water),
        settingWords(step.settingMm, textMm, kit),
        ...panel.moving(tips[i]),
        ...movedByHand(solved, step, handRoom, kit),
      ],
    }),
  );
  return {
    widthMm,
    heightMm: water.bedMm + bedThicknessMm + 1.4 * textMm,
    title: words("drawing.film.plumbing.title", { rig: solved.rig.title }),
    description: words("drawing.film.plumbing.about", {
      moved: movedOf(solved, kit),
    }),
    still: [
      ...waterOverBed({ rightMm: pictureMm, surfaceMm, footMm: water.bedMm }),
      text(
        point(0, water.bedMm + bedThicknessMm + textMm),
        words("drawing.film.plumbing.bed", { depth: figures.shortDepth(depth.depthMm) }),
        textMm,
        { ink: "soft" },
      ),
      ...panel.still,
      ...wantedIn(panel, tips[last], kit),
    ],
    moments,
    strip,
  };
}

/** Where the tip is right, which the last try shows. */
const wantedIn = (panel: ReturnType<typeof tipPanel>, right: ShownTip, { words }: DrawingKit): Item[] =>
  typeof right === "number" ? panel.wanted(right, words("drawing.film.right")) : [];

const goesOnWords = (at: Point, textMm: Mm, { words }: DrawingKit): Item =>
  text(at, words("drawing.film.plumbing.goes-on"), textMm);

const settingWords = (settingMm: Mm, textMm: Mm, { words, figures }: DrawingKit): Item => {
  const set = words("drawing.film.plumbing.set", { depth: figures.shortDepth(settingMm) });
  return text(point(0, textMm), set, textMm, { face: "bold" });
};

const isSliding = ({ rig }: SolvedRig): boolean => rig.float.attachment === "sliding";

/** What stands above the water: what is set too deep, until the line is slack; under the surface below 0. */
function offMark({ settingMm }: PlumbingStep, depth: SolvedDepth): Mm {
  return depth.tipAsSetMm + settingMm - depth.depthMm;
}

function tipOf(step: PlumbingStep, { rig }: SolvedRig, depth: SolvedDepth): ShownTip {
  const { float, conditions } = rig;
  if (step.sign === "lies flat") return undefined;
  if (step.sign === "goes under") return null;
  const keptPullG = totalPullG(lockShotOf(depth.plumbing.kept), conditions);
  return toldTip(Math.min(offMark(step, depth), slackTipMm({ float, keptPullG, water: conditions })));
}

/** Float, line and plummet at one try. */
function plumbed(
  solved: SolvedRig,
  depth: SolvedDepth,
  step: PlumbingStep,
  tip: ShownTip,
  { middleMm, surfaceMm, bedMm, scale }: Water,
): Item[] {
  const { rig } = solved;
  const float = seenTip(rig.float, leastTipMm / scale);
  const floatMm = lengthMm(float);
  const isFlat = tip === undefined;
  const shownMm = isFlat ? floatMm / 2 : seenMm(tip ?? offMark(step, depth), rig.float, float);
  const top = point(middleMm, surfaceMm - shownMm * scale);
  const water = point(middleMm, surfaceMm);
  const foot = point(middleMm, top.yMm + floatMm * scale);
  const eye = isFlat ? rotatedPoint(foot, flatDegrees, water) : foot;
  const standing = point(middleMm, bedMm - plummetMm);
  const lineMm = (step.settingMm - depth.draughtMm) * scale - plummetMm;
  // A float that is set too deep alone leaves the line slack.
  const isSlack = isFlat || step.sign === "stands too high";
  const reachMm = Math.hypot(standing.xMm - eye.xMm, standing.yMm - eye.yMm);
  const slackMm = isSlack ? Math.max(0, lineMm - reachMm) : 0;
  return [
    line(eye, standing, slackMm),
    ...movingFloat(float, {
      top,
      scale,
      lengthMm: floatMm,
      ...(isFlat && { lean: { degrees: flatDegrees, about: water } }),
    }),
    placed(point(middleMm, bedMm), parts.plummet.draw({ at: point(0, 0), heightMm: plummetMm })),
    ...(isSliding(solved) ? stopKnotAt(eye, point(0, surfaceMm)) : []),
  ];
}

/** The stop knot of a float, drawn down on to its eye, on the line to the rod. */
function stopKnotAt(eye: Point, rod: Point): Item[] {
  const [dx, dy] = [rod.xMm - eye.xMm, rod.yMm - eye.yMm];
  const share = stopKnotFromEyeMm / Math.hypot(dx, dy);
  const turnedDegrees = (Math.atan2(-dy, -dx) * 180) / Math.PI;
  return [
    polyline([rod, eye], strandStrokes["main line"]),
    placed(
      point(eye.xMm + share * dx, eye.yMm + share * dy),
      parts.stopKnot.draw({ at: point(0, 0), turnedDegrees }),
    ),
  ];
}

const stopKnotFromEyeMm = 2.4;

/** The marked tip of the float is drawn at least this long: to the scale of the water it would not be seen. */
const leastTipMm = 1.1;

interface HandRoom {
  readonly lineX: number;
  readonly topMm: number;
  readonly bedMm: number;
  readonly leastMm: Mm;
  readonly mostMm: Mm;
  readonly textMm: number;
}

/** Float and what holds it there, as the setting has it in the hand. */
interface Held {
  /** Where the hand moves it. */
  readonly at: Point;
  readonly float: readonly Item[];
  /** A knot is small: it is drawn over the fingers that hold it. */
  readonly knot: readonly Item[];
}

/** A float that slides lies on the plummet, and the hand moves its stop knot; any other is moved itself, by its foot. */
function heldBy(
  solved: SolvedRig,
  { settingMm }: PlumbingStep,
  { lineX, topMm, bedMm, leastMm, mostMm }: HandRoom,
): Held {
  const { rig } = solved;
  const floatMm = lengthMm(rig.float);
  const float = (footY: number) =>
    movingFloat(rig.float, {
      top: point(lineX, footY - heldFloatMm),
      scale: heldFloatMm / floatMm,
      lengthMm: floatMm,
    });
  const share = (settingMm - leastMm) / Math.max(1, mostMm - leastMm);
  const between = (lowest: number, highest: number) => point(lineX, lowest - share * (lowest - highest));
  if (isSliding(solved)) {
    const restsY = bedMm - plummetMm - 2;
    const at = between(restsY - heldFloatMm - 4, topMm + 4);
    return { at, float: float(restsY), knot: [placed(at, parts.stopKnot.draw(upright))] };
  }
  const at = between(bedMm - 12, topMm + heldFloatMm + 4);
  return { at, float: float(at.yMm), knot: [] };
}

const upright = { at: point(0, 0), turnedDegrees: 90 };

/** The line in the hand, with the float where the setting has it, and how the hand moves it for the next try. */
function movedByHand(solved: SolvedRig, step: PlumbingStep, room: HandRoom, { figures }: DrawingKit): Item[] {
  const { lineX, topMm, bedMm, textMm } = room;
  const { moveMm } = step;
  const { at, float, knot } = heldBy(solved, step, room);
  const up = moveMm > 0 ? -1 : 1;
  const arrowX = lineX - 4;
  const middle = at.yMm - heldFloatMm / 2;
  return [
    polyline([point(lineX, topMm), point(lineX, bedMm - plummetMm)], strandStrokes["main line"]),
    placed(point(lineX, bedMm), parts.plummet.draw({ at: point(0, 0), heightMm: plummetMm })),
    ...float,
    ...(moveMm === 0 ? [] : pinchingHand(at, handUnitMm, 1)),
    ...knot,
    ...(moveMm === 0
      ? []
      : [
          ...arrow(
            point(arrowX, middle - 3.5 * up),
            point(arrowX, middle + 3.5 * up),
            { ...bold, ink: "accent" },
            2.4,
          ),
          text(
            byHand(at, room, 0),
            `${moveMm > 0 ? "+" : "−"}${figures.shortGap(Math.abs(moveMm))}`,
            textMm,
            { face: "bold" },
          ),
        ]),
  ];
}

/** Where a row of words stands beside the line, above the hand where there is room and else below it. */
function byHand(at: Point, { lineX, topMm, textMm }: HandRoom, row: number): Point {
  const firstY = at.yMm - topMm > 18 ? -8.5 - leading * textMm : 8.5 + textMm;
  return point(lineX + 3, at.yMm + firstY + row * leading * textMm);
}

/** Straight where it is tight; what is slack of it bows aside. */
function line(from: Point, to: Point, slackMm: number): PathItem {
  const asideMm = Math.min(12, 1.4 * Math.sqrt(slackMm * Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm)));
  const third = (share: number) => from.yMm + (to.yMm - from.yMm) * share;
  const steps = [
    ["M", from.xMm, from.yMm],
    ["C", from.xMm + asideMm, third(1 / 3), to.xMm + asideMm, third(2 / 3), to.xMm, to.yMm],
  ] as const;
  return { kind: "path", steps, stroke: strandStrokes["main line"] };
}

/** What the hand moves: float or stop knot, in words. */
const movedOf = (solved: SolvedRig, { words }: DrawingKit) =>
  words(`drawing.film.plumbing.moved.${isSliding(solved) ? "knot" : "float"}`);

function tell(solved: SolvedRig, { settingMm, sign, moveMm }: PlumbingStep, kit: DrawingKit): string {
  const { words, figures } = kit;
  const values = {
    depth: figures.depth(settingMm),
    sign: words(`told.plumbing.sign.${keyOf(sign)}`),
  };
  if (moveMm === 0) return words("drawing.film.plumbing.done", values);
  const gap = figures.gap(Math.abs(moveMm));
  const next = words(`told.plumbing.${moveMm > 0 ? "deeper" : "shallower"}`, { gap });
  return words("drawing.film.plumbing.moment", { ...values, moved: movedOf(solved, kit), next });
}
