import { createHash } from "node:crypto";
import type { Source } from "../content/world.ts";

/**
 * What a command's work depends on besides the tool, as text: every file that was read, the day that is asked for, and what the
 * command was told.
 */
export function fromSources(sources: ReadonlyMap<string, Source>, asked: unknown): string {
  return JSON.stringify([[...sources.values()].map(told), process.env.SOURCE_DATE_EPOCH ?? null, asked]);
}

function told({ path, file, text, bytes, content, fromLibrary, under }: Source): unknown {
  const hash = createHash("sha256")
    .update(text)
    .update("\0")
    .update(content ?? "");
  return [path, file, bytes, fromLibrary === true, hash.digest("hex"), under ? told(under) : null];
}
