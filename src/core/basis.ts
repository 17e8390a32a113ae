/** Where a figure comes from; pages show it beside the figure. */
export const bases = ["published", "common practice", "from memory", "measured"] as const;
export type Basis = (typeof bases)[number];

/** Bases that texts mark with a sign beside the figure, by the names that texts have for them. */
export const signedBases = { practice: "common practice", memory: "from memory" } as const satisfies Readonly<
  Record<string, Basis>
>;
export type SignedBasis = keyof typeof signedBases;

/** The page of the content that explains each sign below a heading of its own. */
export const basisPage = "about-figures";
