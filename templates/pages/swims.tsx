import { printPaths, sitePaths } from "../../src/model/addresses.ts";
import type { SwimEntry, SwimText } from "../../src/model/swim.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** The swims of a guide. */
export function SwimListPage({ view }: { view: View }) {
  const { say, href, library } = view;
  return (
    <>
      <PageHead title={say("swims.title")} lead={say("swims.lead")} />
      <p>
        <a href={href(sitePaths.soundings)}>{say("soundings.title")}</a>
      </p>
      <ul class="course">
        {library.swims.map((swim) => (
          <li>
            <a href={href(sitePaths.swim(swim.id))}>{swim.title}</a>
            <p>{swim.summary}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

interface SwimPageProps {
  readonly view: View;
  readonly swim: SwimEntry;
  readonly body: SwimText["onPage"];
}

/** A swim with all that is told of it. */
export function SwimPage({ view, swim, body }: SwimPageProps) {
  const { say, href } = view;
  const sheet = view.printables.find(({ path }) => path === `site/${printPaths.swim(swim.id)}`);
  return (
    <article class="prose">
      <PageHead title={swim.title} lead={swim.summary} />
      {sheet && (
        <p>
          <a href={href(sheet.path)}>{say("swims.to-print")}</a>
        </p>
      )}
      {view.markdown({ path: swim.path, body })}
    </article>
  );
}
