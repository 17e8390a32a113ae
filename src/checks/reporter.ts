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
      lines.push(shown(file));
    }
    const { line, column } = message.place;
    const at = (line === undefined ? "" : `${line}:${column ?? 1}`).padStart(7);
    const { reason, hint } = worded(message);
    lines.push(`${at}  ${message.severity.padEnd(7)}  ${shown(reason)}  [${message.code}]`);
    if (hint !== undefined) lines.push(`${" ".repeat(9)}hint: ${shown(hint)}`);
  }
  const errors = messages.filter((message) => message.severity === "error").length;
  const warnings = messages.length - errors;
  lines.push(`${count(errors, "error")}, ${count(warnings, "warning")}`);
  return `${lines.join("\n")}\n`;
}

/** More than this of one sentence nobody reads. */
const signsMax = 1000;

/**
 * Words of a report on one line of their own, whatever of the content they quote: signs that a terminal obeys, or that
 * turn the direction of reading, are told by their numbers.
 */
function shown(text: string): string {
  const plain = text.replace(
    /[\p{C}\p{Zl}\p{Zp}]/gu,
    (sign) => `\\u{${sign.codePointAt(0)!.toString(16).toUpperCase()}}`,
  );
  return plain.length > signsMax ? `${plain.slice(0, signsMax)} …` : plain;
}

function count(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? "" : "s"}`;
}
