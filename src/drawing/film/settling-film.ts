import { cockingPullG, cocks } from "../../core/float/cocking.ts";
import { lengthMm } from "../../core/float/float.ts";
import { tipShowingMm, toldTipMm } from "../../core/float/tip.ts";
import { last, rising } from "../../core/lists.ts";
import type { G } from "../../core/units.ts";
import type { ShotEffect, SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";
import { curveTo, pathFrom, point, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotatedPoint } from "../transform.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { movingFloat, placed, shotAt, waterCut } from "./moving.ts";
import { isHeldTwice, lineMm, type MoreShot, pinchedOn, rodRise } from "./pinched-on.ts";
import { ringKey, ringRound } from "./ring-round.ts";
import {
  besidePanelMm,
  flatDegrees,
  levelMm,
  mostOf,
  type ShownTip,
  tipPanel,
  toldTip,
} from "./tip-panel.ts";

/** The float with so much of its load on. */
export interface Loaded {
  readonly caption: string;
  readonly shot: readonly SolvedShot[];
  readonly hasHook: boolean;
  /** Too many, beside the lock. */
  readonly more?: readonly MoreShot[];
  readonly tip: ShownTip;
  /** The last of them is what is new. */
  readonly hasNewShot?: boolean;
  /** It leans, as its foot is pulled down but not enough for it to stand. */
  readonly isHalfCocked?: boolean;
}

const aboveMm = 30;
const underMm = 2.5;
/** A float that is half cocked leans about so far. Common practice, no source. */
const leaningDegrees = 45;
/** Room beside a float that lies flat, for the shot at its eye. */
const asideMm = 13;
/** A change of the tip that is seen from the bank [mm]. */
const seenMm = 10;
/** A line that nothing pulls at hangs in bows so far aside. */
const slackMm = 3.5;

/**
 * A float as its shot goes on, the lock first, then down the line, with hook and bait last: how much tip each leaves, and
 * what one too many does. Between lying flat and standing the sums know nothing: a float stands as soon as it can.
 */
export function settlingFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words } = kit;
  const loads = loadsOf(solved, depth, kit);
  const stage = settlingStage(
    solved,
    depth,
    loads.map(({ tip }) => tip),
    room,
    kit,
  );
  const moments = loads.map((loaded, i): Moment => {
    const name = words(`drawing.film.settling.name.${nameOf(loaded, i - loads.length)}`);
    const headline = text(point(0, room.textMm), name, room.textMm, { face: "bold" });
    return { caption: loaded.caption, moving: [headline, ...stage.moving(loaded)] };
  });
  const stands = loads.findIndex(({ tip }) => tip !== undefined);
  const right = loads.length - 2;
  const chosen = [0, Math.max(0, stands - 1), stands, right, loads.length - 1];
  return {
    widthMm: room.widthMm,
    heightMm: stage.heightMm,
    title: words("drawing.film.settling.title", { rig: solved.rig.title }),
    description: words("drawing.film.settling.about"),
    still: stage.still,
    moments,
    strip: rising(chosen),
  };
}

/** What a float does with a load on it, in a word or two; the last two loads are the right one and one too many. */
function nameOf({ shot, tip, isHalfCocked }: Loaded, fromEnd: number) {
  if (fromEnd === -1) return tip === null ? "too-many" : "too-low";
  if (fromEnd === -2) return "right";
  if (isHalfCocked) return "half";
  if (tip !== undefined) return "stands";
  return shot.length === 0 ? "bare-flat" : "flat";
}

/**
 * What never moves of a float that is loaded, and what does with a load on it.
 *
 * @param tips all that it may come to show
 */
export function settlingStage(
  solved: SolvedRig,
  depth: SolvedDepth,
  tips: readonly ShownTip[],
  room: FilmRoom,
  kit: DrawingKit,
) {
  const { float } = solved.rig;
  const pictureMm = besidePanelMm(room);
  const floatMm = lengthMm(float);
  const surfaceMm = aboveMm + 1.4 * room.textMm;
  const scale = Math.min(0.5, aboveMm / mostOf(tips), Math.min(34, pictureMm - asideMm) / floatMm);
  const waterMm = floatMm * scale + lineMm + underMm + 4.5;
  const panel = tipPanel(float, tips, room, { surfaceMm, aboveMm }, kit);
  const still: readonly Item[] = [
    ...waterCut({ rightMm: pictureMm, surfaceMm, footMm: surfaceMm + waterMm }),
    text(
      point(0, surfaceMm + waterMm + room.textMm),
      kit.words("drawing.film.settling.shortened"),
      room.textMm,
      { ink: "soft" },
    ),
    ...panel.still,
  ];
  const wanted = panel.wanted(toldTipMm(depth.tipShowingMm), kit.words("drawing.film.right"));
  return {
    heightMm: surfaceMm + waterMm + 1.4 * room.textMm,
    still,
    moving: (loaded: Loaded): Item[] => [
      ...hung(solved, depth, loaded, { middleMm: pictureMm / 2, surfaceMm, scale }, room, kit),
      ...panel.moving(loaded.tip, loaded.isHalfCocked ? leaningDegrees : flatDegrees),
      ...(typeof loaded.tip === "number" ? wanted : []),
      ...(loaded.hasNewShot
        ? ringKey(
            point(pictureMm + 2, surfaceMm + waterMm + room.textMm),
            kit.words("drawing.film.settling.ring"),
            room.textMm,
          )
        : []),
    ],
  };
}

function loadsOf(solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): readonly Loaded[] {
  const { words, figures } = kit;
  const { float, conditions } = solved.rig;
  const tipOf = (pullG: G): ShownTip =>
    cocks(float, pullG, conditions) ? toldTip(tipShowingMm(float, pullG, conditions)) : undefined;
  const order = [...depth.lockShot, ...depth.lineShot.toReversed()];
  let pullG = 0;
  const bare = tipOf(0);
  const loads: Loaded[] = [
    {
      caption:
        bare === undefined
          ? words("drawing.film.settling.bare-flat")
          : words("drawing.film.settling.bare", { tip: figures.tip(bare ?? 0) }),
      shot: [],
      hasHook: false,
      tip: bare,
    },
  ];
  for (const [i, shot] of order.entries()) {
    pullG += shot.pullG;
    const tip = tipOf(pullG);
    const values = { shot: shot.size, tip: figures.tip(tip ?? 0) };
    const caption =
      tip === undefined
        ? words("drawing.film.settling.flat", values)
        : tip === null
          ? words("drawing.film.settling.under", values)
          : words("drawing.film.settling.stands", values);
    loads.push({ caption, shot: order.slice(0, i + 1), hasNewShot: true, hasHook: false, tip });
  }
  const leans = loads.findLastIndex(({ tip, shot }) => tip === undefined && shot.length > 0);
  const needed = cockingPullG(float, conditions);
  const half = loads[leans];
  if (half && loads[leans + 1] && needed !== null)
    loads[leans] = {
      ...half,
      isHalfCocked: true,
      caption: words("drawing.film.settling.half", {
        shot: last(half.shot).size,
        needed: figures.mass(needed),
      }),
    };
  const tip = tipOf(pullG + solved.hookAndBaitPullG);
  const told = words("drawing.film.settling.right", { tip: figures.tip(tip ?? 0) });
  return [...loads, { caption: told, shot: order, hasHook: true, tip }, tooMany(depth, order, kit)];
}

/** One more of the lightest size that the float is seen to sink by. */
function tooMany(depth: SolvedDepth, order: readonly SolvedShot[], { words, figures }: DrawingKit): Loaded {
  const byMass = depth.shotEffects.toSorted((a, b) => a.massG - b.massG);
  const sinksMm = ({ oneMoreMm }: ShotEffect) => depth.tipShowingMm - (oneMoreMm ?? 0);
  const more = byMass.find((effect) => sinksMm(effect) >= seenMm) ?? last(byMass);
  const tip = toldTip(more.oneMoreMm) ?? null;
  const values = { shot: more.size, tip: figures.tip(tip ?? 0) };
  const caption =
    tip === null
      ? words("drawing.film.settling.too-many-under", values)
      : tip < levelMm
        ? words("drawing.film.settling.too-many-level", values)
        : words("drawing.film.settling.too-many", values);
  return { caption, shot: order, more: [more], hasNewShot: true, hasHook: true, tip };
}

interface FloatRoom {
  readonly middleMm: number;
  readonly surfaceMm: number;
  readonly scale: number;
}

/** The float as it lies or stands, the line below it, and what is on it so far. */
function hung(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  { shot, hasHook, more = [], hasNewShot, tip, isHalfCocked }: Loaded,
  { middleMm, surfaceMm, scale }: FloatRoom,
  { textMm }: FilmRoom,
  { words, measure }: DrawingKit,
): Item[] {
  const floatMm = lengthMm(rig.float);
  const water = point(middleMm, surfaceMm);
  const isFlat = tip === undefined;
  const shownMm = isFlat ? floatMm / 2 : tip;
  const top = point(middleMm, shownMm === null ? surfaceMm + underMm : surfaceMm - shownMm * scale);
  const foot = point(middleMm, top.yMm + floatMm * scale + 0.5);
  const degrees = isHalfCocked ? leaningDegrees : flatDegrees;
  const eye = isFlat ? rotatedPoint(foot, degrees, water) : foot;
  const rubber = point(middleMm, top.yMm + rig.float.tipShowingMm * scale + 1);
  const end = point(eye.xMm, eye.yMm + lineMm);
  const hanging = pinchedOn(rig.float, depth, shot, more, { eye, end });
  const newest = hanging.at(-1);
  const isSlack = hanging.length === 0;
  const bow = (asideMm: number, share: number) =>
    point(eye.xMm + (isSlack ? asideMm : 0), eye.yMm + share * lineMm);
  const bank = isHeldTwice(rig.float)
    ? point(0, surfaceMm - 3)
    : point(0, Math.max(surfaceMm + 1, eye.yMm - rodRise * eye.xMm));
  const atTip = isFlat ? rotatedPoint(rubber, degrees, water) : rubber;
  const through = isHeldTwice(rig.float) ? [atTip, eye] : [eye];
  const noHook = layLabel(
    [{ text: words("drawing.film.settling.no-hook") }],
    2 * middleMm - eye.xMm - 3,
    textMm,
    measure,
  );
  const hook = parts.hook.draw({ bend: point(0, 2.8), heightMm: 2.8 });
  return [
    pathFrom(
      bank,
      [
        ...through.map(({ xMm, yMm }) => ["L", xMm, yMm] as const),
        curveTo(bow(slackMm, 1 / 3), bow(-slackMm, 2 / 3), end),
      ],
      strandStrokes["main line"],
    ),
    ...movingFloat(rig.float, {
      top,
      scale,
      lengthMm: floatMm,
      ...(isFlat && { lean: { degrees, about: water } }),
    }),
    ...hanging.map(({ place, diameterMm }) => shotAt(place, diameterMm)),
    ...(hasNewShot && newest ? [ringRound({ at: newest.place, diameterMm: newest.diameterMm })] : []),
    // A line that ends in nothing would be taken for a broken one.
    ...(hasHook ? [placed(end, hook)] : paintLabel(noHook, eye.xMm + 2.5, end.yMm, measure)),
  ];
}
