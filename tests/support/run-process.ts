import { spawn } from "node:child_process";

interface Ended {
  /** Null where a signal ended the process. */
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Starts a process; gives it and what it said once it has ended. */
export function start(command: string, args: readonly string[], cwd: string) {
  const child = spawn(command, args, { cwd, stdio: ["ignore", "pipe", "pipe"] });
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
    child.on("close", (code) => resolve({ code, stdout, stderr }));
  });
  return { child, ended };
}

/** Runs a process to its end. */
export const run = (command: string, args: readonly string[], cwd: string) => start(command, args, cwd).ended;
