import type { YAMLError } from "yaml";
import type { MessageValues } from "../model/message-table.ts";

/** What is wrong with a YAML text, and where it begins to be. */
interface YamlTrouble {
  readonly values: Omit<MessageValues["yaml-syntax"], "firstLine">;
  readonly offset: number;
  /** Where a key that stands here twice stands first. */
  readonly first?: number;
}

/**
 * What an error of the parser means to somebody who never heard of YAML: it names what stands in the line, and the place
 * where the slip is, which may be far before the place where the parser noticed.
 */
export function yamlTrouble({ code, message, pos }: YAMLError, text: string): YamlTrouble {
  const [noticed] = pos;
  const line = lineAt(text, noticed);
  const here = (problem: YamlTrouble["values"]["problem"], said: string, offset = noticed) => ({
    values: { problem, said },
    offset,
  });
  const open = openAt(text, noticed);
  if (open?.sign === '"' || open?.sign === "'" || message.startsWith("Missing closing")) {
    const at = open ?? { sign: '"', offset: noticed };
    return here("not closed", at.sign, at.offset);
  }
  if (code === "TAB_AS_INDENT") return here("tab", "");
  if (code === "MULTIPLE_DOCS") return here("second document", "");
  if (code === "DUPLICATE_KEY") {
    // Behind a key without a value the parser notices the next one at the end of that line.
    const at = noticed + text.slice(noticed).search(/\S|$/);
    const key = /^[^\s:]+/.exec(text.slice(at))?.[0] ?? "";
    const first = firstAbove(text, at, key);
    return { ...here("twice", key, at), ...(first !== undefined && { first }) };
  }
  if (open && /must be sufficiently indented|and end with/.test(message)) {
    return here("not closed", open.sign, open.offset);
  }
  if (
    open &&
    (code === "BLOCK_IN_FLOW" || code === "BLOCK_AS_IMPLICIT_KEY" || /Missing , or :/.test(message))
  )
    return here("comma", "");
  if (/^\s*-[^\s-]/.test(line.text))
    return here("dash", line.text.trim(), line.offset + line.text.indexOf("-"));
  if (/^\s*\t/.test(line.text)) return here("tab", "", line.offset);
  const [, comment] = commentElsewhere.exec(line.text) ?? [];
  if (comment !== undefined) return here("comment", comment, line.offset + line.text.search(/\S/));
  if (!/:(?:\s|$)/.test(line.text) && !line.text.trim().startsWith("- "))
    return here("no colon", line.text.trim(), line.offset + line.text.search(/\S|$/));
  if (/must start at the same column/.test(message)) return here("indent", "");
  if (code in wantsQuotes) return here("quotes", quoted(line.text));
  return here("other", message);
}

/** Where a key that starts a line stands first in its group, which ends above where a line starts further out. */
function firstAbove(text: string, offset: number, key: string): number | undefined {
  const column = offset - lineAt(text, offset).offset;
  let first: number | undefined;
  for (let end = offset - column - 1; end >= 0; ) {
    const line = lineAt(text, end);
    const indent = line.text.search(/[^\s#]/);
    const isNote = /^\s*(?:#|$)/.test(line.text);
    if (!isNote && line.text.startsWith(`${key}:`, column) && indent <= column) first = line.offset + column;
    if (!isNote && indent < column) break;
    end = line.offset - 1;
  }
  return first;
}

/** Errors of values that quotes would have made plain text. */
const wantsQuotes: Readonly<Partial<Record<YAMLError["code"], true>>> = {
  BAD_ALIAS: true,
  BAD_PROP_ORDER: true,
  BAD_SCALAR_START: true,
  BLOCK_AS_IMPLICIT_KEY: true,
  MISSING_CHAR: true,
  TAG_RESOLVE_FAILED: true,
  UNEXPECTED_TOKEN: true,
};

/** A line of keys that is written as Markdown, and other languages, write their comments. */
const commentElsewhere = /^\s*(?:<!--|\/\/|\/\*)\s*(.*?)\s*(?:-->|\*\/)?\s*$/;

/** The line with its value in quotes, as it may be written. */
function quoted(line: string): string {
  const [, key = "", value = ""] = /^\s*((?:- )?[^\s:]+:\s+|- )(.*)$/.exec(line) ?? [
    undefined,
    "",
    line.trim(),
  ];
  return `${key}"${unquoted(value.trim()).replaceAll('"', "'")}"`;
}

/** A value without the quotation marks that it has round it, or before it with nothing between them. */
function unquoted(value: string): string {
  return /^"(.*)",?$/.exec(value)?.[1] ?? value.replace(/^""\s*/, "");
}

function lineAt(text: string, offset: number): { readonly text: string; readonly offset: number } {
  const start = offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
  const end = text.indexOf("\n", start);
  return { text: text.slice(start, end < 0 ? undefined : end), offset: start };
}

/** The bracket or quote that is still open at a place; brackets in quotes and comments are none. */
function openAt(text: string, end: number): { readonly sign: string; readonly offset: number } | undefined {
  const open: { sign: string; offset: number }[] = [];
  let before = " ";
  for (let at = 0; at < end; at++) {
    const sign = text.charAt(at);
    const last = open.at(-1);
    const inQuotes = last?.sign === '"' || last?.sign === "'";
    const begins = /[\s[{,]/.test(before);
    if (inQuotes) {
      if (sign === last.sign) open.pop();
    } else if (sign === "#" && /\s/.test(before)) {
      at = text.indexOf("\n", at);
      if (at < 0) break;
    } else if ((sign === '"' || sign === "'") && begins) open.push({ sign, offset: at });
    else if ((sign === "[" || sign === "{") && (begins || open.length > 0)) open.push({ sign, offset: at });
    else if (sign === "]" || sign === "}") open.pop();
    before = sign;
  }
  return open.at(-1);
}
