// Prints what shows of each float's tip, and how much lead or other metal each rig carries.
import { readGuide, solve } from "dotdown";

const { value: guide } = await readGuide();
const { value: solved } = guide ? await solve(guide) : { value: undefined };
for (const { rig, depths } of solved?.rigs ?? []) {
  for (const { depthMm, tipAsSetMm, massG } of depths) {
    const figures = [depthMm / 1000, "m:", Math.round(tipAsSetMm), "mm of tip,", massG.toFixed(2), "g"];
    console.log(rig.title, ...figures);
  }
}
