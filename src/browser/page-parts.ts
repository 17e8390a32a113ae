/** @throws Error where the page has no such part */
export function partById<E extends HTMLElement = HTMLElement>(id: string): E {
  return must(document.getElementById(id) as E | null, `#${id}`);
}

/** @throws Error where there is no such part inside */
export function partWithin<E extends Element = HTMLElement>(within: ParentNode, selector: string): E {
  return must(within.querySelector<E>(selector), selector);
}

function must<E>(part: E | null, name: string): E {
  if (part === null) throw new Error(`the page has no ${name}`);
  return part;
}

/** What a part has in an attribute `data-…`. @throws Error where it has none */
export function dataOf(part: HTMLElement, name: string): string {
  return must(part.dataset[name] ?? null, `data of the name ${name}`);
}

/** Writes a text where another stands, as the page would be laid out anew for the same; says whether it did. */
export function writeText(part: Element, text: string): boolean {
  const isOther = part.textContent !== text;
  if (isOther) part.textContent = text;
  return isOther;
}

/** The same of an attribute. */
export function writeAttribute(part: Element, name: string, value: string): void {
  if (part.getAttribute(name) !== value) part.setAttribute(name, value);
}
