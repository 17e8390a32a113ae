import pixelmatch from "pixelmatch";
import { PNG } from "pngjs";

export interface Dots {
  readonly width: number;
  readonly height: number;
  readonly data: Buffer;
}

export function dotsOf(png: Uint8Array): Dots {
  return PNG.sync.read(Buffer.from(png));
}

/** The top left part of a picture. */
function cropped({ width, data }: Dots, toWidth: number, toHeight: number): Buffer {
  const out = Buffer.alloc(4 * toWidth * toHeight);
  for (let y = 0; y < toHeight; y++) {
    data.copy(out, 4 * toWidth * y, 4 * width * y, 4 * (width * y + toWidth));
  }
  return out;
}

export interface Difference {
  /** Share of the dots that differ by more than a tenth of the whole range, soft edges left out. */
  readonly share: number;
  /** Share of the dots that are darker than half, in the first picture. */
  readonly ink: number;
}

/**
 * Compares two pictures of the same page. Pages are not a whole number of dots high or wide, so one may have a row or
 * column more than the other; that one is left out.
 */
export function difference(a: Dots, b: Dots): Difference {
  const width = Math.min(a.width, b.width);
  const height = Math.min(a.height, b.height);
  if (Math.abs(a.width - b.width) > 1 || Math.abs(a.height - b.height) > 1) {
    throw new Error(`sizes differ: ${a.width} × ${a.height} and ${b.width} × ${b.height}`);
  }
  const first = cropped(a, width, height);
  const differing = pixelmatch(first, cropped(b, width, height), undefined, width, height, {
    threshold: 0.1,
  });
  let dark = 0;
  for (let at = 0; at < first.length; at += 4) if (first[at]! < 128) dark += 1;
  return { share: differing / (width * height), ink: dark / (width * height) };
}
