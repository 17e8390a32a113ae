import type { Float } from "../../core/float/float.ts";
import { first } from "../../core/lists.ts";
import type { ChoosableRig, Conditions, RigShelf, RuledOutBy } from "../../model/choosing.ts";
import { blows, type LimitRule } from "../../model/choosing-rules.ts";
import { levels } from "../../model/library.ts";
import { type LineForFish, strengthRoundingG } from "../../model/line-table.ts";
import type { Rig } from "../../model/rig.ts";

type Of<R extends LimitRule["rule"]> = Extract<LimitRule, { readonly rule: R }>;
/** Rules that need no sums. */
type QuickRule = Exclude<LimitRule["rule"], "rod" | "box">;

/** What of a rule's kind rules a rig out, or nothing. */
type Limit<R extends QuickRule> = (
  rule: Of<R>,
  entry: ChoosableRig,
  conditions: Conditions,
  lines: RigShelf["lines"],
) => RuledOutBy | undefined;

const limits: { readonly [R in QuickRule]: Limit<R> } = {
  water: (_, { rig: { water } }, conditions) =>
    water === conditions.water ? undefined : { rule: "water", water },
  pace: ({ most }, { rig: { pacesMs } }, { paceMs = 0 }) => {
    const mostMs = most * Math.max(...pacesMs);
    return pacesMs.length === 0 || paceMs <= mostMs ? undefined : { rule: "pace", paceMs, mostMs };
  },
  depth: ({ least, most }, { rig: { depthsMm } }, { depthMm }) => {
    const [leastMm, mostMm] = [least * Math.min(...depthsMm), most * Math.max(...depthsMm)];
    return depthMm >= leastMm && depthMm <= mostMm ? undefined : { rule: "depth", depthMm, leastMm, mostMm };
  },
  distance: ({ fromMm, loadEachMetreG }, { rig }, { fromBankMm }) => {
    if (rig.outfit === "whip") return undefined;
    const [loadG, neededG] = [castG(rig.float), (loadEachMetreG * (fromBankMm - fromMm)) / 1000];
    return loadG >= neededG ? undefined : { rule: "distance", loadG, neededG, fromBankMm };
  },
  "two points": ({ rodLengths }, { rig }, { fromBankMm, rodLengthMm = rig.rodLengthMm }) => {
    const mostMm = rodLengths * rodLengthMm;
    return rig.float.attachment !== "top and bottom" || rig.outfit === "whip" || fromBankMm <= mostMm
      ? undefined
      : { rule: "two points", fromBankMm, mostMm };
  },
  line: (_, { rig }, { fish, fishWanted }, lines) => {
    const rows = (lines?.rows ?? []).filter((row) => fish.some((name) => isSame(name, row.fish)));
    const tooLight = rows.flatMap((row) => lineTooLight(row, rig) ?? []);
    if (tooLight.length === 0 || (fishWanted === "any" && tooLight.length < rows.length)) return undefined;
    return first([...tooLight].sort((a, b) => a.leastG - b.leastG));
  },
  snag: ({ withinMm, mainLineG }, { rig }, { snagMm }) => {
    const { strengthG } = rig.mainLine;
    return snagMm === undefined || snagMm > withinMm || strengthG >= mainLineG - strengthRoundingG
      ? undefined
      : { rule: "snag", strengthG, leastG: mainLineG, snagMm };
  },
  level: ({ above }, { level }, { learner }) =>
    levels.indexOf(level) - levels.indexOf(learner) <= above ? undefined : { rule: "level", level },
  wind: ({ of, loadG: neededG }, { rig: { float } }, { wind }) => {
    const loadG = castG(float);
    return !blows(wind, of) || loadG >= neededG ? undefined : { rule: "wind", loadG, neededG };
  },
};

/** What a float is cast with: what it takes and what is built into it. */
const castG = ({ capacityG, selfLoadG }: Float) => capacityG + selfLoadG;

const isSame = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

/** Whether a rig's lines do for a fish, as far as the guide's table speaks of it. */
export function suitsLine(fish: string, rig: Rig, lines: RigShelf["lines"]): boolean {
  const row = lines?.rows.find((one) => isSame(fish, one.fish));
  return row === undefined || lineTooLight(row, rig) === undefined;
}

function lineTooLight({ fish, mainLine, hookLine }: LineForFish, rig: Rig) {
  const light = (
    [
      ["main line", rig.mainLine.strengthG, mainLine.leastG],
      ["hook length", rig.hookLine.strengthG, hookLine.leastG],
    ] as const
  ).find(([, strengthG, leastG]) => strengthG < leastG - strengthRoundingG);
  if (!light) return undefined;
  const [line, strengthG, leastG] = light;
  return { rule: "line", line, strengthG, leastG, fish } as const;
}

/** All that rules a rig out before any sums are done. */
export function quickLimits(
  rules: readonly LimitRule[],
  entry: ChoosableRig,
  conditions: Conditions,
  lines: RigShelf["lines"],
): readonly RuledOutBy[] {
  return rules.flatMap((rule) => {
    if (rule.rule === "rod" || rule.rule === "box") return [];
    return (limits[rule.rule] as Limit<QuickRule>)(rule, entry, conditions, lines) ?? [];
  });
}
