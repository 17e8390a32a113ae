import type { Placed } from "./results.mjs";

export const unseen: readonly { readonly path: string; readonly line: string; readonly why: string }[];

export function isUnseen(mutant: Placed, textOf: (path: string) => string): boolean;
