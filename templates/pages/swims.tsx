import { printPaths, sitePaths } from "../../src/model/addresses.ts";
import { hasPage } from "../../src/model/has-page.ts";
import type { SwimEntry, SwimText } from "../../src/model/swim.ts";
import { PageHead } from "./page-head.tsx";
import { printableAt, type View } from "./view.ts";

/** The swims of a guide. */
export function SwimListPage({ view }: { view: View }) {
  const { say, href, library } = view;
  return (
    <>
      <PageHead title={say("swims.title")} lead={say("swims.lead")} />
      <p>
        <a href={href(sitePaths.soundings)}>{say("soundings.title")}</a>
      </p>
      {hasPage(library, "choose") && (
        <p>
          <a href={href(sitePaths.choose)}>{say("choose.title")}</a>
        </p>
      )}
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
  const { say, href, library } = view;
  const [spot] = swim.spots;
  const sheet = printableAt(view, printPaths.swim(swim.id));
  return (
    <article class="prose">
      <PageHead title={swim.title} lead={swim.summary} />
      {sheet && (
        <p>
          <a href={href(sheet.path)}>{say("swims.to-print")}</a>
        </p>
      )}
      {hasPage(library, "choose") && spot && (
        <p>
          <a href={`${href(sitePaths.choose)}?place=${encodeURIComponent(`${swim.id}|${spot.title}`)}`}>
            {say("choose.for-swim")}
          </a>
        </p>
      )}
      {view.markdown({ path: swim.path, body })}
    </article>
  );
}
