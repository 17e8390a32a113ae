import type { Dots } from "../raster.ts";

/** A page in greys, 0 black to 1 white, row by row. */
export interface Greys {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

export function greysOf({ width, height, data }: Dots): Greys {
  const values = new Float32Array(width * height);
  for (let i = 0; i < values.length; i++) values[i] = data[4 * i]! / 255;
  return { width, height, values };
}

/** Spread of a point of light in a copier, as a normal distribution's [dots]; and how far the paper lies off the last time's. */
const spreadDots = 1;
const offDots = { across: 0.4, down: 0.3 };

/** What a black-and-white copier makes of a page: out of focus, off by part of a dot, and black or white. */
export function copied(page: Greys): Greys {
  return blackOrWhite(shifted(blurred(page)));
}

/** A copy of a copy. */
export const copiedTwice = (page: Greys): Greys => copied(copied(page));

function blurred(page: Greys): Greys {
  const reach = Math.ceil(3 * spreadDots);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * spreadDots ** 2)),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const kernel = weights.map((weight) => weight / sum);
  return along(along(page, kernel, reach, "across"), kernel, reach, "down");
}

function along(
  { width, height, values }: Greys,
  kernel: readonly number[],
  reach: number,
  way: "across" | "down",
): Greys {
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const atX = way === "across" ? Math.min(width - 1, Math.max(0, x + k)) : x;
        const atY = way === "down" ? Math.min(height - 1, Math.max(0, y + k)) : y;
        sum += kernel[k + reach]! * values[atY * width + atX]!;
      }
      out[y * width + x] = sum;
    }
  }
  return { width, height, values: out };
}

function shifted({ width, height, values }: Greys): Greys {
  const { across, down } = offDots;
  const at = (x: number, y: number) => values[Math.max(0, y) * width + Math.max(0, x)]!;
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const here = (1 - across) * at(x, y) + across * at(x - 1, y);
      const above = (1 - across) * at(x, y - 1) + across * at(x - 1, y - 1);
      out[y * width + x] = (1 - down) * here + down * above;
    }
  }
  return { width, height, values: out };
}

function blackOrWhite({ width, height, values }: Greys): Greys {
  return { width, height, values: values.map((value) => (value < 0.5 ? 0 : 1)) };
}

/** Dots that a printer's screen has for each of its own, across and down. */
const screenDots = 6;

/** Greys as a laser printer screens them: a black dot in the middle of each cell, the larger the darker. */
export function screened({ width, height, values }: Greys): Greys {
  const middle = (screenDots - 1) / 2;
  const out = values.map((value, i) => {
    const [x, y] = [(i % width) % screenDots, Math.floor(i / width) % screenDots];
    const share = (Math.PI * Math.hypot(x - middle, y - middle) ** 2) / screenDots ** 2;
    return 1 - value > share ? 0 : 1;
  });
  return { width, height, values: out };
}
