import { describe, expect, it } from "vitest";
import type { Sink } from "../../src/core/sink/sink-of-rig.ts";
import { bulkGains } from "../../src/solve/sister-verdict.ts";

/** A rig that takes so long to the bed, landed straight and in a heap [s]; nothing else of its sinking counts here. */
const sinking = (straightS: number, heapS: number) =>
  [straightS, heapS].map((timeS) => ({ tenthsS: [timeS / 2, timeS] })) as unknown as readonly Sink[];

describe("whether gathering the shot is worth it", () => {
  // Our own bound: a twentieth sooner at the least.
  it.each([
    [9.49, 9.49, "both"],
    [9.49, 9.51, "straight"],
    [9.51, 9.49, "heap"],
    [9.51, 9.51, "nothing"],
    [9.5, 9.5, "nothing"],
    [10.5, 10.5, "nothing"],
  ] as const)(
    "against 10 s strung out, %d s straight and %d s in a heap gain %s",
    (straight, heap, gains) => {
      const [gathered, strungOut] = [sinking(straight, heap), sinking(10, 10)];
      expect(bulkGains(strungOut, { arrangement: "bulk", shot: [], sink: gathered })).toBe(gains);
      expect(bulkGains(gathered, { arrangement: "strung out", shot: [], sink: strungOut })).toBe(gains);
    },
  );
});
