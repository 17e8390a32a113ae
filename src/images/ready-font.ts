import type { OwnFont } from "../model/own-font.ts";

/** A font of the guide's own as pages load it. */
export interface ReadyFont {
  /** With no signs but those that are used and that the tool's fonts lack. */
  readonly woff: Uint8Array;
  /** Code points, rising. */
  readonly signs: readonly number[];
}

/**
 * The font cut down to what pages need of it; nothing where no page needs any.
 *
 * @param used texts with all signs that pages may show
 * @param isOurs whether the tool's own fonts have a sign
 */
export async function readyFont(
  { bytes, signs }: OwnFont,
  used: string,
  isOurs: (codePoint: number) => boolean,
): Promise<ReadyFont | undefined> {
  const codes = new Set(Array.from(used.normalize("NFC"), (sign) => sign.codePointAt(0) ?? 0));
  const wanted = [...codes].filter((code) => signs.has(code) && !isOurs(code)).sort((a, b) => a - b);
  if (wanted.length === 0) return undefined;
  const { default: subsetFont } = await import("subset-font");
  const text = String.fromCodePoint(...wanted);
  const woff = await subsetFont(Buffer.from(bytes), text, { targetFormat: "woff", noHinting: true });
  return { woff: new Uint8Array(woff), signs: wanted };
}
