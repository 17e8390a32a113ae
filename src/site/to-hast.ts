import type { ElementContent, Properties, Root } from "hast";
// The type of markup that is already text, `raw`, comes with it.
import type {} from "remark-rehype";
import type { Child, Element } from "../markup/jsx-runtime.ts";

/**
 * An element tree as HTML nodes, function components called on the way. Attributes keep the names they have in HTML.
 * `<raw-html html={…}/>` stands for markup that is already text.
 */
export function toHast(child: Child): ElementContent[] {
  if (child === null || child === undefined || typeof child === "boolean") return [];
  if (typeof child === "string" || typeof child === "number") return [{ type: "text", value: String(child) }];
  if (isList(child)) return child.flatMap(toHast);
  return elementToHast(child);
}

function elementToHast({ type, props }: Element): ElementContent[] {
  if (typeof type === "function") return toHast((type as (props: unknown) => Child)(props));
  if (type === "raw-html") return [{ type: "raw", value: String(props.html) }];
  const { children, ...given } = props;
  const properties = given as Properties;
  const inner = toHast(children);
  // What a template holds is no part of the page until a script takes it out.
  if (type === "template") {
    const content: Root = { type: "root", children: inner };
    return [{ type: "element", tagName: type, properties, children: [], content }];
  }
  return [{ type: "element", tagName: type, properties, children: inner }];
}

function isList(child: Element | readonly Child[]): child is readonly Child[] {
  return Array.isArray(child);
}

/** HTML nodes as an element tree, so that Markdown can stand inside a template. */
export function fromHast(node: ElementContent): Child {
  switch (node.type) {
    case "text":
      return node.value;
    case "raw":
      return { type: "raw-html", key: null, props: { html: node.value } };
    case "element": {
      const inner = (node.content?.children ?? node.children) as ElementContent[];
      return {
        type: node.tagName,
        key: null,
        props: { ...node.properties, children: inner.map(fromHast) },
      };
    }
    default:
      return null;
  }
}
