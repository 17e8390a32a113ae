import type { Prose } from "../../src/content/library.ts";
import { sitePaths, type View } from "./view.ts";

/** A page that is all Markdown, such as safety. */
export function ProsePage({ view, prose }: { view: View; prose: Prose }) {
  return (
    <article class="prose">
      <header class="page-head">
        <h1>{prose.title}</h1>
        <p class="lead">{prose.summary}</p>
      </header>
      {view.markdown(prose)}
    </article>
  );
}

/** Baits with what the sums use of them. */
export function BaitsPage({ view }: { view: View }) {
  const { say, figures, library } = view;
  return (
    <>
      <header class="page-head">
        <h1>{say("baits.title")}</h1>
        <p class="lead">{say("baits.lead")}</p>
      </header>
      <section class="scroll" aria-label={say("baits.title")} tabindex="0">
        <table>
          <caption class="unseen">{say("baits.title")}</caption>
          <thead>
            <tr>
              <th scope="col">{say("baits.bait")}</th>
              <th scope="col">{say("baits.mass")}</th>
              <th scope="col">{say("baits.fall")}</th>
              <th scope="col">{say("baits.basis")}</th>
            </tr>
          </thead>
          <tbody>
            {library.baits.map((bait) => (
              <tr id={bait.id}>
                <th scope="row">{bait.title}</th>
                <td>{figures.mass(bait.massG)}</td>
                <td>
                  {bait.fallMs === undefined
                    ? say("baits.not-timed")
                    : say("baits.fall-text", { time: figures.time(1 / bait.fallMs) })}
                </td>
                <td>{say(`basis.${bait.basis.replaceAll(" ", "-")}`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

/** Knots with the share of the line's strength that each leaves. */
export function KnotsPage({ view }: { view: View }) {
  const { say, figures, library } = view;
  return (
    <>
      <header class="page-head">
        <h1>{say("knots.title")}</h1>
        <p class="lead">{say("knots.lead")}</p>
      </header>
      <section class="scroll" aria-label={say("knots.title")} tabindex="0">
        <table>
          <caption>{say("knots.caption")}</caption>
          <thead>
            <tr>
              <th scope="col">{say("knots.knot")}</th>
              <th scope="col">{say("knots.share")}</th>
              <th scope="col">{say("baits.basis")}</th>
            </tr>
          </thead>
          <tbody>
            {library.knots.map((knot) => (
              <tr id={knot.id}>
                <th scope="row">{knot.title}</th>
                <td>
                  {say("knots.share-text", {
                    low: figures.share(knot.strengthShareLow),
                    high: figures.share(knot.strengthShareHigh),
                  })}
                </td>
                <td>{say(`basis.${knot.basis.replaceAll(" ", "-")}`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

/** Every file to print, with its size and what to print it on. */
export function PrintablesPage({ view }: { view: View }) {
  const { say, href, printables } = view;
  const kinds = (["card", "sheet", "handout"] as const).filter((kind) =>
    printables.some((file) => file.kind === kind),
  );
  return (
    <>
      <header class="page-head">
        <h1>{say("printables.title")}</h1>
        <p class="lead">{say("printables.lead")}</p>
      </header>
      {kinds.map((kind) => (
        <section aria-labelledby={kind}>
          <h2 id={kind}>{say(`printables.${kind}`)}</h2>
          <p>{say(`printables.${kind}-how`)}</p>
          <ul class="files">
            {printables
              .filter((file) => file.kind === kind)
              .map((file) => (
                <li>
                  <a href={href(file.path)}>{file.title}</a>{" "}
                  <span>{say("printables.size", { size: Math.ceil(file.sizeBytes / 1024) })}</span>
                </li>
              ))}
          </ul>
        </section>
      ))}
      {kinds.length === 0 && <p>{say("printables.none")}</p>}
    </>
  );
}

/** The search; its results come from the page's script. */
export function SearchPage({ view }: { view: View }) {
  const { say, href } = view;
  return (
    <>
      <header class="page-head">
        <h1>{say("search.title")}</h1>
      </header>
      <search>
        <form
          id="search"
          method="get"
          action={href(sitePaths.search)}
          data-none={say("search.none")}
          data-some={say("search.some", { count: "{count}" })}
        >
          <label for="query">{say("search.label")}</label>
          <input
            id="query"
            name="q"
            type="search"
            autocomplete="off"
            autocapitalize="none"
            spellcheck="false"
          />
          <button type="submit">{say("search.go")}</button>
        </form>
      </search>
      <p id="search-count" role="status" />
      <ol id="search-results" class="results" />
      <noscript>
        <p>{say("search.no-script")}</p>
      </noscript>
    </>
  );
}
