/** Enough digits to do sums with, few enough that two machines agree. */
export function rounded(value: number, digits = 6): number {
  const factor = 10 ** digits;
  return Math.round(value * factor) / factor + 0;
}

export const cm = (mm: number): number => rounded(mm / 10, 4);
