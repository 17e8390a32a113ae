import { formatReport } from "../checks/reporter.ts";
import type { Message } from "../model/message.ts";

/** Something in the content that only shows when pages and cards are laid out, or written. */
export class ContentError extends Error {
  constructor(readonly messages: readonly Message[]) {
    super(formatReport(messages).trimEnd());
  }
}
