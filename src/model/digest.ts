import { createHash } from "node:crypto";

/** A short text that stands for a longer one, or for data by their JSON: SHA-256, as hexadecimal digits. */
export function digestOf(...parts: readonly unknown[]): string {
  const hash = createHash("sha256");
  for (const part of parts)
    hash.update(typeof part === "string" ? part : (JSON.stringify(part) ?? "")).update("\0");
  return hash.digest("hex");
}
