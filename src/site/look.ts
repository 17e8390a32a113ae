import { paletteCss } from "../drawing/palette.ts";
import type { Guide } from "../model/library.ts";
import { coloursOf, type PageTheme } from "../model/look-colours.ts";

/** Ground of the masthead, and the mark on it, where a guide has no colours of its own. */
const usualColours = { deep: "#0d3b40", onDeep: "#ff7a45" };

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
  return colours ? coloursOf("light", colours).deep : usualColours.deep;
}

/** The mark in the guide's own colours. */
export function ownIcon(icon: string, { colours }: Guide): string {
  if (!colours) return icon;
  const { deep, onDeep } = coloursOf("light", colours);
  return icon.replaceAll(usualColours.deep, deep).replaceAll(usualColours.onDeep, onDeep);
}
