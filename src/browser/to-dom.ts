import type { Child, Element as MarkupElement } from "../markup/jsx-runtime.ts";
import { giveWay } from "./give-way.ts";

/** An element tree as nodes of the page; the counterpart of what the build writes as text. */
export function toDom(child: Child): Node[] {
  const making = nodesOf(child);
  for (;;) {
    const step = making.next();
    if (step.done) return step.value;
  }
}

/** The same bit by bit, so that the page answers meanwhile: a part of it as long as a rig's takes more than one turn. */
export async function toDomInTurns(child: Child): Promise<Node[]> {
  const making = nodesOf(child);
  for (;;) {
    await giveWay();
    const step = making.next();
    if (step.done) return step.value;
  }
}

/** Stops before each part of a page that is made by a function of its own, and before markup that is to be read. */
function* nodesOf(child: Child): Generator<undefined, Node[]> {
  if (child === null || child === undefined || typeof child === "boolean") return [];
  if (typeof child === "string" || typeof child === "number") return [document.createTextNode(String(child))];
  if (isList(child)) {
    const nodes: Node[] = [];
    for (const one of child) nodes.push(...(yield* nodesOf(one)));
    return nodes;
  }
  const { type, props } = child;
  if (typeof type === "function") {
    yield;
    return yield* nodesOf((type as (props: unknown) => Child)(props));
  }
  if (type === "raw-html") {
    yield;
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
  within.append(...(yield* nodesOf(props.children)));
  return [element];
}

function isList(child: MarkupElement | readonly Child[]): child is readonly Child[] {
  return Array.isArray(child);
}
