/** Where a figure comes from; pages show it beside the figure. */
export const bases = ["published", "common practice", "from memory", "measured"] as const;
export type Basis = (typeof bases)[number];
