import type { Printable } from "../model/printable.ts";

type ByRig = ReadonlyMap<string | undefined, readonly Printable[]>;

const known = new WeakMap<readonly Printable[], ByRig>();

/** What there is to print of a rig: of thousands of files, they are sorted by their rigs once. */
export function printablesOf(rigId: string, printables: readonly Printable[]): readonly Printable[] {
  const byRig = known.get(printables) ?? sorted(printables);
  known.set(printables, byRig);
  return byRig.get(rigId) ?? [];
}

function sorted(printables: readonly Printable[]): ByRig {
  const byRig = new Map<string | undefined, Printable[]>();
  for (const one of printables) {
    const sameRig = byRig.get(one.rigId) ?? [];
    sameRig.push(one);
    byRig.set(one.rigId, sameRig);
  }
  return byRig;
}

/** Whether the site offers what is printed at a path. */
export function printedOf(printables: readonly Printable[]): (path: string) => boolean {
  const paths = new Set(printables.map(({ path }) => path));
  return (path) => paths.has(`site/${path}`);
}
