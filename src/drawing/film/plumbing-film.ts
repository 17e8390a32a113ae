import { type PlumbingStep, slackTipMm } from "../../core/depth/plumbing.ts";
import { lengthMm } from "../../core/float/float.ts";
import { rising } from "../../core/lists.ts";
import { lockShotOf, totalPullG } from "../../core/loading/loading.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { plumbedSays, wayOf } from "../../words/plumbing-text.ts";
import { seenMm, seenTip } from "../float/seen-tip.ts";
import { type Point, point, polyline, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item, PathItem } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotatedPoint } from "../transform.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { movingFloat, placed, waterOverBed } from "./moving.ts";
import {
  goesOnByHand,
  type HandRoom,
  isLeftBehind,
  isSliding,
  movedByHand,
  plummetMm,
} from "./plumbing-hand.ts";
import { besidePanelMm, flatDegrees, type ShownTip, tipPanel, toldTip } from "./tip-panel.ts";

const aboveMm = 26;
const waterMm = 46;
/** Where the hand is drawn, below the panel of the tip. */
const underPanelMm = 13;

interface Water {
  readonly middleMm: number;
  readonly surfaceMm: number;
  readonly bedMm: number;
  /** Drawn length per length. */
  readonly scale: number;
}

/**
 * Finding the depth with a plummet, try by try: it stands on the bed and takes the float under by as much as the setting is
 * short, the water to one scale of depth, and the tip as each setting has it.
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
  const handRoom = handRoomOf(steps, room, surfaceMm + underPanelMm, water.bedMm);
  const last = steps.length - 1;
  const strip = rising([0, 1, Math.max(0, last - 1), last].filter((at) => at <= last));
  const about = words("drawing.film.plumbing.about", { moved: movedOf(solved, kit) });
  /** What the strip says where it leaves out the tries after one. */
  const goesOn = (at: number): Item[] =>
    strip.includes(at) && at < last && !strip.includes(at + 1)
      ? goesOnByHand(solved, steps, at, handRoom, kit)
      : [];
  // The last try shows the tip that is right.
  const right = tips[last];
  const wanted = typeof right === "number" ? panel.wanted(right, words("drawing.film.right")) : [];
  const moments = steps.map(
    (step, i): Moment => ({
      caption: tell(solved, step, kit),
      onPaper: goesOn(i),
      moving: [
        ...plumbed(solved, depth, step, tips[i], water, textMm, kit),
        ...saidOf(step, { widthMm: pictureMm, textMm }, kit),
        ...panel.moving(tips[i]),
        ...(typeof tips[i] === "number" ? wanted : []),
        ...movedByHand(solved, steps, i, handRoom, kit),
      ],
    }),
  );
  return {
    widthMm,
    heightMm: water.bedMm + bedThicknessMm + 1.4 * textMm,
    title: words("drawing.film.plumbing.title", { rig: solved.rig.title }),
    description: strip.some((at) => isLeftBehind(solved, steps, at, handRoom))
      ? `${about} ${words("drawing.film.plumbing.before")}`
      : about,
    still: [
      ...waterOverBed({ rightMm: pictureMm, surfaceMm, footMm: water.bedMm }),
      text(
        point(0, water.bedMm + bedThicknessMm + textMm),
        words("drawing.film.plumbing.bed", { depth: figures.shortDepth(depth.depthMm) }),
        textMm,
        { ink: "soft" },
      ),
      ...panel.still,
    ],
    moments,
    strip,
  };
}

function handRoomOf(steps: readonly PlumbingStep[], room: FilmRoom, topMm: number, bedMm: number): HandRoom {
  const settings = steps.map(({ settingMm }) => settingMm);
  const [leastMm, mostMm] = [Math.min(...settings), Math.max(...settings)];
  return { lineX: besidePanelMm(room) + 9, topMm, bedMm, leastMm, mostMm, textMm: room.textMm };
}

/** The setting of a try, and what the float says of it. */
function saidOf(step: PlumbingStep, { widthMm, textMm }: FilmRoom, kit: DrawingKit): Item[] {
  const set = kit.words("drawing.film.plumbing.set", { depth: kit.figures.shortDepth(step.settingMm) });
  const ink = step.moveMm === 0 ? "ink" : "accent";
  const said = plumbedSays(step, kit);
  const label = layLabel([{ text: said, face: "bold", ink }], widthMm, textMm, kit.measure);
  return [
    text(point(0, textMm), set, textMm, { face: "bold" }),
    ...paintLabel(label, 0, 1.4 * textMm + label.heightMm / 2, kit.measure),
  ];
}

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
  textMm: Mm,
  kit: DrawingKit,
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
    ...(isSliding(solved) ? stopKnotAt(eye, point(0, surfaceMm), textMm, kit) : []),
  ];
}

/** The stop knot of a float, drawn down on to its eye, on the line to the rod, and its name below that where there is room. */
function stopKnotAt(eye: Point, rod: Point, textMm: Mm, { words, measure }: DrawingKit): Item[] {
  const [dx, dy] = [rod.xMm - eye.xMm, rod.yMm - eye.yMm];
  const share = stopKnotFromEyeMm / Math.hypot(dx, dy);
  const turnedDegrees = (Math.atan2(-dy, -dx) * 180) / Math.PI;
  const at = point(eye.xMm + share * dx, eye.yMm + share * dy);
  const name = words("drawing.scenes.make-up.part.stop-knot");
  const nameX = Math.min(at.xMm - 3.5, eye.xMm - 1.5) - measure(name, textMm, "regular");
  return [
    polyline([rod, eye], strandStrokes["main line"]),
    placed(at, parts.stopKnot.draw({ at: point(0, 0), turnedDegrees })),
    ...(nameX > 0 ? [text(point(nameX, at.yMm + 3.2 + textMm), name, textMm)] : []),
  ];
}

const stopKnotFromEyeMm = 3.2;

/** The marked tip of the float is drawn at least this long: to the scale of the water it would not be seen. */
const leastTipMm = 1.1;

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

function tell(solved: SolvedRig, step: PlumbingStep, kit: DrawingKit): string {
  const { words, figures } = kit;
  const values = { depth: figures.depth(step.settingMm), says: plumbedSays(step, kit) };
  if (step.moveMm === 0) return words("drawing.film.plumbing.done", values);
  const way = wayOf(step);
  return words("drawing.film.plumbing.moment", {
    ...values,
    moved: movedOf(solved, kit),
    way: words(`drawing.film.plumbing.way.${way}`),
    next: words(`told.plumbing.${way}`, { gap: figures.gap(Math.abs(step.moveMm)) }),
  });
}
