// Writes the figures of the guide, and nothing else of it, into a folder.
import { build, readGuide, solve, write } from "dotdown";

const { value: guide } = await readGuide();
const { value: solved } = guide ? await solve(guide) : { value: undefined };
if (!solved) throw new Error("the guide has errors; dotdown check says which");
const count = await write("figures", build(solved, ["data"]));
console.log(`${count} files of ${solved.title} in figures`);
