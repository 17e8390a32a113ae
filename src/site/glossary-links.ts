import type { Element, ElementContent, Root, Text } from "hast";
import { literal } from "../model/literal.ts";
import { SKIP, visit } from "../model/visit.ts";

/** A word of the glossary and where it is explained. */
export interface TermLink {
  readonly forms: readonly string[];
  readonly address: string;
}

/** Text in these already leads somewhere, names something, or is not prose. */
const leftAlone = new Set(["a", "code", "pre", "h1", "h2", "h3", "h4", "h5", "h6", "th", "figure"]);

/**
 * Makes the first use of each word of the glossary a link to what it means. One such function serves the texts of one
 * page, in their order.
 */
export function termLinker(terms: readonly TermLink[]): (tree: Root) => void {
  const addressOf = new Map(
    terms.flatMap(({ forms, address }) => forms.map((form) => [form.toLowerCase(), address])),
  );
  if (addressOf.size === 0) return () => undefined;
  const linked = new Set<string>();
  // The longest form first, so that "hook length" is not found as "hook".
  const forms = [...addressOf.keys()].sort((a, b) => b.length - a.length).map(literal);
  const anyForm = new RegExp(`(?<![\\p{L}\\d-])(?:${forms.join("|")})(?![\\p{L}\\d-])`, "giu");
  return (tree) => {
    visit(tree, (node, index, parent) => {
      if (node.type === "element") {
        // A text that leads to a word's meaning itself has said it.
        if (node.tagName === "a") linked.add(String(node.properties.href));
        if (leftAlone.has(node.tagName)) return SKIP;
        if (!isUnlinked(node) || !parent || index === undefined) return;
        parent.children.splice(index, 1, ...node.children);
        return [SKIP, index + node.children.length];
      }
      if (node.type !== "text" || !parent || index === undefined) return;
      const parts = splitAtTerms(node.value, anyForm, addressOf, linked);
      parent.children.splice(index, 1, ...parts);
      return [SKIP, index + parts.length];
    });
  };
}

/** Words that their author says have another sense here; nobody else needs to know, so the mark goes. */
function isUnlinked({ properties: { className } }: Element): boolean {
  return Array.isArray(className) && className.includes("unlinked");
}

function splitAtTerms(
  text: string,
  anyForm: RegExp,
  addressOf: ReadonlyMap<string, string>,
  linked: Set<string>,
): ElementContent[] {
  const parts: ElementContent[] = [];
  let from = 0;
  for (const { 0: found, index } of text.matchAll(anyForm)) {
    const address = addressOf.get(found.toLowerCase())!;
    if (linked.has(address)) continue;
    linked.add(address);
    const link = { className: ["term"], href: address };
    if (index > from) parts.push(plain(text.slice(from, index)));
    parts.push({ type: "element", tagName: "a", properties: link, children: [plain(found)] });
    from = index + found.length;
  }
  return [...parts, ...(from < text.length ? [plain(text.slice(from))] : [])];
}

function plain(value: string): Text {
  return { type: "text", value };
}
