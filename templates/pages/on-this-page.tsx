import type { Child, Element } from "../../src/markup/jsx-runtime.ts";
import type { View } from "./view.ts";

/** A page with fewer parts needs no list of them. */
const leastParts = 4;

/** Ways to the parts of a long page, folded up so that its first part stands on the first screen. */
export function OnThisPage({ view: { say }, body }: { view: View; body: Child }) {
  const headings = elementsOf(body).filter(
    ({ type, props }) => type === "h2" && typeof props.id === "string",
  );
  if (headings.length < leastParts) return null;
  return (
    <nav class="on-page" aria-label={say("on-this-page")} data-unsearched="">
      <details>
        <summary>{say("on-this-page")}</summary>
        <ul>
          {headings.map(({ props }) => (
            <li>
              <a href={`#${props.id}`}>{textOf(props.children)}</a>
            </li>
          ))}
        </ul>
      </details>
    </nav>
  );
}

/** The outermost elements of a tree. */
function elementsOf(child: Child): readonly Element[] {
  if (isList(child)) return child.flatMap(elementsOf);
  return typeof child === "object" && child !== null ? [child] : [];
}

function textOf(child: Child): string {
  if (typeof child === "string" || typeof child === "number") return String(child);
  if (isList(child)) return child.map(textOf).join("");
  return typeof child === "object" && child !== null ? textOf(child.props.children) : "";
}

const isList = (child: Child): child is readonly Child[] => Array.isArray(child);
