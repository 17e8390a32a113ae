import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { SolvedGuide } from "../../src/api/contract.ts";
import { build, draw, readGuide, solve, svg, write } from "../../src/api/index.ts";
import { smallGuide, temporaryFolder } from "../support/cli.ts";
import { edited } from "../support/smallest-content.ts";

const guideIn = (changes: Record<string, string | null> = {}) =>
  smallGuide(join(temporaryFolder(), "content"), changes);

async function solvedIn(folder: string): Promise<SolvedGuide> {
  const { value: read } = await readGuide(folder);
  const { value, messages } = await solve(read!);
  expect(messages.filter(({ severity }) => severity === "error")).toEqual([]);
  return value!;
}

describe("the package, as other programs import it", () => {
  it("reads a guide and does its sums", async () => {
    const { value, messages } = await readGuide(guideIn());
    expect(messages).toEqual([]);
    expect(value).toMatchObject({ title: "Test guide", rigs: [{ id: "plain", title: "Plain rig" }] });
    const solved = await solve(value!);
    expect(solved.value!.rigs[0]!.depths.map(({ depthMm }) => depthMm)).toEqual([1000, 1500]);
  });

  it("tells what is wrong with file, line and code, and gives no value", async () => {
    const folder = guideIn(edited("rigs/plain.md", "hook: 16", "hook: 99"));
    const { value, messages } = await readGuide(folder);
    expect(value).toBeUndefined();
    expect(messages).toMatchObject([{ severity: "error", file: join(folder, "rigs/plain.md"), line: 8 }]);
    expect(messages[0]!.reason).toContain("hook");
    await expect(readGuide(join(folder, "none"))).rejects.toThrow("there is no folder");
    await expect(readGuide(["content"] as never)).rejects.toThrow("takes folders one after another");
  });

  it("draws a rig at any depth that it can be had at", async () => {
    const solved = await solvedIn(guideIn());
    const drawing = draw(solved, "plain", { depthMm: 1300 });
    expect(drawing.title).toContain("1.3 m");
    expect(svg(drawing)).toMatch(/^<svg .*<title /s);
    expect(draw(solved, "plain").title).toContain("1 m");
    expect(() => draw(solved, "plan")).toThrow('there is no rig "plan"; there are plain');
    expect(() => draw(solved, "plain", { depthMm: 20 })).toThrow(
      "plain cannot be had at 20 mm: The float stands",
    );
    expect(() => draw(solved, "plain", { depthMm: "1 m" as never })).toThrow(
      'depthMm is "1 m"; give millimetres above 0 as a number',
    );
    expect(() => draw(solved, "plain", { depthMm: Number.NaN })).toThrow("depthMm is NaN; give");
  });

  it("builds a part, and writes it whole over what it wrote before and over nothing else", async () => {
    const folder = guideIn();
    const out = join(folder, "..", "out");
    const solved = await solvedIn(folder);
    expect(await write(out, build(solved, ["data"]))).toBe(5);
    expect(await write(out, build(solved, ["data"]))).toBe(5);
    expect(readdirSync(join(out, "data")).sort()).toEqual([
      "kit.csv",
      "rigs",
      "shot.csv",
      "shot.json",
      "sinking",
    ]);
    expect(existsSync(join(out, "site"))).toBe(false);
    await expect(write(folder, build(solved, ["data"]))).rejects.toThrow();
    expect(() => build(solved, ["paper" as never])).toThrow(
      'there is no part "paper" to build; there are web, print, data',
    );
  });

  it("says what is in the way in its own words, naming no option of the command line", async () => {
    const folder = guideIn();
    const files = async () => build(await solvedIn(folder), ["data"]);
    const wrong = [
      () => readGuide(join(folder, "none")),
      () => readGuide(join(folder, "guide.yaml")),
      async () => write("", await files()),
      async () => write("/", await files()),
      async () => write(folder, await files()),
      async () => write(join(folder, "guide.yaml"), await files()),
    ];
    const said: string[] = [];
    for (const one of wrong) said.push(await one().then(String, (error: Error) => error.message));
    expect(said.filter((message) => message.includes("--"))).toEqual([]);
    expect(said[0]).toMatch(/^there is no folder .*; name one with readGuide$/);
    expect(said[2]).toBe("the folder to write has an empty name; name one with write");
  });

  it("takes only guides of its own making", async () => {
    await expect(solve({ title: "Mine", rigs: [], lessons: [] })).rejects.toThrow("not made by readGuide");
    expect(() => draw({ title: "Mine", rigs: [] }, "plain")).toThrow("not made by solve");
  });
});
