import type { BoxProps } from "../../../src/markup/boxes.ts";
import type { Child, Component, Element } from "../../../src/markup/jsx-runtime.ts";

/** The same tree whose last lines are as they are found: satori joins no word to one that stands alone there. */
export function withLoneWords(tree: Element): Element {
  return left(tree) as Element;
}

function left(child: Child): Child {
  if (Array.isArray(child)) return child.map(left);
  if (typeof child !== "object" || child === null) return child;
  const { type, props } = child as Element;
  if (typeof type === "function") return left((type as Component<Element["props"]>)(props));
  const { style } = props as BoxProps;
  const children = left(props.children);
  const alone = style?.loneWord === undefined ? style : { ...style, loneWord: "left" };
  return { ...(child as Element), props: { ...props, children, ...(alone && { style: alone }) } };
}
