import { clampChroma, converter, formatHex, type Oklch, wcagContrast } from "culori";

/** The two colours of a guide's own, as `#rrggbb`: masthead and links, and marks. */
export interface OwnColours {
  readonly main: string;
  readonly accent: string;
}

/** What the grounds of pages look like that text stands on, as the style sheet has them. */
export const grounds = {
  light: ["#ffffff", "#eef3f0", "#fdf0d8"],
  dark: ["#0b1416", "#142225", "#3a2f14"],
} as const;
export type PageTheme = keyof typeof grounds;

/**
 * Contrast that each colour must reach on every ground. Source: WCAG 2.2, success criteria 1.4.6 (7:1, enhanced) for links
 * and the words on the masthead, which are read in sunlight, and 1.4.3 (4.5:1, minimum) for words of drawings.
 */
const leastContrast: Readonly<Record<keyof OwnColours, number>> = { main: 7, accent: 4.5 };

const oklch = converter("oklch");
/** Steps in which lightness is tried, of a scale from 0 to 1: finer than an eye sees. */
const lightnessStep = 0.004;

const isLegible = (colour: string, on: readonly string[], least: number) =>
  on.every((ground) => wcagContrast(colour, ground) >= least);

/**
 * The colour itself where it is legible on grounds, else the nearest of its hue that is.
 *
 * @param way whether it is made darker or lighter
 */
function legible(colour: string, on: readonly string[], least: number, way: -1 | 1): string {
  const from = oklch(colour) as Oklch;
  let tried = colour.toLowerCase();
  // White comes out of the sum a hair above 1.
  for (
    let l = Math.min(1, from.l);
    !isLegible(tried, on, least) && l >= 0 && l <= 1;
    l += way * lightnessStep
  ) {
    tried = formatHex(clampChroma({ ...from, l }, "oklch"));
  }
  return tried;
}

/** The nearest colour of the same hue that can be read on the light pages; the same one where it can be itself. */
export function nearestLegible(role: keyof OwnColours, colour: string): string {
  return legible(colour, grounds.light, leastContrast[role], -1);
}

/** The colours of a theme: on dark pages each is made as light as it must be to be read there. */
export function coloursOf(theme: PageTheme, { main, accent }: OwnColours) {
  const isDark = theme === "dark";
  const seen = (role: keyof OwnColours, colour: string) =>
    isDark ? legible(colour, grounds.dark, leastContrast[role], 1) : colour.toLowerCase();
  const deep = isDark
    ? formatHex(clampChroma({ ...(oklch(main) as Oklch), l: 0.25 }, "oklch"))
    : main.toLowerCase();
  return {
    /** Ground of the masthead, which white words stand on. */
    deep,
    link: seen("main", main),
    accent: seen("accent", accent),
    /** Marks on the masthead. Source: WCAG 2.2, success criterion 1.4.11, 3:1 for what is no text. */
    onDeep: legible(accent, [deep], 3, 1),
  };
}
