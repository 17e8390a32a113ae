// Writes a rig's drawing for 1.2 m of water as SVG.
import { writeFileSync } from "node:fs";
import { draw, readGuide, solve, svg } from "dotdown";

const { value: guide } = await readGuide();
const { value: solved } = guide ? await solve(guide) : { value: undefined };
if (!solved) throw new Error("the guide has errors; dotdown check says which");
const drawing = draw(solved, "first-session", { depthMm: 1200, widthMm: 90, heightMm: 140 });
writeFileSync("first-session.svg", svg(drawing));
console.log(drawing.description);
