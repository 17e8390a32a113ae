// How long a page takes to draw each frame of its films: every film of the lessons as it plays, and on the page where readers
// drive them each film drawn through and the rig made anew by its depth. What is counted is the processor's time of the whole
// task in the page's main thread (script, style, layout, paint), the least of several redraws of the same frame, as a machine
// that others use adds to some of them; times four, as a phone is about so much slower.
// `--site FOLDER` takes the site of a guide that is built already, `--runs 5` how often each frame is drawn, `--only NAME`
// which pages are measured, `--json FILE` where the figures go, with what the slowest frames were made of. A page whose script
// fails, or a film that does not end within `--limit SECONDS` (120), ends it with exit code 1 and says which.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { parseArgs } from "node:util";
import chromium from "@sparticuz/chromium";
import { chromium as engine } from "playwright-core";

const root = join(import.meta.dirname, "../..");
const { values: asked } = parseArgs({
  options: {
    site: { type: "string" },
    runs: { type: "string", default: "5" },
    only: { type: "string", default: "" },
    json: { type: "string" },
    limit: { type: "string", default: "120" },
  },
});
const runs = Number(asked.runs);
const limitMs = 1000 * Number(asked.limit);
/** How much slower than this machine a phone is taken to be. */
const slower = 4;
/** The most that a frame may take there [ms]. */
const aimMs = 8;
/** Of the film's time from one frame to the next [ms]. */
const stepMs = 100;
const rigsDriven = ["straight-waggler-bulk", "stick-held-back"];

const types = { ".html": "text/html", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml" };

/** Serves a folder on a free port. */
async function serve(folder) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://localhost");
    try {
      const content = readFileSync(join(folder, pathname));
      response.writeHead(200, { "content-type": types[extname(pathname)] ?? "application/octet-stream" });
      response.end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
  return { address: `http://localhost:${server.address().port}/`, close: () => server.close() };
}

/**
 * Steps the film's clock by the same each frame, so that each run draws the same frames, and marks each in the trace.
 * It runs in the page.
 */
function steppedClock(stepMs) {
  const ask = window.requestAnimationFrame.bind(window);
  let nowMs = 0;
  let frame = 0;
  window.requestAnimationFrame = (draw) =>
    ask(() => {
      nowMs += stepMs;
      if (window.framesOf !== undefined) performance.mark(`frame|${window.framesOf}|${frame++}`);
      draw(nowMs);
    });
  window.beginFrames = (name) => {
    window.framesOf = name;
    frame = 0;
  };
}

/** What a page's main thread did while something was done, as tasks with their processor's time and the marks in them. */
async function traced(client, act) {
  const events = [];
  const collect = ({ value }) => events.push(...value);
  client.on("Tracing.dataCollected", collect);
  // Tracing itself takes time, so what a task was made of is told only where a file is asked for.
  const categories = `toplevel,blink.user_timing${asked.json ? ",devtools.timeline" : ""}`;
  await client.send("Tracing.start", { categories, transferMode: "ReportEvents" });
  await act();
  const complete = new Promise((done) => client.once("Tracing.tracingComplete", done));
  await client.send("Tracing.end");
  await complete;
  client.off("Tracing.dataCollected", collect);
  const mains = events.filter(({ name, args }) => name === "thread_name" && args.name === "CrRendererMain");
  const isMain = ({ pid, tid }) => mains.some((one) => one.pid === pid && one.tid === tid);
  const marks = events.filter(({ cat, name }) => cat === "blink.user_timing" && name.startsWith("frame|"));
  const tasks = events
    .filter((one) => one.ph === "X" && /RunTask$/.test(one.name) && isMain(one))
    .sort((a, b) => a.ts - b.ts);
  const within = (task, { ts, tid, pid }) =>
    task.pid === pid && task.tid === tid && ts >= task.ts && ts < task.ts + task.dur;
  return tasks.map((task) => ({
    ms: (task.tdur ?? task.dur) / 1000,
    frame: marks.find((one) => within(task, one))?.name,
    parts: asked.json
      ? partsOf(events.filter((one) => one.ph === "X" && one !== task && within(task, one)))
      : [],
  }));
}

/** What a task was made of, the longest first. */
function partsOf(events) {
  return events
    .map(({ name, tdur = 0, args }) => ({ name, ms: tdur / 1000, at: args?.data?.functionName }))
    .filter(({ ms }) => ms > 0.3)
    .sort((a, b) => b.ms - a.ms)
    .slice(0, 8);
}

/** The least time of each frame over all runs, by the film they are of. */
function leastOf(tasks, into) {
  for (const { frame, ms, parts } of tasks) {
    if (frame === undefined) continue;
    const [, film, number] = frame.split("|");
    into[film] ??= new Map();
    const frames = into[film];
    if (!frames.has(number) || frames.get(number).ms > ms) frames.set(number, { number, ms, parts });
  }
}

/** What is done, or an error that says what did not end in time or made the page's script fail. */
async function ended(page, what, done) {
  let timer;
  let fail;
  const failed = new Promise((_, reject) => {
    fail = (error) => reject(new Error(`${what}: the page's script failed: ${error.message}`));
    page.on("pageerror", fail);
    timer = setTimeout(() => reject(new Error(`${what}: did not end in ${limitMs / 1000} s`)), limitMs);
  });
  try {
    return await Promise.race([done(), failed]);
  } finally {
    clearTimeout(timer);
    page.off("pageerror", fail);
  }
}

/** Plays every film that a page has, one after the other. */
async function playAll(page, client, prefix, figures) {
  const players = page.locator(".film-player:visible");
  const names = await players.evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
  for (const [i, name] of names.entries()) {
    const play = players.nth(i).locator("[data-does=play]");
    await players.nth(i).evaluate((one) => one.scrollIntoView({ behavior: "instant" }));
    for (let run = 0; run < runs; run++) {
      const playOnce = async () => {
        await page.evaluate((film) => window.beginFrames(film), `${prefix}${name}`);
        const [plays, rests] = [await play.textContent(), await play.getAttribute("data-other")];
        if (plays === rests) throw new Error(`${name} plays already`);
        await play.evaluate(async (button, playWords) => {
          button.click();
          while (button.textContent !== playWords) await new Promise((next) => setTimeout(next, 20));
          window.framesOf = undefined;
        }, plays);
      };
      const tasks = await ended(page, name, () => traced(client, playOnce));
      leastOf(tasks, figures);
    }
  }
}

/** Draws the depth of the rig through, as a finger does: each step waits until its sums are told. */
async function driveDepth(page, client, name, figures) {
  for (let run = 0; run < runs; run++) {
    const drag = () =>
      page.locator("#try-deep").evaluate(async (slider) => {
        const pause = (ms) => new Promise((next) => setTimeout(next, ms));
        for (let step = 0; step < 12; step++) {
          slider.value = String(Number(slider.min) + 2 + step);
          performance.mark(`frame|begin|${step}`);
          slider.dispatchEvent(new Event("input", { bubbles: true }));
          await pause(250);
        }
      });
    const tasks = await ended(page, name, () => traced(client, drag));
    // By its place in the run, as the tasks between two steps are the same ones each time or nearly so.
    const longest = tasks.toSorted((a, b) => b.ms - a.ms).slice(0, 60);
    for (const [place, { ms, parts }] of longest.entries()) {
      leastOf([{ frame: `frame|${name}|${place}`, ms, parts }], figures);
    }
  }
}

const built = mkdtempSync(join(tmpdir(), "dotdown-films-"));
const folder = asked.site ?? join(built, "site");
if (!asked.site) {
  execFileSync(process.execPath, [join(root, "dist/dotdown.js"), "build", "--for", "web", "--out", built], {
    stdio: "ignore",
  });
}
const { address, close } = await serve(folder);
const browser = await engine.launch({
  executablePath: await chromium.executablePath(),
  args: ["--headless=shell", "--no-sandbox", "--no-zygote", "--disable-gpu"],
});
const figures = {};
try {
  const opened = async (path) => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const page = await context.newPage();
    await page.addInitScript(steppedClock, stepMs);
    await page.goto(address + path);
    return { page, client: await context.newCDPSession(page), done: () => context.close() };
  };
  const lessons = readdirSync(join(folder, "lessons")).filter((file) => file.endsWith(".html"));
  for (const file of lessons) {
    if (!file.includes(asked.only)) continue;
    if (!readFileSync(join(folder, "lessons", file), "utf8").includes("film-player")) continue;
    const { page, client, done } = await opened(`lessons/${file}`);
    await page.locator(".film-player").first().waitFor();
    await playAll(page, client, "", figures);
    await done();
  }
  for (const rig of rigsDriven.filter((one) => one.includes(asked.only))) {
    const { page, client, done } = await opened(`try.html?rig=${rig}`);
    await page.locator("#try-bites .film-caption, #try-current .film-caption").first().waitFor();
    await page.waitForTimeout(2000);
    await playAll(page, client, `${rig}: `, figures);
    await driveDepth(page, client, `${rig}: depth of the water drawn through, longest tasks`, figures);
    await done();
  }
} finally {
  await browser.close();
  close();
  rmSync(built, { recursive: true, force: true });
}

const rows = Object.entries(figures).map(([film, frames]) => {
  const all = [...frames.values()].sort((a, b) => a.ms - b.ms);
  const at = (share) => slower * all[Math.min(all.length - 1, Math.floor(share * all.length))].ms;
  return {
    film,
    frames: all.length,
    medianMs: at(0.5),
    p95Ms: at(0.95),
    mostMs: at(1),
    slowest: all.slice(-4),
  };
});
for (const { film, frames, medianMs, p95Ms, mostMs } of rows.toSorted((a, b) => b.mostMs - a.mostMs)) {
  const told = [medianMs, p95Ms, mostMs].map((ms) => ms.toFixed(1)).join(" | ");
  process.stdout.write(`| ${film} | ${frames} | ${told} | ${mostMs > aimMs ? "above" : ""} |\n`);
}
if (asked.json) writeFileSync(asked.json, `${JSON.stringify(rows, null, 2)}\n`);
