import { settings } from "../../src/core/depth/setting.ts";
import type { PatternSpec } from "../../src/core/patterns/pattern.ts";
import type { Rig } from "../../src/model/rig.ts";
import { seededRandom, tradeMassesG, tradeTub } from "../core/loading-instances.ts";

import { shippedLibrary } from "./shipped-library.ts";

/** The shipped rigs for still water. */
export const shippedStillRigs: readonly Rig[] = shippedLibrary.rigs
  .map(({ rig }) => rig)
  .filter(({ water }) => water === "still");

/**
 * Rigs that nobody would write and everybody could: a shipped float, hook and bait with any pattern, tub, depth, setting,
 * hook length and water, the same at every run.
 */
export function randomStillRigs(count: number, seed: number): readonly Rig[] {
  const random = seededRandom(seed);
  const pick = <T>(values: readonly T[]): T => values[Math.floor(random() * values.length)]!;
  const within = (least: number, most: number) => Math.round(least + random() * (most - least));
  const sizes = Object.keys(tradeMassesG);
  const overdepthMm = {
    "dead depth": () => 0,
    "over depth": () => within(10, 900),
    "off bottom": () => -within(10, 300),
    "up in the water": () => -within(300, 1500),
  };
  return Array.from({ length: count }, (_, i): Rig => {
    const plain = pick(shippedStillRigs);
    const float = pick(shippedLibrary.floats).float;
    const setting = pick(settings);
    const metal = pick(["tin", "tin", "bismuth", "tungsten"] as const);
    const held = sizes.filter(() => random() < 0.6);
    const counts = (held.length > 0 ? held : ["No 8"]).map((size) => [size, pick([3, 10, 40])] as const);
    return {
      ...plain,
      id: `random-${i}`,
      float,
      bait: pick(shippedStillRigs).bait,
      hookLengthMm: within(150, 650),
      setting,
      overdepthMm: overdepthMm[setting](),
      depthsMm: [within(500, 5000)],
      pattern: randomPattern(
        pick,
        within,
        counts.map(([size]) => size),
      ),
      lockShareMin: pick([0, 0.5, 0.7]),
      tub: tradeTub(Object.fromEntries(counts), metal),
      conditions: { tempC: within(2, 24), salinity: pick([0, 0, 10]) },
    };
  });
}

function randomPattern(
  pick: <T>(values: readonly T[]) => T,
  within: (least: number, most: number) => number,
  sizes: readonly string[],
): PatternSpec {
  const light = sizes.at(-1)!;
  const telltale = { size: light, ...(pick([true, false]) && { fromHookMm: within(30, 140) }) };
  const bulk = {
    sizes,
    share: within(10, 100) / 100,
    fromHookMm: within(200, 900),
    droppers: pick([[], [light], [light, light]]),
    telltale,
  };
  return pick<() => PatternSpec>([
    () => ({ kind: "strung out", size: pick(sizes), gapMm: within(50, 400), alsoSizes: sizes, telltale }),
    () => ({ kind: "bulk", ...bulk }),
    () => ({ kind: "spread bulk", ...bulk, overMm: within(50, 500) }),
    () => ({ kind: "shirt button", sizes, telltale }),
    () => ({ kind: "lift", anchor: pick(sizes), fromHookMm: within(30, 140) }),
    () => ({ kind: "all at the float" }),
  ])();
}
