import type { Root } from "mdast";
import remarkDirective from "remark-directive";
import remarkFrontmatter from "remark-frontmatter";
import remarkGfm from "remark-gfm";
import remarkParse from "remark-parse";
import { unified } from "unified";
import { type Keep, makeAnew, once } from "../model/kept.ts";
import { type Message, message, type Place, startOf } from "../model/message.ts";
import type { FrontMatterProblem, MessageValues } from "../model/message-table.ts";
import { visit } from "../model/visit.ts";
import { withPlainColons } from "./plain-colons.ts";
import { readYaml, type YamlSource } from "./yaml-source.ts";

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter, ["yaml"])
  .use(remarkGfm)
  .use(remarkDirective);

/** A Markdown file: its front matter as data and its body as a tree. */
export interface MarkdownSource {
  readonly front: YamlSource;
  readonly body: Root;
  readonly messages: readonly Message[];
}

/** A front matter as the parser takes one, and what stands between its lines. */
const frontMatter = /^\ufeff?---[ \t]*(?:\r\n?|\n)(?:([\s\S]*?)(?:\r\n?|\n))??---[ \t]*(?:\r\n?|\n|$)/;

/** Reads a Markdown file with a front matter between `---` lines; its body once somebody looks into it. */
export function readMarkdown(text: string, file: string, keep: Keep = makeAnew): MarkdownSource {
  const found = frontMatter.exec(text);
  const body = rootOf(() => parseText(text, keep).children.slice(found ? 1 : 0));
  if (!found) {
    const missing = message("no-front-matter", startOf(file), noFrontMatter(text));
    return { front: readYaml("", file), body, messages: [missing] };
  }
  // The parser of Markdown reads a NUL as this, as CommonMark 0.31.2 asks in 2.3.
  const front = readYaml((found[1] ?? "").replaceAll("\0", "\ufffd"), file, 1, keep);
  return {
    front,
    body,
    get messages() {
      return front.messages;
    },
  };
}

/** A tree that is made once somebody looks into it. */
function rootOf(make: () => Root["children"]): Root {
  const made = once(make);
  return {
    type: "root",
    get children() {
      return made();
    },
  };
}

/** A Markdown text without keys of its own. */
export const parseText = (text: string, keep: Keep = makeAnew): Root =>
  keep("markdown", text, () => withPlainColons(parser.parse(text), text));

/** How a text that has no front matter may have been meant to. */
function noFrontMatter(text: string): MessageValues["no-front-matter"] {
  const [line = ""] = text.split(/\r\n?|\n/, 1);
  const first = line.trimEnd();
  const problem = (): FrontMatterProblem => {
    if (first === "---") return "not closed";
    if (/^[-–—.=_*]+$/.test(first)) return "other dashes";
    if (/^\s*---\s*$/m.test(text.slice(0, text.search(/\w|$/)))) return "below something";
    return /^[\w-]+:(?:\s|$)/.test(first) ? "not opened" : "none";
  };
  return { problem: problem(), first };
}

/**
 * A piece of Markdown inside a YAML value, as a tree whose places are those of its file.
 *
 * @param at place of the value
 */
export function parseNotes(text: string, at: Place, keep: Keep = makeAnew): Root {
  const { line = 1, column = 1 } = at;
  return keep("notes", JSON.stringify([text, line, column]), () => notesAt(text, line, column));
}

function notesAt(text: string, line: number, column: number): Root {
  const root = withPlainColons(parser.parse(text), text);
  // Only a block (`notes: |`) ends with a line break; its text starts on the next line, two columns in.
  const block = text.endsWith("\n");
  const lines = block ? line : line - 1;
  const columns = block ? 2 : column - 1;
  visit(root, ({ position }) => {
    for (const point of position ? [position.start, position.end] : []) {
      point.line += lines;
      point.column += columns;
    }
  });
  return root;
}
