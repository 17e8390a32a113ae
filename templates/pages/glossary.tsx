import { termId } from "../../src/model/addresses.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** The words of the trade. */
export function GlossaryPage({ view: { say, library } }: { view: View }) {
  const letter = (term: string) => term.charAt(0).toUpperCase();
  const firsts = library.glossary.filter(
    ({ term }, at, all) => at === 0 || letter(term) !== letter(all[at - 1]!.term),
  );
  return (
    <>
      <PageHead title={say("glossary.title")} lead={say("glossary.lead")} />
      <nav class="letters" aria-label={say("on-this-page")}>
        <ul>
          {firsts.map(({ term }) => (
            <li>
              <a href={`#${termId(term)}`}>{letter(term)}</a>
            </li>
          ))}
        </ul>
      </nav>
      <dl class="glossary">
        {library.glossary.map(({ term, meaning, also, unlinked }) => {
          const forms = [...also, ...unlinked];
          return (
            <div>
              <dt id={termId(term)}>
                {term}
                {forms.length > 0 && <span>{say("glossary.also", { also: forms.join(", ") })}</span>}
              </dt>
              <dd>{meaning}</dd>
            </div>
          );
        })}
      </dl>
    </>
  );
}
