import { expect, test } from "vitest";
import { compareWithElastic } from "./elastic-line.ts";
import { strungOut } from "./rigs.ts";

test.each([
  ["straight", 1],
  ["heap", 0],
] as const)(
  "strung out in 1 m, landed %s, the chain falls like an elastic line integrated by a library",
  (_, drawnOut) => {
    for (const error of compareWithElastic(strungOut, 100, drawnOut))
      expect(Math.abs(error)).toBeLessThan(0.05);
  },
);
