import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { runCli } from "../../src/cli/run.ts";
import { contentWith } from "./smallest-content.ts";

/** A folder that goes with the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "dotdown-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes content into a folder and returns the folder. */
export function writeContent(folder: string, files: Readonly<Record<string, string>>): string {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

/** Runs the command line and keeps what it says. */
export async function cli(...args: string[]): Promise<{ code: number; result: string; report: string }> {
  let result = "";
  let report = "";
  const code = await runCli(args, {
    result: (text) => {
      result += text;
    },
    report: (text) => {
      report += text;
    },
  });
  return { code, result, report };
}

/** A guide with the shipped swims, which borrows all the rest: what was read of the library once is known to all tests. */
export function borrowedGuide(folder: string): string {
  cpSync("content/swims", join(folder, "swims"), { recursive: true });
  const facts = "title: Borrowed\npublisher: Borrowers\nedition: 2026-11-20\n";
  return writeContent(folder, { "guide.yaml": facts });
}

/** The smallest guide with some files changed, its words borrowed. */
export const smallGuide = (folder: string, changes: Readonly<Record<string, string | null>> = {}) =>
  writeContent(folder, contentWith({ "words/en.yaml": null, ...changes }));
