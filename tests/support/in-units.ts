import { disk } from "../../src/cli/disk.ts";
import type { World } from "../../src/content/world.ts";
import type { UnitChoice } from "../../src/model/unit-choice.ts";

/** The shipped content, told in other units. */
export const inUnits = (units: UnitChoice): World => ({
  ...disk,
  readText: async (path) => {
    const text = await disk.readText(path);
    return path === "content/guide.yaml" ? text?.replace(/^units: .*$/m, `units: ${units}`) : text;
  },
});
