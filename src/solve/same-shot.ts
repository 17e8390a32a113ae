import { entry, first, last, paired } from "../core/lists.ts";
import { aboveLoopMm, apartMm, highestMm } from "../core/patterns/clearance.ts";
import type { LineRoom, PatternKind } from "../core/patterns/pattern.ts";
import { spreadMm, stackedMm } from "../core/patterns/spacing.ts";
import type { Mm } from "../core/units.ts";
import type { Sister } from "../model/in-water.ts";
import { type Arrangement, arrangements } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedShot } from "../model/solved.ts";

/** What each pattern comes nearest to; none where no shot on the line could be gathered or spread. */
const nearest: Readonly<Record<PatternKind, Arrangement | undefined>> = {
  "strung out": "strung out",
  "shirt button": "strung out",
  "tapered shirt button": "strung out",
  "spread bulk": "spread bulk",
  bulk: "bulk",
  lift: undefined,
  "all at the float": undefined,
};

/** Where a bulk is made of shot strung out: so much of the line below the float. Common practice, no source. */
const bulkShare = 1 / 4;
/** Gap between the shot of a bulk that is opened out [mm]. Common practice, no source. */
const openedMm = 50;

/** A rig's own shot, hung in one of the ways. */
interface SameShot {
  readonly arrangement: Arrangement;
  /** Whether this is how the rig has it. */
  readonly own: boolean;
  /** From the hook up, without those that lock the float. */
  readonly shot: readonly SolvedShot[];
}

/**
 * A rig's shot in every way that finds room: the telltale and the lock stay, the others are gathered or spread. A bulk
 * keeps its height when it is opened out; shot that were strung out make a bulk a quarter of the way up.
 *
 * @returns none for a rig with fewer than two shot above its telltale, with a pattern of its own kind, or whose float
 *   slides: it needs its bulk to land on and to draw the line through its eye
 */
export function sameShot(rig: Rig, depth: SolvedDepth): readonly SameShot[] {
  const own = nearest[rig.pattern.kind];
  const line = depth.lineShot;
  const [telltale, ...others] = line;
  const sliding = rig.float.attachment === "sliding";
  if (!own || sliding || !telltale || others.length < 2) return [];
  const room = { floatToHookMm: depth.floatToHookMm, hookLengthMm: rig.hookLengthMm };
  const placed = (arrangement: Arrangement) =>
    arrangement === "strung out" ? spread(telltale, others, room) : gathered(line, arrangement, room);
  const wider = (a: readonly SolvedShot[], b: readonly SolvedShot[]) => extentMm(a) > extentMm(b);
  return arrangements.flatMap((arrangement): SameShot[] => {
    if (arrangement === own) return [{ arrangement, own: true, shot: line }];
    const shot = placed(arrangement);
    const softer = arrangements.indexOf(arrangement) < arrangements.indexOf(own);
    // In shallow water shot strung out may stand closer than an opened bulk: then there is no such way.
    const fits = shot && (softer ? wider(shot, line) : wider(line, shot));
    return fits ? [{ arrangement, own: false, shot }] : [];
  });
}

/** Length of line that the shot above the telltale take up. */
const extentMm = (shot: readonly SolvedShot[]) => last(shot).fromHookMm - entry(shot, 1).fromHookMm;

/** The pattern a rig is held against: its shot in a bulk where they are strung out, strung out where they are not. */
export function sisterOf(
  rig: Rig,
  depth: SolvedDepth,
): (Pick<SameShot, "shot"> & Pick<Sister, "arrangement">) | undefined {
  const ways = sameShot(rig, depth);
  const strungOut = ways.some(({ own, arrangement }) => own && arrangement === "strung out");
  const arrangement = strungOut ? "bulk" : "strung out";
  const way = ways.find((one) => one.arrangement === arrangement);
  return way && { arrangement, shot: way.shot };
}

function spread(
  telltale: SolvedShot,
  others: readonly SolvedShot[],
  room: LineRoom,
): readonly SolvedShot[] | undefined {
  const even = new Array<number>(others.length + 1).fill(1);
  const places = spreadMm(telltale, telltale.fromHookMm, others, even, room);
  return places.ok ? [telltale, ...moved(others, places.atMm)] : undefined;
}

function gathered(
  line: readonly SolvedShot[],
  arrangement: "bulk" | "spread bulk",
  room: LineRoom,
): readonly SolvedShot[] | undefined {
  const ownBulk = line.filter(({ role }) => role === "bulk");
  const bulk = ownBulk.length > 0 ? ownBulk : line.slice(1);
  const below = line.filter((shot) => !bulk.includes(shot));
  const leastMm = Math.max(aboveLoopMm(room), last(below).fromHookMm + apartMm(last(below), first(bulk)));
  const lowestMm = ownBulk[0]?.fromHookMm ?? Math.max(leastMm, bulkShare * room.floatToHookMm);
  const atMm =
    arrangement === "bulk" ? stackedMm(bulk, lowestMm) : bulk.map((_, i) => lowestMm + openedMm * i);
  return last(atMm) <= highestMm(room) ? [...below, ...moved(bulk, atMm)] : undefined;
}

const moved = (shot: readonly SolvedShot[], atMm: readonly Mm[]) =>
  paired(shot, atMm).map(([one, fromHookMm]) => ({ ...one, fromHookMm }));
