import type { Command } from "commander";

/** How a run ended, for scripts. */
export const exitCodes = {
  fine: 0,
  contentErrors: 1,
  usage: 2,
  // From here on as in sysexits.h (4.3BSD): EX_NOINPUT, EX_SOFTWARE, EX_CANTCREAT, EX_IOERR, EX_TEMPFAIL.
  unreadable: 66,
  fault: 70,
  unwritable: 73,
  diskGaveOut: 74,
  tryAgain: 75,
} as const;

/** The command was asked for something it cannot do; the message says what to ask instead. */
export class UsageError extends Error {}

/** Says what is being done, on one line of a terminal that is gone at the end. */
export interface Progress {
  say(text: string): void;
  end(): void;
}

/** Where a command speaks: results to one, reports to the other. */
export interface Terminal {
  result(text: string): unknown;
  report(text: string): unknown;
  /** Asks whoever sits there; missing where nobody does. */
  ask?(question: string): Promise<string>;
  /** Shows that something goes on; missing where nobody watches. */
  progress?(): Progress;
}

/** One command of the command line; each has a file of its own and a line in the table of `run.ts`. */
export interface CliCommand {
  readonly name: string;
  /** Adds summary, arguments and options. */
  describe(command: Command): Command;
  /** @returns the exit code */
  run(
    args: readonly string[],
    options: Readonly<Record<string, unknown>>,
    terminal: Terminal,
  ): Promise<number>;
}
