/** Parts that a rig has in every depth, in the order of the page; what stands between them comes and goes. */
const steadyParts = [
  ".picture",
  ".key-figures",
  ".depth-columns table:first-of-type",
  ".depth-columns table + table",
  ".guide",
  ".depth > .more:not(.in-water)",
  ".in-water",
];

/**
 * Changes what is within a part of the page while what a reader sees of it stays in its place: a warning that comes above
 * would else push it down, and the browser itself holds nothing that is made anew.
 *
 * @param bar stands over the page; what is read begins below it
 */
export function holdPlace(within: HTMLElement, bar: HTMLElement, change: () => void): void {
  const edge = bar.getBoundingClientRect().bottom;
  const isAbove = within.getBoundingClientRect().top < edge;
  const held = isAbove
    ? rows(within).find(({ row }) => row.getBoundingClientRect().bottom > edge)
    : undefined;
  const before = held?.row.getBoundingClientRect().top ?? 0;
  change();
  if (!held) return;
  const after = rows(within).filter(({ part }) => part === held.part);
  const same = after[Math.min(held.at, after.length - 1)];
  if (same) scrollBy({ top: same.row.getBoundingClientRect().top - before, behavior: "instant" });
}

interface Row {
  readonly part: string;
  readonly at: number;
  readonly row: Element;
}

/** The rows of tables, and the other parts whole. */
function rows(within: HTMLElement): readonly Row[] {
  return steadyParts.flatMap((part) => {
    const found = within.querySelector(part);
    if (!found) return [];
    const inside = [...found.querySelectorAll(":scope > :is(caption, thead, tbody) > tr, :scope > caption")];
    return (inside.length > 0 ? inside : [found]).map((row, at) => ({ part, at, row }));
  });
}
