// How long it takes from a save to the fresh page in a preview of the shipped guide, and to the end of the look of a check that
// watches: a rig, a lesson, a word of all pages.
// `--runs 7` says how often each is saved, `--json FILE` where the figures go, too.
import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { setTimeout } from "node:timers/promises";
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

/** Starts a command on the content; it is asked to end at the end. */
function started(...args) {
  const child = spawn(process.execPath, [join(root, "dist/dotdown.js"), ...args, "--content", content], {
    env: { ...process.env, DOTDOWN_CACHE: join(folder, "kept") },
  });
  child.stderr.pipe(process.stderr);
  const ended = new Promise((exit) => child.once("exit", exit));
  return {
    said: createInterface(child.stdout)[Symbol.asyncIterator](),
    end: () => child.kill("SIGINT") && ended,
  };
}

/** Changes the file of a save; @returns since when it is changed. */
function saved({ file, save }, number) {
  const path = join(content, file);
  const text = save(readFileSync(path, "utf8"), number);
  const from = performance.now();
  writeFileSync(path, text);
  return from;
}

/** Nobody saves sooner: what a save leaves to do afterwards, such as a second look, is done by then. */
const betweenSavesMs = 500;

/** Milliseconds from a save until a page that is open, and told of it as it is in a browser, has itself anew. */
async function previewing() {
  const { said, end } = started("preview", "--port", "0");
  const address = /http:\S+/.exec((await said.next()).value)[0].replace(/\/?$/, "/");
  const pageAt = async (path) => (await fetch(address + path)).text();
  const untilSeen = async (one, number) => {
    const [, stamp] = /client\.js\?([^"]+)/.exec(await pageAt(one.page));
    const listening = new AbortController();
    // Nothing is answered before there is something to tell.
    const told = fetch(`${address}preview/events?${stamp}`, { signal: listening.signal });
    const before = await pageAt(one.page);
    const from = saved(one, number);
    await told;
    const after = await pageAt(one.page);
    const tookMs = performance.now() - from;
    listening.abort();
    if (after === before) throw new Error(`${one.page} is as it was`);
    return tookMs;
  };
  return { untilSeen, end };
}

/** Milliseconds from a save to the line that ends the look at it. */
async function checking() {
  const { said, end } = started("check", "--watch", "--json");
  const ofLook = async () => {
    for (;;) {
      const { value } = await said.next();
      if (JSON.parse(value).saved) return;
    }
  };
  await ofLook();
  const untilSeen = async (one, number) => {
    const from = saved(one, number);
    await ofLook();
    return performance.now() - from;
  };
  return { untilSeen, end };
}

const runs = Number(asked.runs);
const figures = {};
try {
  for (const [by, start] of Object.entries({ page: previewing, check: checking })) {
    const { untilSeen, end } = await start();
    // The first of each is made with nothing known; numbers go on, so that each save is another.
    const first = by === "page" ? 0 : runs + 1;
    for (let run = 0; run <= runs; run++) {
      for (const [name, one] of Object.entries(saves)) {
        await setTimeout(betweenSavesMs);
        const tookMs = await untilSeen(one, first + run);
        const row = `${name}, ${by}`;
        if (run > 0) figures[row] = [...(figures[row] ?? []), Math.round(tookMs)];
      }
    }
    await end();
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const [name, times] of Object.entries(figures)) {
  const sorted = times.toSorted((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)];
  process.stdout.write(`| ${name} | ${median} (${sorted[0]}–${sorted.at(-1)}) |\n`);
}
if (asked.json) writeFileSync(asked.json, `${JSON.stringify(figures, null, 2)}\n`);
