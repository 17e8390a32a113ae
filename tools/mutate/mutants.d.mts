/** One change of one place of a source. */
export interface Mutant {
  readonly id: number;
  readonly kind: "logic" | "constant";
  readonly line: number;
  readonly was: string;
  readonly now: string;
}

/** A source with mutants in it, each behind its number, and what they are. */
export function instrumented(
  path: string,
  source: string,
  firstId: number,
  wanted?: ReadonlySet<number>,
): { readonly mutants: readonly Mutant[] };
