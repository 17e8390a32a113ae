/** What a message is about, for its words to speak of. */
export type MessageValues = Readonly<Record<string, string | number | readonly string[]>>;

/** Where in the content something stands; line and column count from 1. */
export interface Place {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
}

/** Something to tell the author: data first, words last (`messages.ts`). */
export interface Message {
  readonly severity: "error" | "warning";
  readonly place: Place;
  /** Names the sentence in `messages.ts` and is printed behind it. */
  readonly code: string;
  readonly values: MessageValues;
}

/** What a stage gives: its value, and what it has to tell. */
export interface Staged<T> {
  readonly value: T;
  readonly messages: readonly Message[];
}

export function hasErrors(messages: readonly Message[]): boolean {
  return messages.some((message) => message.severity === "error");
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
