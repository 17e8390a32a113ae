import { known } from "../core/lists.ts";
import { paletteCss } from "../drawing/palette.ts";
import type { OutputFile } from "../markup/output.ts";
import { sitePaths } from "../model/addresses.ts";
import type { Guide } from "../model/library.ts";
import { coloursOf, type PageTheme } from "../model/look-colours.ts";
import { iconPx } from "../model/own-image.ts";
import { usualMain } from "../model/usual-colours.ts";
import type { SiteInput } from "./input.ts";

/** Ground of the masthead, and the mark on it, where a guide has no colours of its own. */
const usualMasthead = { deep: usualMain, onDeep: "#ff7a45" };

/** Signs of a font of the guide's own, among the site's assets. */
export const lentSignsFile = "own-signs.woff";

/**
 * The signs that are lent to our fonts, in both weights: browsers take each sign from the rule that has it.
 *
 * @param signs code points, rising
 */
export function lentSignsStyle(signs: readonly number[]): string {
  const range = signs.map((code) => `U+${code.toString(16).toUpperCase()}`).join(",");
  return [`400`, `600 700`]
    .map(
      (weight) =>
        `@font-face{font-family:"IBM Plex Sans";font-weight:${weight};font-display:swap;src:url(${lentSignsFile}) format("woff");unicode-range:${range}}`,
    )
    .join("\n");
}

/** Style rules that come after the style sheet: the colours of drawings, and the guide's own. */
export function ownStyle({ colours }: Guide): string {
  if (!colours) return paletteCss();
  const [light, dark] = [coloursOf("light", colours), coloursOf("dark", colours)];
  const rules = (theme: PageTheme) => {
    const { deep, link, accent, onDeep } = theme === "light" ? light : dark;
    return `:root{--deep:${deep};--link:${link};--tip:${accent};--on-deep-tip:${onDeep}}`;
  };
  return [
    rules("light"),
    `@media (prefers-color-scheme:dark){${rules("dark")}}`,
    paletteCss({ light: light.accent, dark: dark.accent }),
  ].join("\n");
}

/** Colour of the browser's own bar and of the app's frame. */
export function themeColour({ colours }: Guide): string {
  return colours ? coloursOf("light", colours).deep : usualMasthead.deep;
}

/** What stands for the guide on a phone's home screen and in the tabs of browsers: the logo, or our mark in its colours. */
export function iconOf({ library: { guide } }: Pick<SiteInput, "library">) {
  return guide.logo !== undefined
    ? { path: sitePaths.asset("icon.png"), sizes: `${iconPx}x${iconPx}`, type: "image/png" }
    : { path: sitePaths.asset("icon.svg"), sizes: "any", type: "image/svg+xml" };
}

export function iconFiles(input: SiteInput): readonly OutputFile[] {
  const { guide } = input.library;
  const logo = guide.logo === undefined ? undefined : known(input.images, guide.logo).icon;
  const content = logo ?? ownIcon(String(input.assets.get("icon.svg") ?? ""), guide);
  return [{ path: iconOf(input).path, content }];
}

function ownIcon(icon: string, { colours }: Guide): string {
  if (!colours) return icon;
  const { deep, onDeep } = coloursOf("light", colours);
  return icon.replaceAll(usualMasthead.deep, deep).replaceAll(usualMasthead.onDeep, onDeep);
}
