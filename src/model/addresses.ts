/** Where each page stands below the output folder. */
export const sitePaths = {
  home: "site/index.html",
  lessons: "site/lessons/index.html",
  lesson: (id: string) => `site/lessons/${id}.html`,
  rigs: "site/rigs/index.html",
  rig: (id: string) => `site/rigs/${id}.html`,
  floats: "site/floats.html",
  shot: "site/shot.html",
  knots: "site/knots.html",
  baits: "site/baits.html",
  glossary: "site/glossary.html",
  troubles: "site/what-the-float-says.html",
  fish: "site/fish.html",
  printables: "site/printables.html",
  safety: "site/safety.html",
  search: "site/search.html",
  page: (id: string) => `site/${id}.html`,
  /** Front of a rig's card as a picture. */
  preview: (id: string) => `site/previews/${id}-front.png`,
  rigData: (id: string) => `site/data/${id}.js`,
  asset: (name: string) => `site/assets/${name}`,
} as const;

/** Anchor of a word in the glossary. */
export function termId(term: string): string {
  return term
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, "-")
    .replace(/^-|-$/g, "");
}

/** Where a file below `site/` is found once the site is served. */
export function publicAddress(path: string, siteAddress: string): string {
  const base = siteAddress.endsWith("/") ? siteAddress : `${siteAddress}/`;
  return new URL(path.replace(/^site\//, ""), base).href;
}
