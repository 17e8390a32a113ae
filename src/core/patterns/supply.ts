import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import { first } from "../lists.ts";
import { bankToleranceG, chooseShot, toMilligram, totalPullG, tubWithout } from "../loading/loading.ts";
import type { Shot, Tub } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import { aboveLoopMm, clearOfKnot } from "./clearance.ts";
import type { PatternRoom, Telltale } from "./pattern.ts";

/** Pull that the line may carry [g]: all of it where no shot lock the float. */
function linePullG(room: PatternRoom): number {
  return room.locked ? Math.min(room.linePullMaxG, room.pullG) : room.pullG;
}

/** One shot of a size from a tub, or undefined where it has none. */
export function oneOf(tub: Tub, size: string): Shot | undefined {
  const stocked = tub.find((one) => one.size === size && one.count >= 1);
  return stocked && { size, massG: toMilligram(stocked.massG), metal: stocked.metal };
}

/** The shot that a pattern names one by one, taken from the tub before its main group is chosen. */
export interface Named {
  readonly telltale: Shot;
  readonly telltaleMm: Mm;
  /** In the order asked for. */
  readonly droppers: readonly Shot[];
  readonly left: Tub;
  /** Pull that the line may still carry [g]. */
  readonly pullG: G;
}

/**
 * Takes telltale and droppers from the tub and puts the telltale in its place, by default just above the loop of the
 * hook length.
 */
export function takeNamed(telltale: Telltale, droppers: readonly string[], room: PatternRoom): Answer<Named> {
  const taken: Shot[] = [];
  let left = room.tub;
  for (const size of [telltale.size, ...droppers]) {
    const shot = oneOf(left, size);
    if (!shot) {
      return noAnswer("pattern.not-in-tub", { size, sizes: sizesIn(left) });
    }
    taken.push(shot);
    left = tubWithout(left, [shot]);
  }
  const lineG = linePullG(room);
  const takenG = totalPullG(taken, room.water);
  if (takenG > lineG + 1e-9) {
    return noAnswer("pattern.too-heavy-for-line", { pullG: takenG, linePullG: lineG });
  }
  const { atMm, findings } =
    telltale.fromHookMm === undefined
      ? { atMm: aboveLoopMm(room), findings: [] }
      : clearOfKnot(telltale.fromHookMm, "telltale", room);
  return answer(
    {
      telltale: first(taken),
      telltaleMm: atMm,
      droppers: taken.slice(1),
      left,
      pullG: Math.max(0, lineG - takenG),
    },
    findings,
  );
}

function sizesIn(tub: Tub): string {
  return [...new Set(tub.map(({ size }) => size))].join(", ");
}

/**
 * A pattern's main group: the best mix of the sizes allowed for a pull. Sizes lighter than the shot below the group
 * are left out, because sizes never grow towards the hook.
 *
 * @returns the shot, heaviest first
 */
export function mainGroup(
  sizes: readonly string[],
  tub: Tub,
  targetPullG: G,
  below: Shot,
  room: PatternRoom,
): Answer<readonly Shot[]> {
  const allowed = tub.filter(({ size }) => sizes.includes(size));
  const usable = allowed.filter(({ massG }) => toMilligram(massG) >= below.massG);
  const findings: Finding[] = allowed
    .filter((one) => !usable.includes(one))
    .map(({ size }) => warning("pattern.size-left-out", { size, below: below.size }));
  const choice = chooseShot({
    tub: usable,
    targetPullG,
    water: room.water,
    split: "one group",
    sizes,
    withinG: bankToleranceG,
  });
  if (!choice.ok) return choice;
  return answer(choice.value.shot, [...findings, ...choice.findings]);
}
