// How long a guide's lessons take to become pages, beside a general site generator and a bare Markdown processor on the same
// texts: cold, and after one of them has been edited. `--lessons 1000` says how many, `--runs 5` how often each is measured,
// `--json FILE` where the figures go, too.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";
import { nodeBundle } from "../bundle-options.mjs";
import { inTurn, machine, median, table } from "./contest.mjs";
import { writeGuide } from "./write-guide.mjs";

const root = join(import.meta.dirname, "../..");
const { values: asked } = parseArgs({
  options: {
    lessons: { type: "string", default: "1000" },
    runs: { type: "string", default: "3" },
    json: { type: "string" },
  },
});

/** The edition that the figures in docs/bench.md are of; it is put into a folder that is deleted again. */
const generator = "@11ty/eleventy@3.1.8";

const folder = mkdtempSync(join(tmpdir(), "dotdown-pages-"));
const content = join(folder, "content");
const node = (script, ...args) =>
  execFileSync(process.execPath, [script, ...args], { stdio: ["ignore", "ignore", "inherit"] });

/** The pages of a guide and nothing else: neither what is printed nor the data. */
async function ours() {
  const script = join(root, "node_modules/.cache/dotdown/bench-pages.mjs");
  const from = (path) => JSON.stringify(join(root, "src", path));
  await build({
    ...nodeBundle,
    stdin: {
      contents: `
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { solveChecked } from ${from("build/build.ts")};
import { checkSources } from ${from("build/check-sources.ts")};
import { siteInput } from ${from("build/site-input.ts")};
import { disk } from ${from("cli/disk.ts")};
import { storeOnDisk } from ${from("cli/kept-on-disk.ts")};
import { shelfIn } from ${from("cli/kept-on-shelf.ts")};
import { readSources } from ${from("content/world.ts")};
import { drawPictures } from ${from("drawing/pictures.ts")};
import { keeping } from ${from("model/kept.ts")};
import { siteFiles } from ${from("site/site-files.tsx")};
const [content, out, cache] = process.argv.slice(2);
const shelf = shelfIn(storeOnDisk(cache, Buffer.from("bench")), "guide");
const keep = keeping(shelf);
const sources = await readSources(disk, [content]);
const { value } = await solveChecked(checkSources(sources, keep), keep, "errors");
const before = process.cpuUsage();
const settings = { date: "2026-01-01", siteAssets: new Map(), keep };
for await (const file of siteFiles(siteInput(value, drawPictures(value.source), [], settings))) {
  const path = join(out, file.path);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, file.content);
}
shelf.end();
const { user, system } = process.cpuUsage(before);
writeFileSync(join(out, "pages.json"), JSON.stringify((user + system) / 1e6));
`,
      resolveDir: root,
      loader: "ts",
    },
    outfile: script,
  });
  return script;
}

/** Markdown to HTML by the processor that the guide uses, with no page around it. */
function bare() {
  const script = join(folder, "bare.mjs");
  const from = (name) => JSON.stringify(pathToFileURL(join(root, "node_modules", name, "index.js")).href);
  writeFileSync(
    script,
    `
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { unified } from ${from("unified")};
import remarkParse from ${from("remark-parse")};
import remarkFrontmatter from ${from("remark-frontmatter")};
import remarkGfm from ${from("remark-gfm")};
import remarkDirective from ${from("remark-directive")};
import remarkRehype from ${from("remark-rehype")};
import rehypeStringify from ${from("rehype-stringify")};
const [texts, out] = process.argv.slice(2);
mkdirSync(out, { recursive: true });
const processor = unified().use(remarkParse).use(remarkFrontmatter).use(remarkGfm).use(remarkDirective).use(remarkRehype).use(rehypeStringify);
for (const name of readdirSync(texts))
  writeFileSync(out + "/" + name.replace(".md", ".html"), String(processor.processSync(readFileSync(texts + "/" + name, "utf8"))));
`,
  );
  return script;
}

/** The generator with its own Markdown, each text in a page with head and title. */
function installed() {
  const own = join(folder, "generator");
  mkdirSync(join(own, "texts/_includes"), { recursive: true });
  writeFileSync(join(own, "package.json"), '{ "private": true, "type": "module" }\n');
  execFileSync("npm", ["install", "--no-audit", "--no-fund", generator], { cwd: own, stdio: "ignore" });
  writeFileSync(
    join(own, "eleventy.config.js"),
    'export default () => ({ markdownTemplateEngine: false, dir: { input: "texts", output: "out" } });\n',
  );
  writeFileSync(
    join(own, "texts/_includes/page.liquid"),
    "<!doctype html><html><head><title>{{ title }}</title></head><body><h1>{{ title }}</h1>{{ content }}</body></html>\n",
  );
  writeFileSync(join(own, "texts/texts.json"), '{ "layout": "page.liquid" }\n');
  const script = join(own, "build.mjs");
  writeFileSync(
    script,
    'import Eleventy from "@11ty/eleventy";\nprocess.chdir(import.meta.dirname);\nawait new Eleventy("texts", "out", { quietMode: true }).write();\n',
  );
  return { script, texts: join(own, "texts") };
}

const count = Number(asked.lessons);
writeGuide(content, { rigs: 1, lessons: count, seed: 1 });
const lessons = join(content, "lessons");
const { script: generate, texts } = installed();
cpSync(lessons, texts, { recursive: true });
const [pages, loop] = [await ours(), bare()];
const cache = join(folder, "kept");
const out = join(folder, "out");
const make = () => node(pages, content, out, cache);
/** Seconds of the processor that pages alone took, once rigs were solved. */
const withoutSums = [];
try {
  const rows = await inTurn(
    {
      "pages of the guide": () => {
        rmSync(cache, { recursive: true, force: true });
        make();
        withoutSums.push(JSON.parse(readFileSync(join(out, "pages.json"), "utf8")));
      },
      "pages of the guide after one edit": (round) => {
        const file = join(lessons, "casting.md");
        const text = readFileSync(file, "utf8").replace(/\n*(?:Words \d+\.\n)?$/, "");
        writeFileSync(file, `${text}\n\nWords ${round}.\n`);
        make();
      },
      "the site generator": () => node(generate),
      "a bare Markdown processor": () => node(loop, lessons, join(folder, "bare")),
    },
    Number(asked.runs),
  );
  const [cold, edited, generated, processed] = rows;
  const ratios = {
    "cold to the generator": cold.cpuS / generated.cpuS,
    "cold to the processor": cold.cpuS / processed.cpuS,
    "cold, without reading, sums and checks, to the generator": median(withoutSums.slice(1)) / generated.cpuS,
    "after one edit to the generator": edited.cpuS / generated.cpuS,
  };
  const made = readdirSync(join(out, "site/lessons")).length;
  process.stdout.write(`${count} lessons to ${made} pages\n\n${table(rows)}\n\n`);
  for (const [name, ratio] of Object.entries(ratios)) process.stdout.write(`${name}: ${ratio.toFixed(2)}\n`);
  const date = new Date().toISOString().slice(0, 10);
  const figures = {
    date,
    machine: machine(),
    generator,
    lessons: count,
    runs: Number(asked.runs),
    rows,
    ratios,
  };
  if (asked.json) writeFileSync(asked.json, `${JSON.stringify(figures, null, 2)}\n`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
