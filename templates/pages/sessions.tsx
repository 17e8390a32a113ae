import { printPaths, sitePaths } from "../../src/model/addresses.ts";
import type { SessionText } from "../../src/words/session/session-texts.ts";
import { PageHead } from "./page-head.tsx";
import { printableAt, type View } from "./view.ts";

/** A session that its site shows. */
export interface ShownSession {
  readonly id: string;
  /** Path of its file. */
  readonly path: string;
  readonly title: string;
  /** When, and with whom. */
  readonly line: string;
  readonly texts: readonly SessionText[];
}

/** The sessions of a guide that its site shows, by their days. */
export function SessionListPage({ view, sessions }: { view: View; sessions: readonly ShownSession[] }) {
  const { say, href } = view;
  return (
    <>
      <PageHead title={say("sessions.title")} lead={say("sessions.lead")} />
      <ol class="course">
        {sessions.map(({ id, title, line }) => (
          <li>
            <a href={href(sitePaths.session(id))}>{title}</a>
            <p>{line}</p>
          </li>
        ))}
      </ol>
    </>
  );
}

/** The pack of one session, but for what is filled in on paper. */
export function SessionPage({ view, session }: { view: View; session: ShownSession }) {
  const { say, href } = view;
  const pack = printableAt(view, printPaths.session(session.id));
  return (
    <article class="prose">
      <PageHead title={session.title} lead={session.line} />
      {pack && (
        <p>
          <a href={href(pack.path)}>{say("sessions.to-print")}</a>
        </p>
      )}
      {session.texts
        .filter(({ isForm }) => !isForm)
        .map(({ id, title, summary, body }) => (
          <section>
            <h2 id={id}>{title}</h2>
            <p>{summary}</p>
            {view.markdown({ path: session.path, body }, { level: 3, idPrefix: `${id}-` })}
          </section>
        ))}
    </article>
  );
}
