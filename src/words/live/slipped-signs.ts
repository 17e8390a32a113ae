import { distance } from "fastest-levenshtein";
import type { Nodes, Root, Text } from "mdast";
import { type Message, message } from "../../model/message.ts";
import type { SlippedSign } from "../../model/message-table.ts";
import { placeAfter, positionOf } from "../../model/source-position.ts";
import { visit } from "../../model/visit.ts";

/** What a directive may be called: within a sentence, and on a line of its own. */
interface DirectiveNames {
  readonly inline: readonly string[];
  readonly blocks: readonly string[];
}

interface Slip {
  readonly slip: SlippedSign;
  readonly pattern: RegExp;
  /** Whether what was found is one indeed, by what the pattern's first group holds. */
  readonly isMeant?: (part: string) => boolean;
}

/** Signs of a link, a figure or a drawing that a text shows as they were typed, as one of them is out of its place. */
function slipsOf({ inline, blocks }: DirectiveNames): readonly Slip[] {
  const isBlock = (name: string) => blocks.includes(name);
  const isInline = (name: string) => inline.includes(name);
  // Long enough to be nothing but one of the names with a letter or two wrong.
  const isNear = (word: string) =>
    word.length > 4 && inline.some((name) => name !== word && distance(name, word) <= 2);
  return [
    { slip: "space in address", pattern: /\[[^[\]]+\]\([^()\s]* [^()]*\.\w+[^()]*\)/g },
    { slip: "no address", pattern: /\[[^[\]]+\]\[[^[\]]*\]/g },
    { slip: "parts swapped", pattern: /\([^()]+\)\[[^[\]\s]*[./][^[\]\s]*\]/g },
    { slip: "block in sentence", pattern: /::([\w-]+)[[{]/g, isMeant: isBlock },
    { slip: "space behind colons", pattern: /:: +([\w-]+)[[{]/g, isMeant: isBlock },
    { slip: "space before brace", pattern: /::([\w-]+) +\{/g, isMeant: isBlock },
    { slip: "space behind colon", pattern: /(?<!:): +([\w-]+)[[{]/g, isMeant: isInline },
    { slip: "near a name", pattern: /(?<![\w:]):([a-z][a-z-]+)(?![\w[{:-])/g, isMeant: isNear },
  ];
}

const known = new WeakMap<Root, { readonly path: string; readonly messages: readonly Message[] }>();

/**
 * What a text shows as it was typed, though it was meant as a link, a figure or a drawing; each an error at its place. A text
 * that stays as it is from one reading to the next is looked through once.
 */
export function slippedSigns(body: Root, path: string, names: DirectiveNames): readonly Message[] {
  const before = known.get(body);
  if (before?.path === path) return before.messages;
  const messages = slipsIn(body, path, names);
  known.set(body, { path, messages });
  return messages;
}

function slipsIn(body: Root, path: string, names: DirectiveNames): readonly Message[] {
  const messages: Message[] = [];
  const slips = slipsOf(names);
  visit(body, "text", (node, _, parent) => {
    for (const { slip, pattern, isMeant } of slips) {
      for (const found of node.value.matchAll(pattern)) {
        if (isMeant && !isMeant(found[1] ?? "")) continue;
        const place = { file: path, ...placeWithin(node, parent, found.index) };
        messages.push(message("slipped-sign", place, { slip, found: found[0] }));
      }
    }
  });
  return messages;
}

/** Where a sign of a text stands; its further lines start where the first of its paragraph does. */
function placeWithin(node: Text, parent: Nodes | undefined, at: number): { line: number; column: number } {
  const edge = parent ? positionOf(parent).start.column : 1;
  return placeAfter(node.value, at, positionOf(node).start, edge);
}
