import { askingOn } from "./asking.ts";
import { exitCodes, type Progress } from "./command.ts";
import { runCli } from "./run.ts";

/** Takes no keys, so that Ctrl-C reaches the command. */
async function makeProgress(): Promise<() => Progress> {
  const { default: ora } = await import("ora");
  return () => {
    const line = ora({ stream: process.stderr, discardStdin: false, spinner: "line" });
    return {
      say: (text) => {
        line.text = text;
        if (line.isSpinning) line.render();
        else line.start();
      },
      end: () => line.stop(),
    };
  };
}

/**
 * Runs the command line in this process, and sets how that ends.
 *
 * @param args what stands behind the command's own name
 */
export async function main(args: readonly string[]): Promise<void> {
  let code: number = exitCodes.fine;
  // Whoever reads the results may stop when they have enough; that is no error, and the exit code stays the command's.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") return;
    process.stderr.write(`dotdown: the results cannot be written: ${error.message}\n`);
    code = exitCodes.diskGaveOut;
    process.exitCode = code;
  });
  // Nobody is left to tell that they do not listen.
  process.stderr.on("error", () => {});

  const progress = process.stderr.isTTY && !process.env.CI ? await makeProgress() : undefined;
  const asking = askingOn(process.stdin, process.stderr);
  const ran = await runCli(args, {
    result: (text) => process.stdout.write(text),
    report: (text) => process.stderr.write(text),
    ...(process.stdin.isTTY && process.stderr.isTTY && { ask: asking.ask }),
    ...(progress && { progress }),
  });
  asking.close();
  process.exitCode = code || ran;
}
