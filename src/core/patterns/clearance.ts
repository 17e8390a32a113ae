import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import { neighbours } from "../lists.ts";
import { ballDiameterMm, type Shot } from "../tackle/shot.ts";
import type { Mm } from "../units.ts";
import type { LineRoom, PatternKind, PatternRoom, PlacedShot, Role } from "./pattern.ts";

/** Shot stay this far from a knot (common practice, no source). */
export const knotClearMm = 15;

/** Shot on the line stay this far below the float (common practice, no source). */
export const floatClearMm = 50;

/** Shot stay at least this far from the hook (common practice, no source). */
const hookClearMm = 20;

/** Lowest place above the knot of the hook length's loop. */
export function aboveLoopMm(room: LineRoom): number {
  return room.hookLengthMm + knotClearMm;
}

/** Highest place for a shot on the line. */
export function highestMm(room: LineRoom): number {
  return room.floatToHookMm - floatClearMm;
}

/** Least distance between two neighbours: one diameter, of the larger. */
export function apartMm(a: Shot, b: Shot): number {
  return Math.max(ballDiameterMm(a.massG, a.metal), ballDiameterMm(b.massG, b.metal));
}

/** The nearest place to one that the rig asks for that is clear of the loop's knot, with a warning where moved. */
export function clearOfKnot(
  askedMm: Mm,
  role: Role,
  room: PatternRoom,
): { readonly atMm: Mm; readonly findings: readonly Finding[] } {
  const off = askedMm - room.hookLengthMm;
  if (Math.abs(off) >= knotClearMm) return { atMm: askedMm, findings: [] };
  const atMm = off < 0 ? room.hookLengthMm - knotClearMm : aboveLoopMm(room);
  return { atMm, findings: [warning("pattern.moved-off-knot", { role, askedMm, fromHookMm: atMm })] };
}

/** No answer because a shot finds no place below the float: what would do. */
export function tooShallow(kind: PatternKind, role: Role, highestNeededMm: Mm, room: PatternRoom) {
  const neededFloatToHookMm = highestNeededMm + floatClearMm;
  return noAnswer("pattern.too-shallow", {
    pattern: kind,
    role,
    depthMm: room.depthMm,
    // To the next centimetre, so that the depth still does when it is told on the bank.
    neededDepthMm: Math.ceil((room.depthMm + neededFloatToHookMm - room.floatToHookMm) / 10) * 10,
    floatToHookMm: room.floatToHookMm,
    neededFloatToHookMm,
  });
}

/**
 * Holds placed shot, given from the hook up, against what every pattern keeps to: sizes never grow towards the hook,
 * neighbours at least a diameter apart, everything between hook and float.
 */
export function checked(
  kind: PatternKind,
  shot: readonly PlacedShot[],
  room: PatternRoom,
  findings: readonly Finding[],
): Answer<readonly PlacedShot[]> {
  const lowest = shot[0];
  if (lowest && lowest.fromHookMm < hookClearMm) {
    return noAnswer("pattern.too-near-hook", {
      role: lowest.role,
      fromHookMm: lowest.fromHookMm,
      atLeastMm: hookClearMm,
    });
  }
  for (const [below, above] of neighbours(shot)) {
    if (below.massG > above.massG) {
      return noAnswer("pattern.grows-towards-hook", {
        role: below.role,
        size: below.size,
        aboveRole: above.role,
        aboveSize: above.size,
      });
    }
    const gapMm = above.fromHookMm - below.fromHookMm;
    const leastMm = apartMm(below, above);
    if (gapMm < leastMm - 1e-9) {
      return noAnswer("pattern.too-close", {
        role: below.role,
        aboveRole: above.role,
        fromHookMm: below.fromHookMm,
        aboveFromHookMm: above.fromHookMm,
        leastMm,
      });
    }
  }
  const highest = shot[shot.length - 1];
  if (highest && highest.fromHookMm > highestMm(room) + 1e-9) {
    return tooShallow(kind, highest.role, highest.fromHookMm, room);
  }
  return answer(shot, findings);
}
