const encoder = new TextEncoder();

/** A text of signs below U+0100 as bytes, one each. */
export function latin1(text: string): Uint8Array {
  const ascii = encoder.encode(text);
  if (ascii.length === text.length) return ascii;
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}
