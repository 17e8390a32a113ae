import { createHash } from "node:crypto";
import { type Keep, once } from "./kept.ts";

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

/**
 * A file whose content is made once for all that it is made from; size and hash are kept apart, so that it is read only once
 * somebody asks what is in it.
 *
 * @param kind names the function
 * @param from all that it depends on, as text
 */
export function keptFile<T extends string | Uint8Array>(
  path: string,
  keep: Keep,
  kind: string,
  from: string,
  make: () => T,
): OfFile & { readonly path: string } {
  const content = once(() => keep(kind, from, make));
  return {
    path,
    known: keep(`${kind}, told`, from, () => fingerprintOf(content())),
    get content() {
      return content();
    },
  };
}
