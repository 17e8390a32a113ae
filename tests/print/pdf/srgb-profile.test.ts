import { expect, test } from "vitest";
import { srgbProfile } from "../../../src/print/pdf/srgb-profile.ts";

const bytes = srgbProfile();
const view = new DataView(bytes.buffer);
const sign = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
const fixed = (at: number) => view.getInt32(at) / 65536;

/** Where each tag's data lie, and how long they are. Source: ICC.1:2010, section 7.3. */
const tags = new Map(
  Array.from({ length: view.getUint32(128) }, (_, i) => {
    const at = 132 + 12 * i;
    return [sign(at), { at: view.getUint32(at + 4), length: view.getUint32(at + 8) }] as const;
  }),
);

const numbersOf = (name: string, count: number, from = 8) =>
  Array.from({ length: count }, (_, i) => fixed(tags.get(name)!.at + from + 4 * i));

type Row = readonly [number, number, number];
const times = (matrix: readonly Row[], [x, y, z]: Row): Row =>
  matrix.map(([a, b, c]) => a * x + b * y + c * z) as unknown as Row;

const shares = ([x, y, z]: Row): Row => [x / (x + y + z), y / (x + y + z), z / (x + y + z)];

// Source: ICC.1:2010, section 7.2.
test("its header says that it is a monitor's profile of version 4 for red, green and blue, as long as it is", () => {
  expect(view.getUint32(0)).toBe(bytes.length);
  expect(bytes[8]).toBe(4);
  expect([12, 16, 20, 36].map(sign)).toEqual(["mntr", "RGB ", "XYZ ", "acsp"]);
  expect([68, 72, 76].map(fixed)).toEqual([0.9642, 1, 0.8249].map((value) => expect.closeTo(value, 4)));
});

// Source: ICC.1:2010, sections 7.3.5 and 8.3.3: tags lie on four-byte boundaries within the file; these are required.
test("it has the tags that a matrix profile must have, each within the file", () => {
  expect([...tags.keys()]).toEqual(
    expect.arrayContaining(["desc", "cprt", "wtpt", "chad", "rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"]),
  );
  for (const { at, length } of tags.values()) {
    expect(at % 4).toBe(0);
    expect(at + length).toBeLessThanOrEqual(bytes.length);
  }
});

// Sources: IEC 61966-2-1: chromaticities of ITU-R BT.709 and D65 (0.3127, 0.3290); ICC.1:2010, annex E: Bradford.
test("its primaries are those of sRGB adapted to D50, and add up to its white", () => {
  const adapting = numbersOf("chad", 9);
  const matrix = [0, 3, 6].map((at) => adapting.slice(at, at + 3) as unknown as Row);
  const white: Row = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329];
  times(matrix, white).forEach((value, i) => {
    expect(value).toBeCloseTo([0.9642, 1, 0.8249][i]!, 4);
  });
  const sum = [0, 0, 0];
  for (const [name, x, y] of [
    ["rXYZ", 0.64, 0.33],
    ["gXYZ", 0.3, 0.6],
    ["bXYZ", 0.15, 0.06],
  ] as const) {
    const [X, Y, Z] = numbersOf(name, 3) as unknown as Row;
    const want = shares(times(matrix, [x / y, 1, (1 - x - y) / y]));
    shares([X, Y, Z]).forEach((share, i) => {
      expect(share).toBeCloseTo(want[i]!, 4);
    });
    [X, Y, Z].forEach((value, i) => {
      sum[i]! += value;
    });
  }
  sum.forEach((value, i) => {
    expect(value).toBeCloseTo([0.9642, 1, 0.8249][i]!, 4);
  });
});

// Source: IEC 61966-2-1, section 5.2, worked here from its two pieces.
test("its curve is that of sRGB", () => {
  const at = tags.get("rTRC")!.at;
  expect(sign(at)).toBe("para");
  expect(view.getUint16(at + 8)).toBe(3);
  const [g, a, b, c, d] = numbersOf("rTRC", 5, 12) as unknown as [number, number, number, number, number];
  for (const value of [0, 0.02, 0.04045, 0.041, 0.2, 0.5, 0.8, 1]) {
    const want = value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    expect(value >= d ? (a * value + b) ** g : c * value).toBeCloseTo(want, 4);
  }
});
