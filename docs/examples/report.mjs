// Tells what is wrong with a guide in the form that another program wants, here one line a file.
import { readGuide, solve } from "dotdown";

const read = await readGuide(...process.argv.slice(2));
const solved = read.value ? await solve(read.value) : undefined;
const messages = [...read.messages, ...(solved?.messages ?? [])];
const files = new Map(messages.map(({ file }) => [file, messages.filter((one) => one.file === file)]));
for (const [file, told] of files) {
  const errors = told.filter(({ severity }) => severity === "error");
  console.log(`${file}: ${errors.length} of ${told.length} are errors; first ${told[0]?.code}`);
}
console.log(`${messages.length} messages`);
