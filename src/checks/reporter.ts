import { type Message, sortedMessages } from "../model/message.ts";
import { worded } from "./messages.ts";

/**
 * All messages as one report: a heading line a file, a line a message with its place, and a total.
 *
 * ```
 * content/rigs/still-water.md
 *   3:9  error    hook length 40 cm is longer than …   hook-length
 *        hint: shorten it, or raise the last dropper
 * 1 error, 0 warnings
 * ```
 */
export function formatReport(messages: readonly Message[]): string {
  const lines: string[] = [];
  let file: string | undefined;
  for (const message of sortedMessages(messages)) {
    if (message.place.file !== file) {
      file = message.place.file;
      lines.push(file);
    }
    const { line, column } = message.place;
    const at = (line === undefined ? "" : `${line}:${column ?? 1}`).padStart(7);
    const { reason, hint } = worded(message);
    lines.push(`${at}  ${message.severity.padEnd(7)}  ${reason}  [${message.code}]`);
    if (hint !== undefined) lines.push(`${" ".repeat(9)}hint: ${hint}`);
  }
  const errors = messages.filter((message) => message.severity === "error").length;
  const warnings = messages.length - errors;
  lines.push(`${count(errors, "error")}, ${count(warnings, "warning")}`);
  return `${lines.join("\n")}\n`;
}

function count(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? "" : "s"}`;
}
