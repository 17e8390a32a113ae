type Matrix = readonly [number, number, number, number, number, number];

/** A straight line of a path, in points of the page. */
export interface Segment {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** The straight lines that a content stream draws, where they lie on the page. Source: ISO 32000-1, section 8.3.4. */
export function segmentsOf(content: string): Segment[] {
  const segments: Segment[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let at: readonly [number, number] = [0, 0];
  let operands: number[] = [];
  const onPage = ([x, y]: readonly number[]): [number, number] => [
    matrix[0] * x! + matrix[2] * y! + matrix[4],
    matrix[1] * x! + matrix[3] * y! + matrix[5],
  ];
  for (const word of content.split(/\s+/)) {
    if (/^[-+.\d]/.test(word)) {
      operands.push(Number(word));
      continue;
    }
    if (word === "q") kept.push(matrix);
    else if (word === "Q") matrix = kept.pop()!;
    else if (word === "cm") matrix = times(operands as unknown as Matrix, matrix);
    else if (word === "m") at = onPage(operands);
    else if (word === "l") {
      const to = onPage(operands);
      segments.push({ from: at, to });
      at = to;
    }
    operands = [];
  }
  return segments;
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
