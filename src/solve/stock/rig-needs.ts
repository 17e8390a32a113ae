import { mostShot, type SolvedRig } from "../../model/solved.ts";
import { needOf, type RigMaking, type ThingNeed } from "../../model/stock.ts";

/**
 * What one rig takes, made up once: its float, the most shot of each size and metal that it has at any of its depths,
 * hooks and line for its hook lengths, and main line.
 */
export function rigNeeds(
  solved: Pick<SolvedRig, "rig" | "depths">,
  { hookLengths, hookLineM, mainLineM }: Omit<RigMaking, "spareShare">,
): readonly ThingNeed[] {
  const { rig } = solved;
  const { float } = rig;
  const shot = [...mostShot(solved)].sort((a, b) => b.massG - a.massG);
  return [
    needOf({ kind: "float", id: float.id, title: float.title }, 1),
    ...shot.map(({ size, metal, count }) => needOf({ kind: "shot", size, metal }, count)),
    needOf({ kind: "hook", size: rig.hook.size }, hookLengths),
    needOf({ kind: "hook length", strengthG: rig.hookLine.strengthG }, hookLengths * hookLineM),
    needOf({ kind: "line", strengthG: rig.mainLine.strengthG }, mainLineM),
  ];
}
