import type { FindingCode } from "../core/finding.ts";
import { type MessageCode, type MessageValues, messageTable, type Severity } from "./message-table.ts";

/** Where in the content something stands; line and column count from 1. */
export interface Place {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
}

/** The beginning of a file, for what stands nowhere nearer. */
export const startOf = (file: string): Place => ({ file, line: 1, column: 1 });

/** Something to tell the author about content: data first, words last. */
type ContentMessage = {
  [C in MessageCode]: {
    readonly severity: Severity;
    readonly place: Place;
    /** Names the sentence, and is printed behind it. */
    readonly code: C;
    readonly values: MessageValues[C];
  };
}[MessageCode];

/** What the core found, worded already. */
interface FoundMessage {
  readonly severity: Severity;
  readonly place: Place;
  readonly code: FindingCode;
  readonly values: { readonly reason: string };
}

export type Message = ContentMessage | FoundMessage;

/** A message about content, as bad as its code says. */
export function message<C extends MessageCode>(code: C, place: Place, values: MessageValues[C]): Message {
  return { severity: messageTable[code].severity, place, code, values } as ContentMessage;
}

/** What a stage gives: its value, and what it has to tell. */
export interface Staged<T> {
  readonly value: T;
  readonly messages: readonly Message[];
}

export function hasErrors(messages: readonly Message[]): boolean {
  return messages.some((message) => message.severity === "error");
}

/**
 * Without what only comes of something else: where a figure is unlikely, no warning about it says more; where an error
 * stands, none is needed.
 */
export function withoutConsequences(messages: readonly Message[]): readonly Message[] {
  const at = ({ place: { file, line, column } }: Message) => `${file}:${line}:${column}`;
  const wrong = new Set(messages.filter(({ severity }) => severity === "error").map(at));
  const unlikely = new Set(messages.filter(({ code }) => code === "unlikely-figure").map(at));
  return messages.filter((message) => {
    if (message.severity === "error") return true;
    return message.code === "unlikely-figure" ? !wrong.has(at(message)) : !unlikely.has(at(message));
  });
}

/** Order of a report: by file, then by place, then by code, in code units whatever the machine's language. */
export function sortedMessages(messages: readonly Message[]): Message[] {
  const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  return [...messages].sort(
    (a, b) =>
      byText(a.place.file, b.place.file) ||
      (a.place.line ?? 0) - (b.place.line ?? 0) ||
      (a.place.column ?? 0) - (b.place.column ?? 0) ||
      byText(a.code, b.code),
  );
}
