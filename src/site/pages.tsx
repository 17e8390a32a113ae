import { BaitsPage, FishPage } from "../../templates/pages/fish-and-baits.tsx";
import { FloatsPage } from "../../templates/pages/floats.tsx";
import { GlossaryPage } from "../../templates/pages/glossary.tsx";
import { HomePage } from "../../templates/pages/home.tsx";
import { LessonListPage, LessonPage } from "../../templates/pages/lessons.tsx";
import { LicencesPage } from "../../templates/pages/licences.tsx";
import { NotFoundPage } from "../../templates/pages/not-found.tsx";
import { OnThisPhonePage } from "../../templates/pages/on-this-phone.tsx";
import { pageWords } from "../../templates/pages/page-words.ts";
import { PlanListPage, PlanPage } from "../../templates/pages/plans.tsx";
import { KnotsPage, PrintablesPage, ProsePage, SearchPage } from "../../templates/pages/reference.tsx";
import { RigPage } from "../../templates/pages/rig.tsx";
import { RigListPage } from "../../templates/pages/rig-list.tsx";
import { ShotPage } from "../../templates/pages/shot.tsx";
import { TroublesPage } from "../../templates/pages/troubles.tsx";
import { TryPage } from "../../templates/pages/try.tsx";
import type { View } from "../../templates/pages/view.ts";
import { withId } from "../core/lists.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { rigListName } from "../model/guide-data.ts";
import { hasPage } from "../model/has-page.ts";
import { once } from "../model/kept.ts";
import type { Lesson, Library, Prose, RigEntry } from "../model/library.ts";
import type { SolvedRig } from "../model/solved.ts";
import { choosingPages, sessionPages, swimPages } from "./by-the-water.tsx";
import { filmScripts } from "./films.tsx";
import type { SiteInput } from "./input.ts";
import { licencesOf } from "./licences.ts";
import type { MakeList, Page } from "./page.ts";
import { partsFrom, showing } from "./parts-from.ts";
import { printablesOf, printedOf } from "./printables.ts";
import { type TextFrom, textAlone, textFrom } from "./text-from.ts";

/** Every page of the site, in the order of the course. */
export function pagesOf(input: SiteInput): Page[] {
  const { library, solved, kit, printables } = input;
  const say = pageWords(kit.words);
  const from = textFrom(input);
  const hasCard = ({ id }: RigEntry) => printablesOf(id, printables).some(({ kind }) => kind === "card");
  const list: MakeList = (name, path, body, section) => ({
    path,
    title: say(`${name}.title`),
    description: say(`${name}.description`),
    section,
    kind: "page",
    body,
  });
  const carded = library.rigs.filter(hasCard);
  const shared = carded.find(({ level }) => level === "first") ?? carded[0];
  const pages: Page[] = [
    {
      path: sitePaths.home,
      title: library.guide.title,
      description: say("home.lead"),
      scripts: library.templates.has("home") ? [] : ["water.js"],
      kept: "always",
      body: (view) => <HomePage view={view} />,
    },
    // Lists of titles say nothing that the pages themselves do not.
    {
      ...list("lessons", sitePaths.lessons, (view) => <LessonListPage view={view} />, "lessons"),
      kind: undefined,
      kept: "at the bank",
    },
    ...library.lessons.map((lesson) => lessonPage(lesson, from, input)),
    ...planPages(input, from, list),
    ...swimPages(input, from, list),
    ...choosingPages(input, list),
    ...sessionPages(input, from, list),
    {
      ...list("rigs", sitePaths.rigs, (view) => <RigListPage view={view} />, "rigs"),
      kind: undefined,
      kept: "at the bank",
      scripts: ["filters.js"],
    },
    ...library.rigs.flatMap((entry) => {
      const sums = solved.get(entry.id);
      return sums ? [rigPage(entry, sums, from, input)] : [];
    }),
    ...referencePages(library, from, list),
    ...library.pages.map((prose) => prosePage(prose, from, input)),
    list("printables", sitePaths.printables, (view) => <PrintablesPage view={view} />),
    ...servicePages(input, list, () => pages),
  ];
  // A page without a picture of its own shows the card of the rig that everybody starts with.
  return pages.map((page) => ({
    ...(shared && { preview: sitePaths.preview(shared.id) }),
    ...page,
    ...withFromOnce(page),
  }));
}

/** What a page is made from, asked for by search and page: a rig's takes longer to go through than a result to look up. */
function withFromOnce({ from }: Page): Pick<Page, "from"> {
  return from ? { from: once(() => digestOf(from())) } : {};
}

/** What helps to find one's way; `pages` gives all, these among them. */
function servicePages(input: SiteInput, list: MakeList, pages: () => readonly Page[]): readonly Page[] {
  return [
    {
      ...list("search", sitePaths.search, (view) => <SearchPage view={view} />, "search"),
      kind: undefined,
      kept: "always",
      scripts: ["search-index.js", "search-rest.js", "search.js"],
    },
    {
      ...list("licences", sitePaths.licencePage, (view) => (
        <LicencesPage view={view} licences={licencesOf(input)} />
      )),
      kind: undefined,
    },
    {
      ...list("not-found", sitePaths.notFound, (view) => <NotFoundPage view={view} />),
      kind: undefined,
      kept: "always",
    },
    {
      ...list("on-this-phone", sitePaths.onThisPhone, (view) => (
        <OnThisPhonePage view={view} pages={pages()} />
      )),
      kind: undefined,
      kept: "always",
      scripts: ["on-this-phone.js"],
    },
  ];
}

const lessonPage = (lesson: Lesson, from: TextFrom, input: SiteInput): Page => ({
  path: sitePaths.lesson(lesson.id),
  title: lesson.title,
  description: lesson.summary,
  section: "lessons",
  kind: "lesson",
  kept: "in turn",
  scripts: filmScripts(lesson, input),
  from: () => [from(lesson)(), placeInCourse(lesson, input.library)],
  drawnFrom: () => textAlone(lesson, input),
  body: (view) => <LessonPage view={view} lesson={lesson} />,
});

/** All that the page of a lesson says of the others. */
function placeInCourse(lesson: Lesson, { lessons }: Library): unknown {
  const at = lessons.indexOf(lesson);
  const beside = [lessons[at - 1], lessons[at + 1]].map((one) => one && [one.id, one.title]);
  return [at, lessons.length, lesson.part, beside];
}

/** For those who teach; learners do not look for them. */
function planPages(input: SiteInput, from: TextFrom, list: MakeList): readonly Page[] {
  const { library, kit, printables } = input;
  const { words } = kit;
  if (!hasPage(library, "plans")) return [];
  const isPrinted = printedOf(printables);
  return [
    {
      ...list("plans", sitePaths.plans, (view) => <PlanListPage view={view} />),
      kind: undefined,
      kept: "once opened",
    },
    ...library.plans.map((plan): Page => {
      const title = words("plan.title", { lesson: plan.title });
      return {
        path: sitePaths.plan(plan.id),
        title,
        description: plan.summary,
        kept: "once opened",
        from: () => [from(plan)(), isPrinted(printPaths.plan(plan.id))],
        drawnFrom: () => textAlone(plan, input),
        body: (view: View) => <PlanPage view={view} title={title} plan={plan} />,
      };
    }),
  ];
}

function rigPage(entry: RigEntry, solved: SolvedRig, from: TextFrom, input: SiteInput): Page {
  const { library, printables } = input;
  const toPrint = printablesOf(entry.id, printables).map(({ kind, path }) => [kind, path]);
  const { body: _, placeOf: __, path: ___, ...told } = entry;
  const { marking } = withId(library.floats, entry.rig.float.id);
  return {
    path: sitePaths.rig(entry.id),
    title: entry.title,
    description: entry.rig.purpose,
    section: "rigs",
    kind: "rig",
    kept: "in turn",
    scripts: ["rig.js", ...filmScripts(entry, input)],
    ...(toPrint.some(([kind]) => kind === "card") && { preview: sitePaths.preview(entry.id) }),
    // The sums of a rig follow from the rig.
    from: () => [from(entry)(), told, marking, toPrint],
    drawnFrom: () => [textAlone(entry, input), told],
    body: (view) => <RigPage view={view} entry={entry} solved={solved} />,
  };
}

const prosePage = (prose: Prose, from: TextFrom, input: SiteInput): Page => ({
  path: sitePaths.page(prose.id),
  title: prose.title,
  description: prose.summary,
  ...(prose.id === "safety" && { section: "safety", kept: "always" }),
  kind: "page",
  scripts: filmScripts(prose, input),
  from: from(prose),
  drawnFrom: () => textAlone(prose, input),
  body: (view) => <ProsePage view={view} prose={prose} />,
});

/** Films to drive, and tackle, bait, fish, signs and words to look up; a page for each that there is any of. */
function referencePages(library: Library, from: TextFrom, list: MakeList): readonly Page[] {
  const atTheBank: MakeList = (...page) => ({ ...list(...page), kept: "at the bank" });
  const part = partsFrom(library, from);
  const shown = (parts: Parameters<typeof showing>[0], page: Page) => showing(parts, part, page);
  return [
    shown(["rigs"], {
      ...list("try", sitePaths.tryIt, (view) => <TryPage view={view} />),
      scripts: ["guide-data.js", rigListName, "try.js"],
      kept: "once opened",
    }),
    shown(
      ["floats", "rigs"],
      atTheBank("floats", sitePaths.floats, (view) => <FloatsPage view={view} />, "floats"),
    ),
    shown(
      ["scales", "tubs", "pages"],
      atTheBank("shot", sitePaths.shot, (view) => <ShotPage view={view} />),
    ),
    shown(
      ["knots"],
      atTheBank("knots", sitePaths.knots, (view) => <KnotsPage view={view} />),
    ),
    shown(
      ["baits"],
      atTheBank("baits", sitePaths.baits, (view) => <BaitsPage view={view} />),
    ),
    ...(hasPage(library, "fish")
      ? [
          shown(
            ["species", "lines", "rigs"],
            atTheBank("fish", sitePaths.fish, (view) => <FishPage view={view} />),
          ),
        ]
      : []),
    ...(hasPage(library, "troubles")
      ? [
          {
            ...shown(
              ["troubles"],
              atTheBank("troubles", sitePaths.troubles, (view) => <TroublesPage view={view} />),
            ),
            ...(library.troubles.some(({ when }) => when) && { scripts: ["signs.js"] }),
          },
        ]
      : []),
    ...(hasPage(library, "glossary")
      ? [
          shown(
            ["glossary"],
            atTheBank("glossary", sitePaths.glossary, (view) => <GlossaryPage view={view} />),
          ),
        ]
      : []),
  ];
}
