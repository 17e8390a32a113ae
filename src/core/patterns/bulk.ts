import { type Answer, noAnswer, warning } from "../finding.ts";
import { first, neighbours, paired } from "../lists.ts";
import type { Shot } from "../tackle/shot.ts";
import type { Mm } from "../units.ts";
import { aboveLoopMm, apartMm, checked, knotClearMm } from "./clearance.ts";
import type { BulkSpec, PatternRoom, PlacedShot, PlacePattern, SpreadBulkSpec } from "./pattern.ts";
import { droppersMm, stackedMm } from "./spacing.ts";
import { mainGroup, takeNamed } from "./supply.ts";

/** A tight group at the stated height, droppers evenly between it and the telltale. */
export const placeBulk: PlacePattern<BulkSpec> = (spec, room) => placeGroup(spec, room, stackedMm);

/**
 * Places telltale, droppers and a group whose own places `arrange` gives.
 *
 * @param arrange the group from the hook up and the place of its lowest shot → the place of each
 */
export function placeGroup(
  spec: BulkSpec | SpreadBulkSpec,
  room: PatternRoom,
  arrange: (shot: readonly Shot[], lowestMm: Mm) => readonly number[],
): Answer<readonly PlacedShot[]> {
  if (!(spec.fromHookMm > 0)) {
    return noAnswer("pattern.bad-length", { what: "bulk", lengthMm: spec.fromHookMm });
  }
  if (!(spec.share > 0 && spec.share <= 1)) return noAnswer("pattern.bad-share", { share: spec.share });
  const named = takeNamed(spec.telltale, spec.droppers, room);
  if (!named.ok) return named;
  const { telltale, telltaleMm, droppers, left, pullG } = named.value;

  const groupMm = Math.max(spec.fromHookMm, aboveLoopMm(room));
  if (spec.fromHookMm < room.hookLengthMm - knotClearMm) {
    return noAnswer("pattern.bulk-on-hook-length", {
      fromHookMm: spec.fromHookMm,
      hookLengthMm: room.hookLengthMm,
      atLeastMm: groupMm,
    });
  }
  const moved =
    groupMm > spec.fromHookMm
      ? [warning("pattern.moved-off-knot", { role: "bulk", askedMm: spec.fromHookMm, fromHookMm: groupMm })]
      : [];

  const below = [...droppers, telltale].reduce((a, b) => (b.massG > a.massG ? b : a));
  const groupPullG = room.locked ? Math.min(pullG, spec.share * room.pullG) : pullG;
  const main = mainGroup(spec.sizes, left, groupPullG, below, room);
  if (!main.ok) return main;

  const group = [...main.value].reverse();
  const alone =
    group.length === 1
      ? [warning("pattern.group-of-one", { pattern: spec.kind, size: first(group).size })]
      : [];
  const lower = [...droppers].reverse();
  const chain = [telltale, ...lower, first(group)];
  const leastMm = Math.max(...neighbours(chain).map(([lower, upper]) => apartMm(lower, upper)));
  const lowerMm = droppersMm(lower.length, telltaleMm, groupMm, leastMm, room);
  const groupAtMm = arrange(group, groupMm);
  const placed: PlacedShot[] = [
    { ...telltale, role: "telltale", fromHookMm: telltaleMm },
    ...paired(lower, lowerMm).map(
      ([one, fromHookMm]): PlacedShot => ({ ...one, role: "dropper", fromHookMm }),
    ),
    ...paired(group, groupAtMm).map(
      ([one, fromHookMm]): PlacedShot => ({ ...one, role: "bulk", fromHookMm }),
    ),
  ];
  return checked(spec.kind, placed, room, [...named.findings, ...moved, ...main.findings, ...alone]);
}
