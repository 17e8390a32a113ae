// Writes the drawing of the guide's first rig as SVG, in the deepest water that it is set for.
import { writeFileSync } from "node:fs";
import { draw, readGuide, solve, svg } from "dotdown";

const { value: guide } = await readGuide();
const { value: solved } = guide ? await solve(guide) : { value: undefined };
const first = solved?.rigs[0];
if (!solved || !first) throw new Error("the guide has errors, or no rig; dotdown check says which");
const { id } = first.rig;
const depthMm = Math.max(...first.depths.map((depth) => depth.depthMm));
const drawing = draw(solved, id, { depthMm, widthMm: 90, heightMm: 140 });
writeFileSync(`${id}.svg`, svg(drawing));
console.log(drawing.description);
