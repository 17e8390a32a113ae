// Writes an output, or clears up after one that was stopped, as a process of its own that can be killed.
import { clearLeftovers } from "../../../src/cli/output/leftovers.ts";
import { rememberedFolders } from "../../../src/cli/output/notes.ts";
import { withOutput } from "../../../src/cli/output/with-output.ts";
import type { OutputFile } from "../../../src/markup/output.ts";

async function* edition(title: string): AsyncIterable<OutputFile> {
  for (const path of ["site/index.html", "site/rigs/plain.html", "data/plain.json"]) {
    yield { path, content: `${title} ${path}` };
  }
  // What no edition changes gets a second name while two outputs are there.
  yield { path: "site/faces/plain.woff2", content: "the same" };
}

const tell = (line: string) => process.stderr.write(`${line}\n`);
const [command, out, title] = process.argv.slice(2);
try {
  if (command === "clear") clearLeftovers(rememberedFolders(), tell);
  else {
    await withOutput({ out: out!, contentFolders: [], tell }, ({ replace }) => replace(edition(title!)));
  }
} catch (error) {
  tell(`${(error as Error).constructor.name}: ${(error as Error).message}`);
  process.exitCode = 1;
}
