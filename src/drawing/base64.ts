/** Bytes as base64; as browsers and Node know it alike. */
export function base64(bytes: Iterable<number>): string {
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
}
