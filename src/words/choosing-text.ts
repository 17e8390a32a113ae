import type { Conditions, RuledOutBy, SpokenForBy } from "../model/choosing.ts";
import { reasonText } from "./reason.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** What rules a rig out, as a sentence. */
export function ruledOutText(by: RuledOutBy, { words, figures }: TableKit): string {
  switch (by.rule) {
    case "rod":
    case "box":
    case "sums":
      return reasonText(by.finding, words, figures);
    case "water":
      return words(`choosing.out.water.${by.water}`);
    case "reach":
      return words("choosing.out.reach", {
        reach: figures.depth(by.reachMm),
        distance: figures.depth(by.fromBankMm),
      });
    case "pace":
      return words("choosing.out.pace", { pace: figures.speed(by.paceMs), most: figures.speed(by.mostMs) });
    case "depth":
      return words(by.depthMm < by.leastMm ? "choosing.out.too-shallow" : "choosing.out.too-deep", {
        depth: figures.depth(by.depthMm),
        bound: figures.depth(by.depthMm < by.leastMm ? by.leastMm : by.mostMm),
      });
    case "distance":
      return words("choosing.out.distance", {
        load: figures.mass(by.loadG),
        needed: figures.mass(by.neededG),
        distance: figures.depth(by.fromBankMm),
      });
    case "two points":
      return words("choosing.out.two-points", {
        distance: figures.depth(by.fromBankMm),
        most: figures.depth(by.mostMm),
      });
    case "line":
      return words(`choosing.out.${keyOf(by.line)}`, {
        strength: figures.strength(by.strengthG),
        least: figures.strength(by.leastG),
        fish: by.fish,
      });
    case "snag":
      return words("choosing.out.snag", {
        strength: figures.strength(by.strengthG),
        least: figures.strength(by.leastG),
        distance: figures.depth(by.snagMm),
      });
    case "level":
      return words(`choosing.out.level.${by.level}`);
    case "wind":
      return words("choosing.out.wind", { load: figures.mass(by.loadG), needed: figures.mass(by.neededG) });
  }
}

/** What speaks for a rig, with the points that it brings. */
export function spokenForText(by: SpokenForBy, { words, figures }: TableKit): string {
  const counted = (why: string) => words("choosing.for.counted", { why, points: by.points });
  switch (by.rule) {
    case "fish":
      return counted(words("choosing.for.fish", { fish: by.fish.join(", ") }));
    case "depth":
      return counted(
        words("choosing.for.depth", { least: figures.depth(by.least), most: figures.depth(by.most) }),
      );
    case "pace":
      return counted(
        words("choosing.for.pace", { least: figures.speed(by.least), most: figures.speed(by.most) }),
      );
    case "level":
      return counted(words(`choosing.for.level.${by.level}`));
    case "wind":
      return counted(words("choosing.for.wind"));
  }
}

/** What was asked, in one sentence. */
export function conditionsText(
  { wind, learner, fish }: Pick<Conditions, "wind" | "learner" | "fish">,
  { words }: TableKit,
): string {
  return words(fish.length > 0 ? "choosing.asked" : "choosing.asked-any", {
    learner: words(`choosing.learner.${learner}`),
    wind: words(`choosing.wind.${wind}`),
    fish: fish.join(", "),
  });
}
