import { type SpawnOptions, spawn } from "node:child_process";

interface Ended {
  /** Null where a signal ended the process. */
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Starts a process, with more options of `spawn` where they are needed; gives it and what it said once it has ended. */
export function start(command: string, args: readonly string[], cwd: string, options: SpawnOptions = {}) {
  const child = spawn(command, args, { ...options, cwd, stdio: ["ignore", "pipe", "pipe"] });
  const ended = new Promise<Ended>((resolve, reject) => {
    let stdout = "";
    let stderr = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      stderr += text;
    });
    child.on("error", reject);
    child.on("close", (code, signal) => resolve({ code, signal, stdout, stderr }));
  });
  return { child, ended };
}

/** Runs a process to its end. */
export const run = (...asked: Parameters<typeof start>) => start(...asked).ended;
