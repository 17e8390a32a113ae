/** Where each page stands below the output folder. */
export const sitePaths = {
  home: "site/index.html",
  lessons: "site/lessons/index.html",
  lesson: (id: string) => `site/lessons/${id}.html`,
  /** Coaches' plans, and the course evening by evening. */
  plans: "site/plans/index.html",
  plan: (id: string) => `site/plans/${id}.html`,
  /** Places to fish from. */
  swims: "site/swims/index.html",
  swim: (id: string) => `site/swims/${id}.html`,
  /** A form that makes the file of a swim. */
  soundings: "site/soundings.html",
  /** A form that says which rigs suit a water. */
  choose: "site/choose.html",
  /** Days by the water that the site shows. */
  sessions: "site/sessions/index.html",
  session: (id: string) => `site/sessions/${id}.html`,
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
  /** Films that a reader drives with a rig of their own. */
  tryIt: "site/try.html",
  search: "site/search.html",
  /** Which pages a phone has, and how it gets more. */
  onThisPhone: "site/on-this-phone.html",
  notFound: "site/404.html",
  licencePage: "site/licences.html",
  page: (id: string) => `site/${id}.html`,
  /** A side of a rig's pocket card as a picture. */
  preview: (id: string, side: "front" | "back" = "front") => `site/previews/${id}-${side}.png`,
  rigData: (id: string) => `site/data/${id}.js`,
  /** What the guide ships of others, with versions and licences. */
  licences: "site/assets/licences.cdx.json",
  asset: (name: string) => `site/assets/${name}`,
} as const;

/** What the names of a card's files end in, by its format; nothing for the pocket card. */
export const cardSuffixes = {
  "ID-1": "",
  A7: "-a7",
  A6: "-a6",
  A5: "-a5",
  "quarter Letter": "-quarter-letter",
  "half Letter": "-half-letter",
} as const;

/** What the names of sheets end in, by the way their paper is turned to print the backs. */
export const turningSuffixes = { "long edge": "", "short edge": "-short-edge", fold: "-fold" } as const;

/** What the names of handouts end in, by their paper. */
export const handoutSizes = { A5: "a5", A4: "a4", "half Letter": "half-letter", Letter: "letter" } as const;
type PageSize = (typeof handoutSizes)[keyof typeof handoutSizes];
/** As pages of a size, or those laid out on larger paper to be folded. */
export type HandoutSize = PageSize | `${PageSize}-to-fold`;

export type CardFormatName = keyof typeof cardSuffixes;

/** Where each file to print stands below the output folder; the site has a copy of each. */
export const printPaths = {
  card: (rigId: string, format: CardFormatName) => `cards/${rigId}${cardSuffixes[format]}.pdf`,
  /** The first page of a file to print, small. */
  smallPage: (path: string) => `site/previews/${path.replace(/\.pdf$/, ".svg")}`,
  /** @param part the how manieth file of them, from 1 */
  sheet: (format: CardFormatName, turning: keyof typeof turningSuffixes, part = 1) =>
    `cards/${part === 1 ? "" : `part-${part}/`}${sheetName(format, turning)}.pdf`,
  handout: (lessonId: string, size: HandoutSize) => `handouts/${lessonId}-${size}.pdf`,
  pageHandout: (pageId: string, size: HandoutSize) => `handouts/page-${pageId}-${size}.pdf`,
  plan: (lessonId: string) => `handouts/plan-${lessonId}.pdf`,
  swim: (swimId: string) => `handouts/swim-${swimId}.pdf`,
  /** All that a coach takes along. */
  session: (id: string) => `sessions/${id}.pdf`,
  /** What a shop's shelf gives, and the labels of a rig's packs on a sheet of labels. */
  shelf: (id: string) => `shelves/${id}/stock.pdf`,
  labels: (id: string, rigId: string, sheet: string) => `shelves/${id}/${rigId}-${sheet}.pdf`,
  strip: (rigId: string) => `handouts/strip-${rigId}.pdf`,
  soundings: "handouts/soundings.pdf",
  shotGauge: "handouts/shot-gauge.pdf",
  booklet: "handouts/booklet.pdf",
  bookletToFold: "handouts/booklet-to-fold.pdf",
} as const;

/** Name of a sheet of cards, as its file and its title know it. */
function sheetName(format: CardFormatName, turning: keyof typeof turningSuffixes): string {
  return `sheet${cardSuffixes[format]}${turningSuffixes[turning]}`;
}

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
