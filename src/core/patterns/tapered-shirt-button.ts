import { type Answer, answer } from "../finding.ts";
import { bankToleranceG, heaviestFirst, totalPullG, tubWithout } from "../loading/loading.ts";
import type { Shot, Tub } from "../tackle/shot.ts";
import type { PatternRoom, PlacePattern, ShirtButtonSpec } from "./pattern.ts";
import { placeButtons } from "./shirt-button.ts";
import { mainGroup, type Named, oneOf } from "./supply.ts";

/** The gap to the float is so many times the lowest gap (common practice, no source). */
const taper = 3;

/**
 * The whole load of the line from the telltale to the float, gaps and sizes falling towards the hook: gaps in even
 * steps, and one shot of every size allowed as far as that costs no pull.
 */
export const placeTaperedShirtButton: PlacePattern<ShirtButtonSpec> = (spec, room) =>
  placeButtons(
    spec,
    room,
    (named) => falling(spec, named, room),
    (count) => Array.from({ length: count + 1 }, (_, i) => 1 + ((taper - 1) * i) / Math.max(1, count)),
  );

/** The best mix; of those with one each of the lighter sizes put aside first, the one with most sizes that pulls as much. */
function falling(spec: ShirtButtonSpec, named: Named, room: PatternRoom): Answer<readonly Shot[]> {
  const plain = mainGroup(spec.sizes, named.left, named.pullG, named.telltale, room);
  if (!plain.ok) return plain;
  const plainG = totalPullG(plain.value, room.water);
  const each = oneOfEach(spec.sizes, named.left, named.telltale);
  for (let first = 0; first < each.length; first++) {
    const aside = each.slice(first);
    const leftG = named.pullG - totalPullG(aside, room.water);
    if (leftG < 0) continue;
    const rest = mainGroup(spec.sizes, tubWithout(named.left, aside), leftG, named.telltale, room);
    const shot = heaviestFirst([...aside, ...(rest.ok ? rest.value : [])]);
    if (totalPullG(shot, room.water) >= plainG - bankToleranceG) return answer(shot, plain.findings);
  }
  return plain;
}

/** One shot of each size that may stand above the telltale, heaviest first. */
function oneOfEach(sizes: readonly string[], tub: Tub, telltale: Shot): Shot[] {
  const each = sizes.map((size) => oneOf(tub, size)).filter((shot) => shot !== undefined);
  return heaviestFirst(each.filter((shot) => shot.massG >= telltale.massG));
}
