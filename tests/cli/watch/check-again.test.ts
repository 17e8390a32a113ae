import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { runCli } from "../../../src/cli/run.ts";
import { lessonFile } from "../../checks/checked.ts";
import { smallGuide, temporaryFolder } from "../../support/cli.ts";

/** A check of a small guide that goes on until the test ends; what it says is waited for. */
function watching(...options: string[]) {
  const folder = smallGuide(temporaryFolder());
  let said = "";
  let heard = () => {};
  const say = (text: string) => {
    said += text;
    heard();
  };
  const ended = runCli(["check", "--watch", "--content", folder, ...options], { result: say, report: say });
  const end = () => {
    process.emit("SIGINT");
    return ended;
  };
  onTestFinished(async () => {
    await end();
  });
  return {
    end,
    save: (path: string, text: string) => writeFileSync(join(folder, path), text),
    remove: (path: string) => rmSync(join(folder, path)),
    read: (path: string) => readFileSync(join(folder, path), "utf8"),
    /** What was said since it was asked last, once this is a part of it. */
    async until(part: string): Promise<string> {
      while (!said.includes(part)) {
        await new Promise<void>((more) => {
          heard = more;
        });
      }
      const told = said;
      said = "";
      return told;
    },
  };
}

describe("a check that watches", () => {
  it("tells after each save what is wrong now, and names what was saved", async () => {
    const { end, save, remove, read, until } = watching();
    expect(await until("fine\n")).not.toContain("saved:");
    const rig = read("rigs/plain.md");
    save("rigs/plain.md", rig.replace("water: still", "water: stil"));
    const told = await until("1 error,");
    expect(told).toMatch(/^\nsaved: rigs\/plain\.md\n/);
    expect(told).toMatch(/rigs\/plain\.md:4:8.*\n {4}water: stil\n {11}\^\n/);
    save("rigs/plain.md", rig);
    expect(await until("fine\n")).toMatch(/saved: rigs\/plain\.md\n.*1 rig,/s);
    save("lessons/added.md", lessonFile(7, "Words that are new."));
    expect(await until("fine\n")).toMatch(/saved: lessons\/added\.md\n.*2 lessons: fine/s);
    remove("lessons/added.md");
    expect(await until("fine\n")).toMatch(/saved: lessons\/added\.md\n.*1 lesson: fine/s);
    expect(await end()).toBe(0);
  });

  it("ends each round with a line that counts, for programs", async () => {
    const { save, read, until } = watching("--json");
    expect(await until("\n")).toBe('{"saved":[],"errors":0,"warnings":0}\n');
    save("rigs/plain.md", read("rigs/plain.md").replace("water: still", "water: stil"));
    const lines = (await until('"errors"')).trim().split("\n");
    expect(lines.map((line) => JSON.parse(line))).toMatchObject([
      { severity: "error", file: expect.stringContaining("rigs/plain.md"), line: 4, column: 8 },
      { saved: ["rigs/plain.md"], errors: 1, warnings: 0 },
    ]);
  });
});
