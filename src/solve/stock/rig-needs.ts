import type { Metal } from "../../core/tackle/shot.ts";
import { allShot, type SolvedRig } from "../../model/solved.ts";
import { needOf, type RigMaking, type ThingNeed } from "../../model/stock.ts";

/**
 * What one rig takes, made up once: its float, the most shot of each size and metal that it has at any of its depths,
 * hooks and line for its hook lengths, and main line.
 */
export function rigNeeds(
  { rig, depths }: Pick<SolvedRig, "rig" | "depths">,
  { hookLengths, hookLineM, mainLineM }: Omit<RigMaking, "spareShare">,
): readonly ThingNeed[] {
  const { float } = rig;
  return [
    needOf({ kind: "float", id: float.id, title: float.title }, 1),
    ...mostShot(depths),
    needOf({ kind: "hook", size: rig.hook.size }, hookLengths),
    needOf({ kind: "hook length", strengthG: rig.hookLine.strengthG }, hookLengths * hookLineM),
    needOf({ kind: "line", strengthG: rig.mainLine.strengthG }, mainLineM),
  ];
}

/** The most of each size and metal at any depth, heaviest first. */
function mostShot(depths: SolvedRig["depths"]): readonly ThingNeed[] {
  const most = new Map<string, { need: ThingNeed; massG: number }>();
  for (const depth of depths) {
    const shot = allShot(depth);
    for (const { size, metal, massG } of shot) {
      const count = shot.filter((one) => one.size === size && one.metal === metal).length;
      const need = shotNeed(size, metal, count);
      const before = most.get(need.name);
      if (!before || before.need.count < count) most.set(need.name, { need, massG });
    }
  }
  return [...most.values()].sort((a, b) => b.massG - a.massG).map(({ need }) => need);
}

const shotNeed = (size: string, metal: Metal, count: number): ThingNeed =>
  needOf({ kind: "shot", size, metal }, count);
