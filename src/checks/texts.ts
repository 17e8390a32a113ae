import type { TextDirective } from "mdast-util-directive";
import type { Library, MarkdownText, Prose } from "../model/library.ts";
import { parseLink } from "../model/links.ts";
import type { Place } from "../model/message.ts";
import { onceOfText } from "../model/once-of-text.ts";
import { visit } from "../model/visit.ts";

/** The texts that readers read as pages. */
export function pageTexts({ lessons, rigs, pages }: Library): readonly Prose[] {
  return [...lessons, ...rigs, ...pages];
}

/** Every Markdown of the content: notes beside entries and parts of pages, too. */
export function allTexts(library: Library): readonly MarkdownText[] {
  const notes = [...library.baits, ...library.species].map(({ path, notes }) => ({ path, body: notes }));
  const { plans, templates, floats } = library;
  return [...pageTexts(library), ...plans, ...templates.values(), ...floats, ...notes];
}

/** Links of a text to pages of the guide. */
export function pageLinks({
  path,
  body,
}: MarkdownText): readonly { readonly page: string; readonly place: Place }[] {
  const links: { page: string; place: Place }[] = [];
  visit(body, "link", ({ url, position }) => {
    const link = parseLink(url, path);
    const { line, column } = position!.start;
    if (link.kind === "page") links.push({ page: link.page, place: { file: path, line, column } });
  });
  return links;
}

/** Pages of the guide that a text leads to. */
export const linkedPages = onceOfText(
  (text): ReadonlySet<string> => new Set(pageLinks(text).map(({ page }) => page)),
);

/** Values that the live figures of a text have for an attribute, such as the rigs they are about. */
export function liveAttributes(text: MarkdownText, name: string): ReadonlySet<string> {
  return attributesIn(text).get(name) ?? new Set();
}

/** All values of the attributes of a text's live figures, by their names. */
const attributesIn = onceOfText(({ body }): ReadonlyMap<string, ReadonlySet<string>> => {
  const values = new Map<string, Set<string>>();
  visit(body, (node) => {
    if (!node.type.endsWith("Directive")) return;
    for (const [name, value] of Object.entries((node as TextDirective).attributes ?? {}))
      if (value) values.set(name, (values.get(name) ?? new Set()).add(value));
  });
  return values;
});
