import { first } from "../core/lists.ts";
import { type Message, type Place, sortedMessages } from "../model/message.ts";
import { counted } from "./counted.ts";
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
 *
 * @param lineAt a line of the content; with it each message stands alone, its place such that terminals and editors open
 *   it, over the line that it is about:
 *
 * ```
 * content/rigs/still-water.md:3:9  error  hook length 40 cm is longer than …   hook-length
 *     hook-length: { length: 40 cm }
 *     ^
 *     hint: shorten it, or raise the last dropper
 * ```
 */
export function formatReport(messages: readonly Message[], lineAt?: LineAt): string {
  const lines: string[] = [];
  let file: string | undefined;
  for (const message of sortedMessages(messages)) {
    if (lineAt) {
      lines.push(...withExcerpt(message, lineAt));
      continue;
    }
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
  lines.push(`${counted(errors, "error")}, ${counted(warnings, "warning")}`);
  return `${lines.join("\n")}\n`;
}

/** How many messages there are and where the first one is, in one line. */
export function briefReport(messages: readonly Message[]): string {
  const message = first(sortedMessages(messages));
  const { place, severity } = message;
  const { reason } = worded(message);
  const at = place.line === undefined ? "" : `:${place.line}:${place.column ?? 1}`;
  const which = messages.length === 1 ? "" : "the first ";
  return `${counted(messages.length, severity)}, ${which}at ${shown(place.file)}${at}: ${shown(reason)}`;
}

/** The text of the line at a place of the content, where there is one. */
export type LineAt = (place: Place) => string | undefined;

function withExcerpt(message: Message, lineAt: LineAt): readonly string[] {
  const { severity, code, place } = message;
  const { file, line, column = 1 } = place;
  const { reason, hint } = worded(message);
  const at = line === undefined ? shown(file) : `${shown(file)}:${line}:${column}`;
  const text = lineAt(place);
  return [
    `${at}  ${severity}  ${shown(reason)}  [${code}]`,
    ...(text === undefined ? [] : excerpt(text, column)),
    ...(hint === undefined ? [] : [`    hint: ${shown(hint)}`]),
  ];
}

/** So much of a long line is shown before the place that is meant, and from there on. */
const signsBefore = 60;
const signsAfter = 40;

/** A line of the content with a caret below the column that is meant. */
function excerpt(line: string, column: number): readonly string[] {
  const text = line.replaceAll("\t", " ");
  const from = Math.max(0, column - 1 - signsBefore);
  const before = shown(`${from > 0 ? "…" : ""}${text.slice(from, column - 1)}`);
  const rest = text.slice(column - 1, column - 1 + signsAfter);
  const after = shown(`${rest}${text.length > column - 1 + signsAfter ? "…" : ""}`);
  return [`    ${before}${after}`, `    ${" ".repeat([...before].length)}^`];
}

/** A message as one line of JSON, for programs; a code keeps its meaning from one edition of the tool to the next. */
export function messageAsJson(message: Message): string {
  const { severity, code, place, values } = message;
  return JSON.stringify({ severity, code, ...place, ...worded(message), values });
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
