import type { Child } from "../../src/markup/jsx-runtime.ts";

/** What a page begins with: its title, a sentence of what stands on it, and whatever else belongs there. */
export function PageHead({ title, lead, children }: { title: string; lead: string; children?: Child }) {
  return (
    <header class="page-head">
      <h1>{title}</h1>
      <p class="lead">{lead}</p>
      {children}
    </header>
  );
}
