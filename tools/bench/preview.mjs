// How long it takes from a save to the fresh page in a preview of the shipped guide: a rig, a lesson, a word of all pages.
// `--runs 7` says how often each is saved, `--json FILE` where the figures go, too.
import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";

const root = join(import.meta.dirname, "../..");
const { values: asked } = parseArgs({
  options: { runs: { type: "string", default: "7" }, json: { type: "string" } },
});

/** What is saved, and the page that is looked at meanwhile; `number` makes each save another. */
const saves = {
  "a rig": {
    file: "rigs/margin.md",
    page: "rigs/margin.html",
    save: (text, number) => text.replace(/^depths: .*$/m, `depths: [0.7 m, 0.${81 + number} m, 1 m]`),
  },
  "a lesson": {
    file: "lessons/casting.md",
    page: "lessons/casting.html",
    save: (text, number) => `${text}\nWords ${number} at its end.\n`,
  },
  "a word of all pages": {
    file: "words/en.yaml",
    page: "lessons/casting.html",
    save: (text, number) => text.replace(/^(\s+)skip: .*$/m, `$1skip: To the text ${number}`),
  },
};

const folder = mkdtempSync(join(tmpdir(), "dotdown-preview-"));
const content = join(folder, "content");
cpSync(join(root, "content"), content, { recursive: true });
const args = [join(root, "dist/dotdown.js"), "preview", "--port", "0", "--content", content];
const server = spawn(process.execPath, args, {
  env: { ...process.env, DOTDOWN_CACHE: join(folder, "kept") },
});
server.stderr.pipe(process.stderr);

/** The first line that the preview says has its address. */
const address = await new Promise((found) => {
  server.stdout.on("data", (data) => {
    const said = /http:\S+/.exec(String(data));
    if (said) found(said[0].replace(/\/?$/, "/"));
  });
});

const pageAt = async (path) => (await fetch(address + path)).text();

/** Milliseconds from a save to the first page that shows it, asked for again and again. */
async function freshAfter({ file, page, save }, number) {
  const path = join(content, file);
  const before = await pageAt(page);
  const text = save(readFileSync(path, "utf8"), number);
  const from = performance.now();
  writeFileSync(path, text);
  while ((await pageAt(page)) === before);
  return performance.now() - from;
}

const figures = {};
try {
  for (const one of Object.values(saves)) await freshAfter(one, 0);
  for (let run = 1; run <= Number(asked.runs); run++) {
    for (const [name, one] of Object.entries(saves)) {
      figures[name] ??= [];
      figures[name].push(Math.round(await freshAfter(one, run)));
    }
  }
} finally {
  server.kill("SIGINT");
  await new Promise((ended) => server.once("exit", ended));
  rmSync(folder, { recursive: true, force: true });
}
for (const [name, times] of Object.entries(figures)) {
  const sorted = times.toSorted((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)];
  process.stdout.write(`| ${name} | ${median} (${sorted[0]}–${sorted.at(-1)}) |\n`);
}
if (asked.json) writeFileSync(asked.json, `${JSON.stringify(figures, null, 2)}\n`);
