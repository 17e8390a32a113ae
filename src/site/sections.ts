import type { Child } from "../markup/jsx-runtime.ts";
import { toHast } from "./to-hast.ts";

/** A part of a page from one heading to the next. */
interface Section {
  /** Anchor of its heading; none before the first heading that has one. */
  readonly anchor?: string;
  readonly heading: string;
  readonly text: string;
}

/** The words of an element tree by its sections, for the search; what is marked `data-unsearched` would only drown them. */
export function sectionsOf(child: Child): Section[] {
  const sections: { anchor?: string; heading: string; parts: string[] }[] = [{ heading: "", parts: [] }];
  const walk = (node: ReturnType<typeof toHast>[number]) => {
    if (node.type === "text") sections.at(-1)?.parts.push(node.value);
    if (node.type !== "element" || node.properties["data-unsearched"] !== undefined) return;
    const { id } = node.properties;
    if (!/^(?:h[2-4]|dt)$/.test(node.tagName) || typeof id !== "string") {
      node.children.forEach(walk);
      return;
    }
    sections.push({ anchor: id, heading: "", parts: [] });
    node.children.forEach(walk);
    const begun = sections.at(-1);
    if (begun) begun.heading = plain(begun.parts.splice(0));
  };
  toHast(child).forEach(walk);
  return sections.map(({ parts, ...section }) => ({ ...section, text: plain(parts) }));
}

function plain(parts: readonly string[]): string {
  return parts.join(" ").replace(/\s+/g, " ").trim();
}
