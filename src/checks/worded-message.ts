/** A message as text: the reason, and what to do about it. */
export interface WordedMessage {
  readonly reason: string;
  readonly hint?: string | undefined;
}
