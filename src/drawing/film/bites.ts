import { loadForTipG, toldTipMm } from "../../core/float/tip.ts";
import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { liftBite, lyingShot } from "../float/lift-bite.ts";
import { type Point, point } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type ShownTip, toldTip } from "./tip-panel.ts";

/** The part of the line below its lowest shot is drawn this long, whatever it is. */
export const belowShotMm = 7;

/** How the float, its line and the fish are drawn at one moment, in millimetres of the picture from where all is still. */
export interface BitePose {
  readonly tip: ShownTip;
  /** Where the tip should stand, while it is not yet there, and what is said of that. */
  readonly wanted?: { readonly tipMm: Mm; readonly said: string };
  /** The float's place to the side, and its lean to the right [degrees]. */
  readonly asideMm?: number;
  readonly leanDegrees?: number;
  /** Bait and lowest shot, from where they hang. */
  readonly bait?: Point;
  readonly shot?: Point;
  /** How far the line bows aside, above and below the lowest shot. */
  readonly bows?: readonly [number, number];
  /** Where the fish's nose is from the bait, and how it is turned; none where it is out of the picture. */
  readonly fish?: { readonly off: Point; readonly degrees: number };
}

interface Bite {
  /** What is happening, in a word or two. */
  readonly name: string;
  readonly caption: string;
  readonly strike: boolean;
  readonly pose: BitePose;
}

/**
 * The moments of every bite that this rig can show. The line comes to a fish's mouth from before it: across its back it would look
 * as if hooked there.
 */
export function bitesOf(solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): readonly Bite[] {
  const at = (bite: "still" | "under" | "lift" | "away" | "cast" | "held") =>
    kit.words(`drawing.film.bites.name.${bite}`);
  const still: Bite = {
    name: at("still"),
    caption: kit.words("drawing.film.bites.still", { tip: kit.figures.tip(depth.tipAsSetMm) }),
    strike: false,
    pose: { tip: depth.tipAsSetMm },
  };
  const bites = [
    still,
    ...goingUnder(solved, depth, at("under"), kit),
    ...lifting(solved, depth, at("lift"), kit),
    ...movingAway(solved, depth, at("away"), kit),
    ...held(solved, depth, { cast: at("cast"), held: at("held") }, kit),
  ];
  return bites.map(({ pose, ...bite }) => ({ ...bite, pose: asTold(pose) }));
}

/** What is told of a tip is what is drawn. */
function asTold({ tip, wanted, ...pose }: BitePose): BitePose {
  return {
    ...pose,
    tip: toldTip(tip),
    ...(wanted && { wanted: { ...wanted, tipMm: toldTipMm(wanted.tipMm) } }),
  };
}

/** The bait in its mouth and its head down, as fish feed from the bed. */
const atBait = { off: point(-1, 0), degrees: -20 } as const;

const level = { ...atBait, degrees: -6 } as const;

/** The pull that leaves so much less tip [g]. */
function pullToG({ rig }: SolvedRig, { tipAsSetMm }: SolvedDepth, tipMm: Mm): number {
  const loadG = (showingMm: Mm) => loadForTipG(rig.float, showingMm, rig.conditions);
  return loadG(tipMm) - loadG(tipAsSetMm);
}

function goingUnder(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const { tipAsSetMm: tip } = depth;
  const half = tip / 2;
  const pull = (tipMm: Mm) => figures.mass(pullToG(solved, depth, tipMm));
  const begins = { name, caption: words("drawing.film.bites.under.begins"), strike: false };
  return [
    { ...begins, pose: { tip, fish: atBait } },
    {
      name,
      caption: words("drawing.film.bites.under.half", { pull: pull(half) }),
      strike: false,
      pose: { tip: half, bait: point(-2, 0), shot: point(-2, 0), fish: { ...atBait, degrees: -26 } },
    },
    {
      name,
      caption: words("drawing.film.bites.under.gone", { pull: pull(0) }),
      strike: true,
      pose: {
        tip: null,
        asideMm: -1.5,
        bait: point(-6, -1.2),
        shot: point(-7, -1.2),
        fish: { ...atBait, degrees: -14 },
      },
    },
  ];
}

function lifting(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const bite = liftBite(solved, depth);
  // Of several shot on the bed the picture has the lowest alone.
  if (!bite?.isSeen || (bite.isLying && bite.lifted !== depth.lineShot[0])) return [];
  const { tipMm, baitTipMm, lifted, isLying } = bite;
  const shot = lifted.size;
  const upMm = belowShotMm + 4;
  // To the right of the float, or its line would go round the head of a fish below it.
  const asideMm = isLying ? 1 : 7;
  const told =
    tipMm === undefined
      ? words("drawing.film.bites.lift.flat", { shot })
      : words("drawing.film.bites.lift.up", {
          shot,
          tip: figures.tip(tipMm),
          before: figures.tip(depth.tipAsSetMm),
        });
  return [
    {
      name,
      caption: words(isLying ? "drawing.film.bites.lift.lies" : "drawing.film.bites.lift.bait", {
        tip: figures.tip(baitTipMm),
        shot,
      }),
      strike: false,
      pose: { tip: baitTipMm, bait: point(0, -5), bows: [0, 2.5], fish: { ...atBait, degrees: 8 } },
    },
    {
      name,
      caption: told,
      strike: true,
      pose: {
        tip: tipMm,
        bait: point(asideMm, -upMm - belowShotMm),
        shot: point(asideMm - (isLying ? 0 : 1), -upMm + 4),
        bows: [3, 0],
        fish: { ...atBait, degrees: 22 },
      },
    },
  ];
}

function movingAway(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const tip = depth.tipAsSetMm / 2;
  const pull = figures.mass(pullToG(solved, depth, tip));
  return [
    {
      name,
      caption: words("drawing.film.bites.away.begins"),
      strike: false,
      pose: {
        tip: depth.tipAsSetMm,
        bait: point(-4, -1),
        shot: point(-4.5, -1),
        asideMm: -0.5,
        leanDegrees: 3,
        fish: level,
      },
    },
    {
      name,
      caption: words("drawing.film.bites.away.goes", { pull }),
      strike: true,
      pose: {
        tip,
        asideMm: -7,
        leanDegrees: 14,
        bait: point(-17, -2),
        // Behind the bait that it is drawn after, over the bed also where it lay on it.
        shot: lyingShot(depth).length > 0 ? point(-9, -7) : point(-15, -2),
        fish: level,
      },
    },
  ];
}

/** A bait taken on its way down: what should have come onto the float does not. */
function held(
  solved: SolvedRig,
  depth: SolvedDepth,
  names: { readonly cast: string; readonly held: string },
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const bite = liftBite(solved, depth);
  const [sink] = depth.inWater?.sink ?? [];
  if (!bite?.isSeen || !sink || bite.tipMm === undefined || bite.isLying) return [];
  const { tipMm: tip, lifted } = bite;
  const time = figures.time(last(sink.line.moments).timeS);
  const values = { shot: lifted.size, time, tip: figures.tip(tip), right: figures.tip(depth.tipAsSetMm) };
  const due = { tip, wanted: { tipMm: depth.tipAsSetMm, said: words("drawing.film.due", { time }) } };
  const falling = { ...due, bait: point(11, -belowShotMm - 8), shot: point(6, -6), bows: [0, 0] } as const;
  return [
    {
      name: names.cast,
      caption: words("drawing.film.bites.held.falls", values),
      strike: false,
      pose: falling,
    },
    {
      name: names.held,
      caption: words("drawing.film.bites.held.stays", values),
      strike: true,
      pose: {
        ...due,
        bait: point(6, -belowShotMm - 4),
        shot: point(2, -3),
        bows: [1.5, 1.5],
        fish: level,
      },
    },
  ];
}
