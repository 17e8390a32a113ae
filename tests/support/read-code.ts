import jsQR from "jsqr";
import { PNG } from "pngjs";

/** What the code says that is found in a picture. */
export function readCode(png: Uint8Array): string | undefined {
  const { data, width, height } = PNG.sync.read(Buffer.from(png));
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}
