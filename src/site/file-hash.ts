import { createHash } from "node:crypto";
import type { OutputFile } from "../markup/output.ts";
import { fingerprintOfFile } from "../model/fingerprint.ts";

const hashDigits = 32;

/** The start of a file's SHA-256, enough to tell it from every other: 32 hexadecimal digits. */
export function fileHash(content: OutputFile["content"]): string {
  return createHash("sha256").update(content).digest("hex").slice(0, hashDigits);
}

/** The same of a file, and its size, for which it is not made where they are known. */
export function toldOfFile(file: OutputFile): { readonly sizeBytes: number; readonly hash: string } {
  const { bytes, sha256 } = fingerprintOfFile(file);
  return { sizeBytes: bytes, hash: sha256.slice(0, hashDigits) };
}

/** Where a file stands whose name holds its hash: another content never stands at the same address. */
export function stampedPath({ path, content }: OutputFile): string {
  return path.replace(/\.(?=\w+$)/, `.${fileHash(content)}.`);
}
