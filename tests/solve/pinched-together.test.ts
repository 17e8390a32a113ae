import { expect, it } from "vitest";
import type { Role } from "../../src/core/patterns/pattern.ts";
import { pinchedTogether } from "../../src/solve/pinched-together.ts";

const shot = (role: Role, fromHookMm: number, size = "No 6") =>
  ({ role, fromHookMm, size, massG: 0.1, metal: "tin", pullG: 0.09, diameterMm: 3 }) as const;
const telltale = shot("telltale", 315, "No 8");
const sizes = (lockShot: ReturnType<typeof shot>[], ...lineShot: ReturnType<typeof shot>[]) => {
  const { of, shot: together = [] } = pinchedTogether({ lockShot, lineShot }) ?? {};
  return [of, ...together.map(({ fromHookMm }) => fromHookMm)];
};

it("is the lock where shot hold the float, whatever hangs on the line", () => {
  const bulk = [shot("bulk", 600), shot("bulk", 603)];
  expect(sizes([shot("lock", 900), shot("lock", 900)], telltale, ...bulk)).toEqual(["lock", 900, 900]);
});

it("is the bulk or the anchor of a float that no shot hold, without droppers and telltale", () => {
  const bulk = [shot("bulk", 600), shot("bulk", 603), shot("bulk", 606, "BB")];
  expect(sizes([], telltale, shot("dropper", 450), ...bulk)).toEqual(["bulk", 600, 603, 606]);
  expect(sizes([], shot("anchor", 50, "SSG"))).toEqual(["anchor", 50]);
});

it("is nothing where each shot has its own place", () => {
  expect(sizes([], telltale, shot("spread", 400), shot("spread", 500), shot("spread", 600))).toEqual([
    undefined,
  ]);
  expect(sizes([], telltale, shot("bulk", 600), shot("bulk", 650), shot("bulk", 700))).toEqual([undefined]);
  expect(sizes([])).toEqual([undefined]);
});
