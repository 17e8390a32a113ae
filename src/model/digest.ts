import { createHash } from "node:crypto";

/** A short text that stands for a longer one, or for data by their JSON: SHA-256, as hexadecimal digits. */
export function digestOf(...parts: readonly unknown[]): string {
  const hash = createHash("sha256");
  for (const part of parts)
    hash.update(typeof part === "string" ? part : (JSON.stringify(part) ?? "")).update("\0");
  return hash.digest("hex");
}

const known = new WeakMap<object, string>();

/** `digestOf` of data that nobody changes: it is reckoned once, however often it is asked for. */
export function digestOnce(data: object): string {
  const digest = known.get(data) ?? digestOf(data);
  known.set(data, digest);
  return digest;
}
