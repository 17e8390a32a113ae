import { sitePaths } from "../../src/model/addresses.ts";
import { hasPage } from "../../src/model/has-page.ts";
import type { RigEntry } from "../../src/model/library.ts";
import { CourseAtAGlance } from "./lessons.tsx";
import { Picture } from "./picture.tsx";
import { askedOf, RigAnswers, RigQuestions } from "./questions.tsx";
import { RigMarks } from "./rig.tsx";
import type { View } from "./view.ts";

/** The way in: three questions to a first rig, then the lessons; or what the guide itself writes there. */
export function HomePage({ view }: { view: View }) {
  const { library } = view;
  const own = library.templates.get("home");
  return (
    <>
      <header class="page-head home-head">
        <h1>{library.guide.title}</h1>
      </header>
      {own ? view.markdown(own) : <WaysIn view={view} />}
    </>
  );
}

function WaysIn({ view }: { view: View }) {
  const { say, href, library } = view;
  const [firstLesson] = library.lessons;
  const firstRig = library.rigs.find(({ level }) => level === "first") ?? library.rigs[0];
  return (
    <>
      <section aria-labelledby="which">
        <h2 id="which">{say("home.which")}</h2>
        <RigQuestions view={view} />
        <RigAnswers view={view} />
      </section>
      <AtTheBank view={view} />
      {firstLesson && (
        <section aria-labelledby="begin">
          <h2 id="begin">{say("home.begin")}</h2>
          <p class="lead">{say("home.lead")}</p>
          <p>
            <a class="button" href={href(sitePaths.lesson(firstLesson.id))}>
              {say("home.start")}
            </a>
          </p>
        </section>
      )}
      {firstRig && (
        <section aria-labelledby="first-rig">
          <h2 id="first-rig">{say("home.first-rig")}</h2>
          <div class="side-by-side">
            <RigSummary view={view} entry={firstRig} level={3} />
            <FirstRigPicture view={view} entry={firstRig} />
          </div>
        </section>
      )}
      {firstLesson && (
        <section aria-labelledby="course">
          <h2 id="course">{say("home.course")}</h2>
          <CourseAtAGlance view={view} />
        </section>
      )}
      <section aria-labelledby="offline">
        <h2 id="offline">{say("home.offline")}</h2>
        <p>{keptOnPhone(view)}</p>
        <p>
          <a href={href(sitePaths.onThisPhone)}>{say("home.offline-more")}</a>
        </p>
        <p>{say("home.offline-install")}</p>
      </section>
    </>
  );
}

/** What is asked for with a rod in the hand, near enough to be found without the foot of the page. */
function AtTheBank({ view: { say, href, library } }: { view: View }) {
  const links: (readonly [string, string])[] = [
    ...(hasPage(library, "troubles") ? [[sitePaths.troubles, say("troubles.title")] as const] : []),
    [sitePaths.knots, say("menu.knots")],
    [sitePaths.baits, say("menu.baits")],
    ...(hasPage(library, "fish") ? [[sitePaths.fish, say("fish.title")] as const] : []),
    [sitePaths.printables, say("menu.printables")],
  ];
  return (
    <section class="on-page" aria-labelledby="at-the-bank">
      <h2 id="at-the-bank">{say("home.at-the-bank")}</h2>
      <ul>
        {links.map(([target, words]) => (
          <li>
            <a href={href(target)}>{words}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** How much of the guide a phone has after the first visit, and in what room, rounded up. */
function keptOnPhone({ phone, figures, library, say }: View): string {
  const size = figures.number(Math.ceil(phone.bytes / 1e5) / 10, 1);
  const pages = [
    ...library.rigs.map(({ id }) => sitePaths.rig(id)),
    ...library.lessons.map(({ id }) => sitePaths.lesson(id)),
  ];
  const kept = pages.filter(phone.isAtOnce).length;
  if (kept === pages.length) return say("home.offline-how", { size });
  return say("home.offline-part", { size, kept, all: pages.length });
}

function FirstRigPicture({ view, entry }: { view: View; entry: RigEntry }) {
  const solved = view.solved.get(entry.id);
  const depth = solved?.depths[0];
  if (!solved || !depth) return null;
  return <Picture draw={() => view.drawRig(solved, depth, entry.id)} />;
}

interface Summary {
  readonly view: View;
  readonly entry: RigEntry;
  readonly level: 2 | 3;
  readonly hasPicture?: boolean;
}

/** A rig in a list: its name, purpose and marks, with what the filters look at. */
export function RigSummary({ view, entry, level, hasPicture = false }: Summary) {
  const { href, library } = view;
  const { rig } = entry;
  const link = <a href={href(sitePaths.rig(entry.id))}>{entry.title}</a>;
  const solved = hasPicture && view.solved.get(entry.id);
  return (
    <article class="rig-summary" {...askedOf(library, entry)}>
      {solved && (
        <div class="small-picture" aria-hidden="true">
          <raw-html html={view.drawSmallRig(solved, `${entry.id}-small`)} />
        </div>
      )}
      {level === 2 ? <h2>{link}</h2> : <h3>{link}</h3>}
      <p>{rig.purpose}</p>
      <RigMarks view={view} entry={entry} />
    </article>
  );
}
