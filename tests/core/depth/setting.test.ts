import { expect, it } from "vitest";
import { checkSetting } from "../../../src/core/depth/setting.ts";

it.each([
  ["dead depth", 0, true],
  ["dead depth", 50, false],
  ["over depth", 50, true],
  ["over depth", 0, false],
  ["off bottom", -50, true],
  ["off bottom", 50, false],
  ["up in the water", -600, true],
  ["up in the water", Number.NaN, false],
] as const)("%s with %d mm beyond the depth agrees: %s", (setting, overdepthMm, agrees) => {
  expect(checkSetting(setting, overdepthMm).length === 0).toBe(agrees);
});
