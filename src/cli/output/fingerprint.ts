import { createHash } from "node:crypto";
import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import type { Fingerprint } from "../../model/fingerprint.ts";

export const sameContent = (a: Fingerprint, b: Fingerprint) => a.bytes === b.bytes && a.sha256 === b.sha256;

/** Opening a link itself fails where the system can be told so; elsewhere those who ask have looked before. */
const neverThroughLinks = constants.O_NOFOLLOW ?? 0;
const chunk = Buffer.allocUnsafe(1 << 16);

export function fingerprintOnDisk(file: string): Fingerprint {
  const descriptor = openSync(file, constants.O_RDONLY | neverThroughLinks);
  try {
    const hash = createHash("sha256");
    for (let read = 1; read > 0; ) {
      read = readSync(descriptor, chunk, 0, chunk.length, null);
      hash.update(chunk.subarray(0, read));
    }
    return { bytes: fstatSync(descriptor).size, sha256: hash.digest("hex") };
  } finally {
    closeSync(descriptor);
  }
}
