type Matrix = readonly [number, number, number, number, number, number];

/** A straight line of a path, in points of the page. */
export interface Segment {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** An operator of a content stream, with its numbers and what moves its places to the page. Source: ISO 32000-1, section 8.3.4. */
function* operatorsOf(content: string) {
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let operands: number[] = [];
  for (const word of content.split(/\s+/)) {
    if (/^[-+.\d]/.test(word)) {
      operands.push(Number(word));
      continue;
    }
    if (word === "q") kept.push(matrix);
    else if (word === "Q") matrix = kept.pop()!;
    else if (word === "cm") matrix = times(operands as unknown as Matrix, matrix);
    yield { word, operands, matrix };
    operands = [];
  }
}

function onPage(matrix: Matrix, [x = 0, y = 0]: readonly number[]): [number, number] {
  return [matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5]];
}

/** The straight lines that a content stream draws, where they lie on the page. */
export function segmentsOf(content: string): Segment[] {
  const segments: Segment[] = [];
  let at: readonly [number, number] = [0, 0];
  for (const { word, operands, matrix } of operatorsOf(content)) {
    if (word !== "m" && word !== "l") continue;
    const to = onPage(matrix, operands);
    if (word === "l") segments.push({ from: at, to });
    at = to;
  }
  return segments;
}

/** Where the pictures of a content stream have their lower left corner and their upper right one, in points of the page. */
export function pictureCornersOf(content: string): Segment[] {
  return [...operatorsOf(content)]
    .filter(({ word }) => word === "Do")
    .map(({ matrix }) => ({ from: onPage(matrix, [0, 0]), to: onPage(matrix, [1, 1]) }));
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[1] * b[2],
    a[0] * b[1] + a[1] * b[3],
    a[2] * b[0] + a[3] * b[2],
    a[2] * b[1] + a[3] * b[3],
    a[4] * b[0] + a[5] * b[2] + b[4],
    a[4] * b[1] + a[5] * b[3] + b[5],
  ];
}

export function lengthOf({ from, to }: Segment): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
