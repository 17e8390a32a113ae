import { posix } from "node:path";
import type { TextDirective } from "mdast-util-directive";
import { visit } from "unist-util-visit";
import type { Library, MarkdownText, Prose } from "../model/library.ts";

/** The texts that readers read as pages. */
export function pageTexts({ lessons, rigs, pages }: Library): readonly Prose[] {
  return [...lessons, ...rigs, ...pages];
}

/** Every Markdown of the content, notes beside entries too. */
export function allTexts(library: Library): readonly MarkdownText[] {
  const notes = [...library.baits, ...library.species].map(({ path, notes }) => ({ path, body: notes }));
  return [...pageTexts(library), ...library.floats, ...notes];
}

/** Files of the content that a text leads to, as `rigs/stick`, whether it names the file or its page. */
export function linkedFiles({ path, body }: MarkdownText): ReadonlySet<string> {
  const folder = posix.basename(posix.dirname(path));
  const files = new Set<string>();
  visit(body, "link", ({ url }) => {
    if (!/^[a-z]+:/i.test(url)) files.add(posix.join(folder, url.replace(/(?:\.(?:md|html))?(?:#.*)?$/, "")));
  });
  return files;
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
