import { createHash } from "node:crypto";
import type { OutputFile } from "../markup/output.ts";

/** The start of a file's SHA-256, enough to tell it from every other: 32 hexadecimal digits. */
export function fileHash(content: OutputFile["content"]): string {
  return createHash("sha256").update(content).digest("hex").slice(0, 32);
}

/** Where a file stands whose name holds its hash: another content never stands at the same address. */
export function stampedPath({ path, content }: OutputFile): string {
  return path.replace(/\.(?=\w+$)/, `.${fileHash(content)}.`);
}
