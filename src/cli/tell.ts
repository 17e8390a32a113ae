import { readFileSync } from "node:fs";
import { formatReport, type LineAt, messageAsJson } from "../checks/reporter.ts";
import { known } from "../core/lists.ts";
import { hasErrors, type Message, sortedMessages } from "../model/message.ts";
import type { Terminal } from "./command.ts";

type Options = Readonly<Record<string, unknown>>;

/**
 * Tells messages as it was asked for.
 *
 * @returns whether they stop the command
 */
export function tell(messages: readonly Message[], options: Options, terminal: Terminal): boolean {
  const stopsStrict = options.strict === true && messages.length > 0;
  if (options.json) {
    for (const message of sortedMessages(messages)) terminal.result(`${messageAsJson(message)}\n`);
  } else {
    // What stops the command is told in any case.
    const isWanted = ({ severity }: Message) => !options.quiet || options.strict || severity === "error";
    const told = messages.filter(isWanted);
    if (told.length > 0 || !options.quiet) terminal.report(formatReport(told, linesOnDisk()));
    if (stopsStrict) terminal.report(whyStopped(messages));
  }
  return hasErrors(messages) || stopsStrict;
}

/** Why messages stop a command that asks for `--strict`; nothing where an error does so anyway. */
export const whyStopped = (messages: readonly Message[]): string =>
  hasErrors(messages) ? "" : "stopped, as --strict counts warnings as errors\n";

/** Lines of the content as they stand on the disk; none where a file cannot be read again. */
export function linesOnDisk(): LineAt {
  const files = new Map<string, readonly string[]>();
  return ({ file, line }) => {
    if (line === undefined) return undefined;
    if (!files.has(file)) files.set(file, linesOf(file));
    return known(files, file)[line - 1];
  };
}

function linesOf(file: string): readonly string[] {
  try {
    return readFileSync(file, "utf8").split(/\r\n?|\n/);
  } catch {
    return [];
  }
}
