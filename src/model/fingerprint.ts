import { createHash } from "node:crypto";

/** What tells one file's content from another's. */
export interface Fingerprint {
  readonly bytes: number;
  readonly sha256: string;
}

export function fingerprintOf(content: string | Uint8Array): Fingerprint {
  const bytes = typeof content === "string" ? Buffer.byteLength(content) : content.byteLength;
  return { bytes, sha256: createHash("sha256").update(content).digest("hex") };
}

/** A file, of which size and hash may be known before its content is made. */
interface OfFile {
  readonly content: string | Uint8Array;
  readonly known?: Fingerprint;
}

/** Of a file, which is not made for it where that is known already. */
export const fingerprintOfFile = (file: OfFile): Fingerprint => file.known ?? fingerprintOf(file.content);

/** The same file at another path; its content is not asked for. */
export const movedTo = (path: string, file: OfFile): OfFile & { readonly path: string } => ({
  path,
  ...(file.known && { known: file.known }),
  get content() {
    return file.content;
  },
});
