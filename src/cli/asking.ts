import { createInterface, type Interface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { UsageError } from "./command.ts";

/** Questions to whoever sits at a terminal, one after another. */
interface Asking {
  ask(question: string): Promise<string>;
  /** Lets the terminal go, so that the command can end. */
  close(): void;
}

/**
 * Questions on a terminal; lines that are typed or pasted before their question are its answer.
 *
 * @throws UsageError where the terminal has no more answers, as by Ctrl-D
 */
export function askingOn(input: Readable, output: Writable): Asking {
  let open: { readonly terminal: Interface; readonly lines: AsyncIterator<string> } | undefined;
  const begin = () => {
    const terminal = createInterface({ input, output });
    // The terminal's keys are read by themselves meanwhile, so that Ctrl-C has to be passed on.
    terminal.on("SIGINT", () => {
      terminal.close();
      process.kill(process.pid, "SIGINT");
    });
    return { terminal, lines: terminal[Symbol.asyncIterator]() };
  };
  return {
    ask: async (question) => {
      open ??= begin();
      open.terminal.setPrompt(question);
      open.terminal.prompt();
      const { value, done } = await open.lines.next();
      if (done) throw new UsageError("there was no answer; nothing was written");
      return value;
    },
    close: () => open?.terminal.close(),
  };
}
