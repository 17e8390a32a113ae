import type { TextDirective } from "mdast-util-directive";
import { visit } from "unist-util-visit";
import type { Library, MarkdownText, Prose } from "../model/library.ts";
import { parseLink } from "../model/links.ts";

/** The texts that readers read as pages. */
export function pageTexts({ lessons, rigs, pages }: Library): readonly Prose[] {
  return [...lessons, ...rigs, ...pages];
}

/** Every Markdown of the content, notes beside entries too. */
export function allTexts(library: Library): readonly MarkdownText[] {
  const notes = [...library.baits, ...library.species].map(({ path, notes }) => ({ path, body: notes }));
  return [...pageTexts(library), ...library.floats, ...notes];
}

/** Pages of the guide that a text leads to. */
export function linkedPages({ path, body }: MarkdownText): ReadonlySet<string> {
  const pages = new Set<string>();
  visit(body, "link", ({ url }) => {
    const link = parseLink(url, path);
    if (link.kind === "page") pages.add(link.page);
  });
  return pages;
}

/** Values that the live figures of a text have for an attribute, such as the rigs they are about. */
export function liveAttributes({ body }: MarkdownText, name: string): ReadonlySet<string> {
  const values = new Set<string>();
  visit(body, (node) => {
    const value = node.type.endsWith("Directive") ? (node as TextDirective).attributes?.[name] : undefined;
    if (value) values.add(value);
  });
  return values;
}
