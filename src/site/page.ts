import type { PageKey } from "../../templates/pages/page-words.ts";
import type { Section, View } from "../../templates/pages/view.ts";
import type { Child } from "../markup/jsx-runtime.ts";

/** A page before it is laid out. */
export interface Page {
  /** Path below the output folder, such as `site/rigs/stick.html`. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly section?: Section;
  /** Scripts from the assets that the page needs, in order. */
  readonly scripts?: readonly string[];
  /** What it is called in the search results; none keeps it out of them. */
  readonly kind?: "lesson" | "rig" | "page";
  /** Picture for those who share the page, below the output folder. */
  readonly preview?: string;
  /** For those who were given its address: search engines and the map of the site are to pass it by. */
  readonly isUnlisted?: boolean;
  /** How soon a phone keeps it; unsaid, it comes last, while there is room. */
  readonly kept?: "always" | "at the bank" | "in turn" | "once opened";
  /** Gives all that its body is made from besides the words and the guide; nothing where that is not known. */
  readonly from?: () => unknown;
  /** The same as far as drawings depend on it, where that is less: not on the pages beside it. */
  readonly drawnFrom?: () => unknown;
  readonly body: (view: View) => Child;
}

/** Pages that list what there is, by the part of the words that has their title. */
type ListPage = PageKey extends infer Key ? (Key extends `${infer Name}.description` ? Name : never) : never;

/** A page that lists what there is. */
export type MakeList = (name: ListPage, path: string, body: Page["body"], section?: Section) => Page;
