import type { Child, Element as MarkupElement } from "../markup/jsx-runtime.ts";

/** An element tree as nodes of the page; the counterpart of what the build writes as text. */
export function toDom(child: Child): Node[] {
  if (child === null || child === undefined || typeof child === "boolean") return [];
  if (typeof child === "string" || typeof child === "number") return [document.createTextNode(String(child))];
  if (isList(child)) return child.flatMap(toDom);
  const { type, props } = child;
  if (typeof type === "function") return toDom((type as (props: unknown) => Child)(props));
  if (type === "raw-html") {
    const held = document.createElement("template");
    held.innerHTML = String(props.html);
    return [...document.importNode(held.content, true).childNodes];
  }
  const element = document.createElement(type);
  for (const [name, value] of Object.entries(props)) {
    if (name === "children" || value === undefined || value === null || value === false) continue;
    element.setAttribute(name, value === true ? "" : String(value));
  }
  const within = element instanceof HTMLTemplateElement ? element.content : element;
  within.append(...toDom(props.children));
  return [element];
}

function isList(child: MarkupElement | readonly Child[]): child is readonly Child[] {
  return Array.isArray(child);
}
