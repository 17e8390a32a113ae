import { usualAccent } from "../model/usual-colours.ts";
import type { Ink } from "./model.ts";

type Colours = Readonly<Record<Ink, string>>;

/**
 * What each ink looks like on screen and on paper. `ink`, `soft` and `accent` may carry text, `faint` only marks;
 * `tone` fills what an outline parts from the rest anyway, such as a float's stem; `paper` is the ground and `water` a tint that never carries meaning alone. Print has no tint at all, so that a
 * black-and-white printer puts no dots under the labels, and its accent is plain black: shape and pattern carry what
 * colour does on screen.
 */
export const palettes: Readonly<Record<"light" | "dark" | "print", Colours>> = {
  light: {
    ink: "#17262e",
    soft: "#4a5a63",
    faint: "#75838b",
    tone: "#75838b",
    paper: "#ffffff",
    accent: usualAccent,
    water: "#dfeaf0",
  },
  dark: {
    ink: "#eef2f3",
    soft: "#b4c0c6",
    faint: "#7b8a92",
    tone: "#7b8a92",
    paper: "#12191d",
    accent: "#ff9a76",
    water: "#1d2b33",
  },
  print: {
    ink: "#000000",
    soft: "#000000",
    faint: "#808080",
    tone: "#808080",
    paper: "#ffffff",
    accent: "#000000",
    water: "#ffffff",
  },
};

/** The grey of an ink in print, 0 black to 1 white. */
export function printGrey(ink: Ink): number {
  return Number.parseInt(palettes.print[ink].slice(1, 3), 16) / 255;
}

/** Where a drawing is shown: `page` leaves the colour to the page's style sheet, the others fix it. */
export type Theme = "page" | keyof typeof palettes;

/** The colour of an ink as an SVG attribute; on a page its style sheet has it, under names that are in every drawing. */
export function colourOf(ink: Ink, theme: Theme): string {
  return theme === "page" ? `var(--drawing-${ink})` : palettes[theme][ink];
}

/**
 * The reader's own colours, where they are forced: shape and pattern carry what colour does, as in print. `GrayText` is none
 * of them, since it says that something cannot be used.
 */
const forced: Colours = {
  ink: "CanvasText",
  soft: "CanvasText",
  faint: "CanvasText",
  tone: "Canvas",
  paper: "Canvas",
  accent: "CanvasText",
  water: "Canvas",
};

function declarations(colours: Colours): string {
  return Object.entries(colours)
    .map(([ink, colour]) => `--drawing-${ink}:${colour}`)
    .join(";");
}

/**
 * Style rules that give drawings of the theme `page` their colours: light, dark, forced, and print.
 *
 * @param accents the guide's own for light and dark pages
 */
export function paletteCss(accents?: Readonly<Record<"light" | "dark", string>>): string {
  const on = (theme: "light" | "dark") =>
    declarations({ ...palettes[theme], ...(accents && { accent: accents[theme] }) });
  return [
    `:root{${on("light")}}`,
    `@media (prefers-color-scheme:dark){:root{${on("dark")}}}`,
    `@media (forced-colors:active){:root{${declarations(forced)}}}`,
    `@media print{:root{${declarations(palettes.print)}}}`,
  ].join("\n");
}
