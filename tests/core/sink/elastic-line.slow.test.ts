import { expect, test } from "vitest";
import { compareWithElastic } from "./elastic-line.ts";
import { bulked, strungOut } from "./rigs.ts";

test.each([
  ["strung out, landed straight", strungOut, 1],
  ["strung out, in a heap", strungOut, 0],
  ["a bulk, landed straight", bulked, 1],
  ["a bulk, in a heap", bulked, 0],
] as const)(
  "%s, in fine pieces, the chain falls like an elastic line integrated by a library",
  (_, shot, drawnOut) => {
    for (const error of compareWithElastic(shot, 60, drawnOut)) expect(Math.abs(error)).toBeLessThan(0.05);
  },
);
