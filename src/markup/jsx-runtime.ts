/**
 * TSX to a plain tree of `{ type, key, props }`, for cards (laid out by `layOut`) and pages (made into HTML) alike.
 * Function components are called by whoever walks the tree.
 */
export type Child = Element | string | number | boolean | null | undefined | readonly Child[];

export type Component<P = never> = (props: P) => Child;

export interface Element {
  readonly type: string | Component;
  readonly key: string | null;
  readonly props: Readonly<Record<string, unknown>> & { readonly children?: Child };
}

export const Fragment: Component<{ children?: Child }> = ({ children }) => children;

export function jsx(type: string | Component, props: Element["props"], key: string | null = null): Element {
  return { type, key, props };
}

export { jsx as jsxDEV, jsx as jsxs };

export namespace JSX {
  export type Element = import("./jsx-runtime.ts").Element;
  export type ElementType = string | ((props: never) => Child);
  export interface ElementChildrenAttribute {
    children: unknown;
  }
  export interface IntrinsicAttributes {
    key?: string;
  }
  export interface IntrinsicElements {
    [tag: string]: Record<string, unknown>;
  }
}
