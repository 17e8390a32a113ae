import type { Metal, Shot, StockedShot } from "../../src/core/tackle/shot.ts";

/** Trade figures of split shot [g]: common practice, no source. */
export const tradeMassesG: Readonly<Record<string, number>> = {
  SSG: 1.6,
  AAA: 0.8,
  BB: 0.4,
  "No 1": 0.3,
  "No 4": 0.2,
  "No 6": 0.1,
  "No 8": 0.06,
  "No 9": 0.05,
  "No 10": 0.04,
  "No 11": 0.03,
  "No 12": 0.02,
  "No 13": 0.01,
};

/** A shot of the trade's figures. */
export function tradeShot(size: string, metal: Metal = "tin"): Shot {
  return { size, massG: tradeMassesG[size]!, metal };
}

/** So many of each size. */
export function tradeTub(counts: Readonly<Record<string, number>>, metal: Metal = "tin"): StockedShot[] {
  return Object.entries(counts).map(([size, count]) => ({ ...tradeShot(size, metal), count }));
}

/** Numbers from 0 to 1 that are the same at every run (mulberry32, a public-domain generator). */
export function seededRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface Instance {
  readonly tub: StockedShot[];
  readonly targetPullG: number;
}

/**
 * A tub and a float as a shop may have them: some of the sizes, few or uncounted shot, floats from 0.2 to 10 g. Half
 * of the tubs hold one metal by trade figures, three in ten one metal weighed to the milligram, two in ten lead dust
 * beside tin, for floats up to 2.5 g.
 */
export function randomInstance(random: () => number): Instance {
  const make = random();
  const weighed = make < 0.3;
  const mixed = make >= 0.8;
  const tub = Object.entries(tradeMassesG)
    .filter(() => random() < 0.6)
    .map(([size, massG]): StockedShot => {
      const mg = Math.round(massG * 1000 * (weighed ? 0.9 + 0.2 * random() : 1));
      const metal = mixed && massG <= 0.06 ? "lead" : "tin";
      const count = random() < 0.3 ? Number.POSITIVE_INFINITY : Math.floor(1 + 20 * random());
      return { size, massG: mg / 1000, metal, count };
    });
  if (tub.length === 0) return randomInstance(random);
  return { tub, targetPullG: 0.2 + (mixed ? 2.3 : 9.8) * random() };
}
