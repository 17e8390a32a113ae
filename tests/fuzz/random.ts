/** Random choices that a seed decides (mulberry32, public domain): the same case again on every machine. */
export class Choices {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 up to, not including, 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  below(end: number): number {
    return Math.floor(this.next() * end);
  }

  of<T>(values: readonly T[]): T {
    return values[this.below(values.length)]!;
  }
}
