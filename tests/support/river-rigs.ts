import fc from "fast-check";
import type { Rig } from "../../src/model/rig.ts";

/**
 * Rigs for running water that nobody made: floats, tubs and patterns of given ones, in other depths, paces, settings,
 * lines, baits and waters. The same for the same seed.
 */
export function randomRiverRigs(
  from: readonly Rig[],
  { count, seed }: { readonly count: number; readonly seed: number },
): readonly Rig[] {
  const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const changes = fc.record({
    base: fc.constantFrom(...from),
    line: fc.constantFrom(...from),
    bait: fc.constantFrom(...from),
    depthMm: within(800, 3000),
    paceMs: within(0.1, 1),
    overdepthMm: within(-150, 250),
    hookLengthMm: within(200, 400),
    tempC: within(2, 24),
    heldBackShare: fc.option(within(0.02, 0.6), { nil: undefined }),
  });
  return fc.sample(changes, { numRuns: count, seed }).map(({ base, ...own }, i): Rig => {
    const overdepthMm = Math.round(own.overdepthMm / 10) * 10;
    return {
      ...base,
      id: `random-${i}`,
      mainLine: own.line.mainLine,
      hookLine: own.line.hookLine,
      hook: own.bait.hook,
      bait: own.bait.bait,
      hookLengthMm: Math.round(own.hookLengthMm / 10) * 10,
      depthsMm: [Math.round(own.depthMm / 10) * 10],
      pacesMs: [own.paceMs],
      overdepthMm,
      setting: overdepthMm === 0 ? "dead depth" : overdepthMm > 0 ? "over depth" : "off bottom",
      conditions: { ...base.conditions, tempC: own.tempC },
      ...(own.heldBackShare !== undefined && { heldBackShare: own.heldBackShare }),
    };
  });
}
