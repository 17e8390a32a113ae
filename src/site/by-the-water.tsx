import { ChoosePage } from "../../templates/pages/choose.tsx";
import { SessionListPage, SessionPage } from "../../templates/pages/sessions.tsx";
import { SoundingsPage } from "../../templates/pages/soundings.tsx";
import { SwimListPage, SwimPage } from "../../templates/pages/swims.tsx";
import type { View } from "../../templates/pages/view.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { rigListName } from "../model/guide-data.ts";
import { hasPage } from "../model/has-page.ts";
import type { SiteInput } from "./input.ts";
import type { MakeList, Page } from "./page.ts";
import { printedOf } from "./printables.ts";
import type { TextFrom } from "./text-from.ts";

/** Places to fish from, each with the rigs that suit it. */
export function swimPages(
  { library, swims, printables }: SiteInput,
  from: TextFrom,
  list: MakeList,
): readonly Page[] {
  if (!hasPage(library, "swims")) return [];
  const isPrinted = printedOf(printables);
  const form: Page = {
    ...list("soundings", sitePaths.soundings, (view) => <SoundingsPage view={view} />),
    scripts: ["soundings.js"],
    kept: "once opened",
  };
  return [
    form,
    { ...list("swims", sitePaths.swims, (view) => <SwimListPage view={view} />), kept: "once opened" },
    ...swims.map(
      ({ swim, onPage }): Page => ({
        path: sitePaths.swim(swim.id),
        title: swim.title,
        description: swim.summary,
        kind: "page",
        kept: "once opened",
        from: () => [
          from({ ...swim, body: onPage })(),
          hasPage(library, "choose") && swim.spots[0]?.title,
          isPrinted(printPaths.swim(swim.id)),
        ],
        body: (view) => <SwimPage view={view} swim={swim} body={onPage} />,
      }),
    ),
  ];
}

/** A form that says which rigs suit a water, in a guide that has rules for it. */
export function choosingPages(input: SiteInput, list: MakeList): readonly Page[] {
  if (!hasPage(input.library, "choose")) return [];
  return [
    {
      ...list("choose", sitePaths.choose, (view) => <ChoosePage view={view} />, "rigs"),
      scripts: ["guide-data.js", rigListName, "choosing-data.js", "choose.js"],
      kept: "once opened",
    },
  ];
}

/** For those who hold them: nobody is to find them by a search, and phones keep them once somebody has opened them. */
export function sessionPages(
  { library, sessions, printables }: SiteInput,
  from: TextFrom,
  list: MakeList,
): readonly Page[] {
  if (!hasPage(library, "sessions")) return [];
  const isPrinted = printedOf(printables);
  return [
    {
      ...list("sessions", sitePaths.sessions, (view) => <SessionListPage view={view} sessions={sessions} />),
      kind: undefined,
      isUnlisted: true,
      kept: "once opened",
    },
    ...sessions.map(
      (session): Page => ({
        path: sitePaths.session(session.id),
        title: session.title,
        description: session.line,
        isUnlisted: true,
        kept: "once opened",
        from: () => [
          session.texts.map((text) => [text.id, text.isForm, from({ ...text, path: session.path })()]),
          isPrinted(printPaths.session(session.id)),
        ],
        body: (view: View) => <SessionPage view={view} session={session} />,
      }),
    ),
  ];
}
