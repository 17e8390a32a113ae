import { levels } from "../../src/model/library.ts";
import { RigSummary } from "./home.tsx";
import { PageHead } from "./page-head.tsx";
import { RigQuestions } from "./questions.tsx";
import type { View } from "./view.ts";

/** Of more, the pictures would make the page too heavy for a phone: some 3 kB each. */
const mostWithPictures = 100;

/** Every rig, easiest first; the filters need the page's script and hide themselves without it. */
export function RigListPage({ view }: { view: View }) {
  const { say, library } = view;
  const rigs = [...library.rigs].sort((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level));
  return (
    <>
      <PageHead title={say("rigs.title")} lead={say("rigs.lead")} />
      <RigQuestions view={view} />
      <p
        id="filter-result"
        role="status"
        data-some={say("filter.some", { count: "{count}" })}
        data-nearest={say("filter.nearest", { left: "{left}" })}
      />
      <div id="rig-list">
        {rigs.map((entry) => (
          <RigSummary view={view} entry={entry} level={2} hasPicture={rigs.length <= mostWithPictures} />
        ))}
      </div>
    </>
  );
}
