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
  readonly body: (view: View) => Child;
}
