import { sitePaths } from "../../src/model/addresses.ts";
import { PageHead } from "./page-head.tsx";
import { SearchForm } from "./reference.tsx";
import { hasSafety, type View } from "./view.ts";

/** What a server shows for an address where there is nothing: the search, and the ways in. */
export function NotFoundPage({ view }: { view: View }) {
  const { say, href } = view;
  const ways = [
    [sitePaths.home, say("menu.home")],
    [sitePaths.lessons, say("menu.lessons")],
    [sitePaths.rigs, say("menu.rigs")],
    ...(hasSafety(view) ? [[sitePaths.safety, say("menu.safety")] as const] : []),
  ] as const;
  return (
    <>
      <PageHead title={say("not-found.title")} lead={say("not-found.lead")} />
      <search>
        <SearchForm view={view} />
      </search>
      <ul class="files">
        {ways.map(([target, words]) => (
          <li>
            <a href={href(target)}>{words}</a>
          </li>
        ))}
      </ul>
    </>
  );
}
