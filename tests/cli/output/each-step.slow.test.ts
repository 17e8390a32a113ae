import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build as bundle } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { outputKey, workName } from "../../../src/cli/output/owner.ts";
import { temporaryFolder } from "../../support/cli.ts";
import { expectWhole } from "../../support/output/whole.ts";
import { start } from "../../support/run-process.ts";

/**
 * Builds and clearings up of which each step on the disk goes wrong in turn: what is promised holds for all of them,
 * not for those alone that a random moment meets.
 */

const support = join(import.meta.dirname, "../../support/output");
const faults = join(support, "fault-at-step.mjs");
let tools: string;
let driver: string;
beforeAll(async () => {
  tools = mkdtempSync(join(tmpdir(), "dotdown-"));
  driver = join(tools, "driver.mjs");
  await bundle({
    entryPoints: [join(support, "driver.ts")],
    outfile: driver,
    bundle: true,
    packages: "external",
    platform: "node",
    format: "esm",
  });
});

afterAll(() => rmSync(tools, { recursive: true }));

/** A folder of its own for one trial, and its driver. */
function trial(template?: string) {
  const folder = join(temporaryFolder(), "trial");
  if (template) cpSync(template, folder, { recursive: true });
  else mkdirSync(folder);
  const out = join(folder, "out");
  const state = join(folder, "../state");
  const rival = join(folder, workName(outputKey("out")));
  /** Runs the driver in a place where it finds no output by itself; its notes alone lead it there. */
  const drive = (args: readonly string[], fault = "", at = 0) =>
    start(process.execPath, ["--import", faults, driver, ...args], tools, {
      env: { XDG_STATE_HOME: state, FAULT: fault, FAULT_AT: String(at), RIVAL: rival },
    });
  return {
    folder,
    out,
    /** The work folder of a build that is alive. */
    rival,
    build: (title: string, fault?: string, at?: number) => drive(["build", out, title], fault, at).ended,
    clear: (fault?: string, at?: number) => drive(["clear"], fault, at).ended,
    /** A build at work, and whether it says that it waits for another before it ends. */
    begin: (title: string, fault: string, at: number) => {
      const { child, ended } = drive(["build", out, title], fault, at);
      const waits = new Promise<boolean>((told) => {
        child.stderr.on("data", (said) => String(said).includes("this one waits") && told(true));
        ended.finally(() => told(false));
      });
      return { ended, waits };
    },
    title: () => readFileSync(join(out, "site/index.html"), "utf8").split(" ")[0],
    state: () => (existsSync(join(state, "dotdown")) ? readdirSync(join(state, "dotdown")) : []),
  };
}

/** A folder with an output, to begin trials from. */
async function withOldOutput(): Promise<string> {
  const { folder, build } = trial();
  expect(await build("old")).toMatchObject({ code: 0, stderr: "" });
  return folder;
}

const stepsOf = (stdout: string) => Number(/(\d+) steps/.exec(stdout)![1]);

describe.each(["kill", "torn"])("a build whose process ends at some step (%s)", (fault) => {
  it.each([
    ["an old output", true],
    ["no output yet", false],
  ])("where there is %s, leaves one whole, and the next command clears up", async (_, isOld) => {
    const old = isOld ? await withOldOutput() : undefined;
    const steps = stepsOf((await trial(old).build("new")).stdout);
    expect(steps).toBeGreaterThan(20);
    const left = new Set<string | undefined>();
    for (let at = 1; at <= steps; at++) {
      const { folder, out, build, clear, title, state } = trial(old);
      expect(await build("new", fault, at), `step ${at}`).toMatchObject({ code: null });
      if (existsSync(out)) expectWhole(out);
      expect(await clear(), `step ${at}`).toMatchObject({ code: 0 });
      if (isOld || existsSync(out)) {
        expectWhole(out);
        left.add(title());
      } else left.add("none");
      expect(readdirSync(folder), `step ${at}`).toEqual(existsSync(out) ? ["out"] : []);
      expect(state(), `step ${at}`).toEqual([]);
    }
    expect([...left].sort()).toEqual(isOld ? ["new", "old"] : ["new", "none"]);
  });
});

it.each(["stop", "stop twice"])(
  "a build that is asked to %s at some step leaves an output whole and nothing beside it",
  async (fault) => {
    const old = await withOldOutput();
    const steps = stepsOf((await trial(old).build("new")).stdout);
    const left = new Set<string | undefined>();
    for (let at = 1; at <= steps; at++) {
      const { folder, out, build, title, state } = trial(old);
      await build("new", fault, at);
      expectWhole(out);
      left.add(title());
      expect(readdirSync(folder), `step ${at}`).toEqual(["out"]);
      expect(state(), `step ${at}`).toEqual([]);
    }
    expect([...left].sort()).toEqual(["new", "old"]);
  },
);

it("a build whose process ends at some step never brings back half of an old output, though the new one be taken away", async () => {
  const old = await withOldOutput();
  const steps = stepsOf((await trial(old).build("new")).stdout);
  for (let at = 1; at <= steps; at++) {
    const { folder, out, build, clear, title } = trial(old);
    await build("new", "kill", at);
    if (!existsSync(out) || title() === "old") continue;
    rmSync(out, { recursive: true });
    await clear();
    if (existsSync(out)) expectWhole(out);
    else expect(readdirSync(folder), `step ${at}`).toEqual([]);
  }
});

it("a build whose output somebody changes as it comes into its place takes the old one back, and keeps the change", async () => {
  const old = await withOldOutput();
  const steps = stepsOf((await trial(old).build("new")).stdout);
  let spoilt = 0;
  for (let at = 1; at <= steps; at++) {
    const { folder, out, build, title } = trial(old);
    const { code, stderr } = await build("new", "spoil", at);
    if (code === 0) continue;
    spoilt++;
    expect(stderr).toMatch(
      /^Trouble: .*site\/index\.html was changed by something else .*; what is there is as it was/m,
    );
    expectWhole(out);
    expect(title()).toBe("old");
    const kept = readdirSync(folder).filter((name) => name !== "out");
    expect(kept).toEqual([expect.stringContaining("dotdown-kept-")]);
    expect(readFileSync(join(folder, kept[0]!, "next/site/index.html"), "utf8")).toMatch(/more$/);
  }
  expect(spoilt).toBe(1);
});

it("a build that another one comes before at the last moment gives way until that is done", async () => {
  let gaveWay = 0;
  // The first folders that a build makes are that of its notes and its own.
  for (const at of [1, 2, 3]) {
    const { folder, out, rival, begin } = trial();
    const { ended, waits } = begin("new", "rival", at);
    if (!(await waits)) continue;
    gaveWay++;
    expect(existsSync(out), `step ${at}`).toBe(false);
    rmSync(rival, { recursive: true });
    expect(await ended, `step ${at}`).toMatchObject({ code: 0 });
    expect(readdirSync(folder)).toEqual(["out"]);
  }
  expect(gaveWay).toBeGreaterThan(0);
});

describe.each([
  ["ends", "kill"],
  ["is asked to stop", "stop"],
  ["is asked to stop twice", "stop twice"],
])("a clearing up whose process %s at some step", (_, fault) => {
  it("is taken up by the next one", async () => {
    const old = await withOldOutput();
    /** A build that was stopped between the two moves of its swap; found by trying each step. */
    const stopped = async () => {
      for (let at = swapAt; ; at++) {
        const one = trial(old);
        await one.build("new", "kill", at);
        swapAt = at;
        if (!existsSync(one.out)) return one;
      }
    };
    let swapAt = 1;
    const steps = stepsOf((await (await stopped()).clear()).stdout);
    expect(steps).toBeGreaterThan(5);
    for (let at = 1; at <= steps; at++) {
      const { folder, out, clear, title } = await stopped();
      const { code } = await clear(fault, at);
      if (fault === "kill") expect(code, `step ${at}`).toBe(null);
      expect(await clear(), `step ${at}`).toMatchObject({ code: 0 });
      expectWhole(out);
      expect(title(), `step ${at}`).toBe("new");
      expect(readdirSync(folder), `step ${at}`).toEqual(["out"]);
    }
  });
});

describe.each(["EIO", "EIO+", "EACCES", "EROFS+", "ENOSPC+"])(
  "a build that the system answers with %s at some step",
  (fault) => {
    it("keeps the old output or has the new one, and says which", async () => {
      const old = await withOldOutput();
      const steps = stepsOf((await trial(old).build("new")).stdout);
      for (let at = 1; at <= steps; at++) {
        const { folder, out, build, clear, title } = trial(old);
        const { code, stderr } = await build("new", fault, at);
        if (code === 1)
          expect(stderr, `step ${at}`).toMatch(/^Trouble: .*out cannot be written: .* To go on, /m);
        else expect(code, `step ${at}`).toBe(0);
        if (!fault.endsWith("+") && !stderr.includes("cannot be cleared up now"))
          expect(readdirSync(folder), `step ${at}`).toEqual(["out"]);
        // Where the system does not even allow the old output back, the next command puts it back.
        if (!existsSync(out)) expect(fault.at(-1), `step ${at}`).toBe("+");
        expect(await clear(), `step ${at}`).toMatchObject({ code: 0 });
        expectWhole(out);
        if (code === 0) expect(title(), `step ${at}`).toBe("new");
        expect(readdirSync(folder), `step ${at}`).toEqual(["out"]);
      }
    });
  },
);
