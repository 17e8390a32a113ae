import type { Mutant } from "./mutants.mjs";

export interface Placed extends Mutant {
  readonly path: string;
}

export interface Result extends Placed {
  readonly fate: "killed" | "too long" | "lives" | "not reached" | "equivalent";
}

export function resultLine(result: Result): string;
export function restOf(text: string, mutants: readonly Placed[]): Placed[];
export function table(all: readonly Result[]): string;
