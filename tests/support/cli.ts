import { appendFileSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { runCli } from "../../src/cli/run.ts";

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

/** The shipped rigs and their tackle in a folder; the texts, which most commands do not tell, take most of the time to read. */
export function shippedRigs(folder: string): string {
  const isText = (path: string) => /^content.(?:lessons|pages|plans|sessions)\b/.test(path);
  cpSync("content", folder, { recursive: true, filter: (path) => !isText(path) });
  appendFileSync(join(folder, "guide.yaml"), "library: none\n");
  return folder;
}
