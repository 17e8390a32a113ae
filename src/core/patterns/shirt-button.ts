import type { Answer } from "../finding.ts";
import { paired } from "../lists.ts";
import type { Shot } from "../tackle/shot.ts";
import { checked, tooShallow } from "./clearance.ts";
import type { PatternRoom, PlacedShot, PlacePattern, ShirtButtonSpec } from "./pattern.ts";
import { spreadMm } from "./spacing.ts";
import { mainGroup, type Named, takeNamed } from "./supply.ts";

/** The whole load of the line in equal steps from the telltale to the float. */
export const placeShirtButton: PlacePattern<ShirtButtonSpec> = (spec, room) =>
  placeButtons(
    spec,
    room,
    ({ left, pullG, telltale }) => mainGroup(spec.sizes, left, pullG, telltale, room),
    (count) => new Array<number>(count + 1).fill(1),
  );

/**
 * Spreads the line's load from the telltale to the float.
 *
 * @param choose the shot above the telltale, heaviest first
 * @param weights of so many shot: how wide the gap below each is, and that to the float
 */
export function placeButtons(
  spec: ShirtButtonSpec,
  room: PatternRoom,
  choose: (named: Named) => Answer<readonly Shot[]>,
  weights: (count: number) => readonly number[],
): Answer<readonly PlacedShot[]> {
  const named = takeNamed(spec.telltale, [], room);
  if (!named.ok) return named;
  const { telltale, telltaleMm } = named.value;
  const main = choose(named.value);
  if (!main.ok) return main;

  const buttons = [...main.value].reverse();
  const places = spreadMm(telltale, telltaleMm, buttons, weights(buttons.length), room);
  if (!places.ok) return tooShallow(spec.kind, "spread", places.neededMm, room);
  const placed: PlacedShot[] = [
    { ...telltale, role: "telltale", fromHookMm: telltaleMm },
    ...paired(buttons, places.atMm).map(
      ([one, fromHookMm]): PlacedShot => ({ ...one, role: "spread", fromHookMm }),
    ),
  ];
  return checked(spec.kind, placed, room, [...named.findings, ...main.findings]);
}
