import { answer, noAnswer, warning } from "../finding.ts";
import { neighbours } from "../lists.ts";
import { totalPullG, tubWithout } from "../loading/loading.ts";
import type { Shot } from "../tackle/shot.ts";
import type { Mm } from "../units.ts";
import { aboveLoopMm, apartMm, checked, highestMm, tooShallow } from "./clearance.ts";
import type { PatternRoom, PlacedShot, PlacePattern, StrungOutSpec } from "./pattern.ts";
import { mainGroup, type Named, oneOf, takeNamed } from "./supply.ts";

/**
 * Shot of one size at the stated gap from the telltale up. On a locked float there are as many as find room and as
 * the line may carry, so that in shallow water load moves to the lock; without a lock they carry all that is left,
 * and close up where they find no room at the stated gap.
 */
export const placeStrungOut: PlacePattern<StrungOutSpec> = (spec, room) => {
  if (!(spec.gapMm > 0)) return noAnswer("pattern.bad-length", { what: "gap", lengthMm: spec.gapMm });
  const named = takeNamed(spec.telltale, [], room);
  if (!named.ok) return named;
  const { telltale, telltaleMm } = named.value;

  const firstMm = Math.max(telltaleMm + spec.gapMm, aboveLoopMm(room));
  const main = room.locked
    ? asManyAsGo(spec, named.value, firstMm, room)
    : wholeLoad(spec, named.value, room);
  if (!main.ok) return main;

  const spreadShot = [...main.value].reverse();
  const count = spreadShot.length;
  const gapMm = count > 1 ? Math.min(spec.gapMm, (highestMm(room) - firstMm) / (count - 1)) : spec.gapMm;
  const leastMm = Math.max(0, ...neighbours(spreadShot).map(([below, one]) => apartMm(below, one)));
  if (count > 0 && (firstMm > highestMm(room) || (count > 1 && gapMm < leastMm))) {
    return tooShallow(spec.kind, "spread", firstMm + leastMm * (count - 1), room);
  }
  const placed: PlacedShot[] = [
    { ...telltale, role: "telltale", fromHookMm: telltaleMm },
    ...spreadShot.map((one, i): PlacedShot => ({ ...one, role: "spread", fromHookMm: firstMm + gapMm * i })),
  ];
  const closed = gapMm < spec.gapMm ? [warning("pattern.gap-closed", { askedMm: spec.gapMm, gapMm })] : [];
  return checked(spec.kind, placed, room, [...named.findings, ...main.findings, ...closed]);
};

function asManyAsGo(spec: StrungOutSpec, named: Named, firstMm: Mm, room: PatternRoom) {
  const shot: Shot[] = [];
  let { left, pullG } = named;
  for (let atMm = firstMm; atMm <= highestMm(room); atMm += spec.gapMm) {
    const next = oneOf(left, spec.size);
    const nextG = next ? totalPullG([next], room.water) : 0;
    if (!next || nextG > pullG + 1e-9) break;
    shot.push(next);
    left = tubWithout(left, [next]);
    pullG -= nextG;
  }
  return answer<readonly Shot[]>(shot);
}

function wholeLoad(spec: StrungOutSpec, named: Named, room: PatternRoom) {
  const sizes = [spec.size, ...(spec.alsoSizes ?? [])];
  return mainGroup(sizes, named.left, named.pullG, named.telltale, room);
}
