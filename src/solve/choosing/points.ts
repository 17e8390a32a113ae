import type { ChoosableRig, Conditions, RigShelf, SpokenForBy } from "../../model/choosing.ts";
import { blows, type PointRule } from "../../model/choosing-rules.ts";
import { suitsLine } from "./limits.ts";

/** What of each rule speaks for a rig. */
export function spokenFor(
  rules: readonly PointRule[],
  entry: ChoosableRig,
  conditions: Conditions,
  shelf: Pick<RigShelf, "species" | "lines">,
): readonly SpokenForBy[] {
  return rules.flatMap((rule) => bySpokenRule(rule, entry, conditions, shelf) ?? []);
}

function bySpokenRule(
  rule: PointRule,
  { rig, level, catches }: ChoosableRig,
  { depthMm, paceMs, fish, learner, wind }: Conditions,
  { species, lines }: Pick<RigShelf, "species" | "lines">,
): SpokenForBy | undefined {
  const { points } = rule;
  switch (rule.rule) {
    case "fish": {
      const caught = fish.filter(
        (name) => suitsLine(name, rig, lines) && catches.some((other) => isOneFish(name, other, species)),
      );
      return caught.length > 0 ? { rule: "fish", fish: caught, points: points * caught.length } : undefined;
    }
    case "depth":
      return within("depth", depthMm, rig.depthsMm, points);
    case "pace":
      return paceMs === undefined ? undefined : within("pace", paceMs, rig.pacesMs, points);
    case "level":
      return level === learner ? { rule: "level", level, points } : undefined;
    case "wind":
      return blows(wind, rule.of) && rig.float.attachment === "bottom" ? { rule: "wind", points } : undefined;
  }
}

/** Whether a figure lies within those that a rig is made up for. */
function within(
  rule: "depth" | "pace",
  value: number,
  own: readonly number[],
  points: number,
): SpokenForBy | undefined {
  const [least, most] = [Math.min(...own), Math.max(...own)];
  return value >= least && value <= most ? { rule, least, most, points } : undefined;
}

/** Whether two names are of one kind of fish, as the guide knows it. */
function isOneFish(one: string, other: string, species: RigShelf["species"]): boolean {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  if (a === b) return true;
  return species.some(({ title, also }) => {
    const names = [title, ...also].map((name) => name.toLowerCase());
    return names.includes(a) && names.includes(b);
  });
}
