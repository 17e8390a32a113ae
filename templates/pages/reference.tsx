import { sitePaths } from "../../src/model/addresses.ts";
import type { Prose } from "../../src/model/library.ts";
import { printableKinds, type SmallPage } from "../../src/model/printable.ts";
import { keyOf } from "../../src/words/words.ts";
import { OnThisPage } from "./on-this-page.tsx";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** A page that is all Markdown, such as safety. */
export function ProsePage({ view, prose }: { view: View; prose: Prose }) {
  const body = view.markdown(prose);
  return (
    <article class="prose">
      <PageHead title={prose.title} lead={prose.summary} />
      <OnThisPage view={view} body={body} />
      {body}
    </article>
  );
}

/** Knots step by step, with the share of the line's strength that each leaves. */
export function KnotsPage({ view }: { view: View }) {
  const { say, figures, library } = view;
  return (
    <>
      <PageHead title={say("knots.title")} lead={say("knots.lead")} />
      <section class="scroll" aria-label={say("knots.title")} tabindex="0">
        <table>
          <caption>{say("knots.caption")}</caption>
          <thead>
            <tr>
              <th scope="col">{say("knots.knot")}</th>
              <th scope="col">{say("knots.share")}</th>
              <th scope="col">{say("basis.title")}</th>
            </tr>
          </thead>
          <tbody>
            {library.knots.map((knot) => (
              <tr>
                <th scope="row">
                  <a href={`#${knot.id}`}>{knot.title}</a>
                </th>
                <td>
                  {knot.strengthShare
                    ? say("knots.share-text", {
                        low: figures.share(knot.strengthShare.low),
                        high: figures.share(knot.strengthShare.high),
                      })
                    : say("knots.not-knotted")}
                </td>
                <td>{knot.strengthShare && say(`basis.${keyOf(knot.strengthShare.basis)}`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {library.knots.map(({ id, title }) => (
        <section aria-labelledby={id}>
          <h2 id={id}>{title}</h2>
          <ol class="knot-steps">
            {view.drawKnot(id).map(({ svg, caption }) => (
              <li>
                <figure class="picture">
                  <raw-html html={svg} />
                  {caption && <figcaption>{caption}</figcaption>}
                </figure>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** Every file to print, with its size and what to print it on. */
export function PrintablesPage({ view }: { view: View }) {
  const { say, href, printables } = view;
  const kinds = printableKinds.filter((kind) => printables.some((file) => file.kind === kind));
  return (
    <>
      <PageHead title={say("printables.title")} lead={say("printables.lead")} />
      {kinds.map((kind) => (
        <section aria-labelledby={kind}>
          <h2 id={kind}>{say(`printables.${kind}`)}</h2>
          <p>{say(`printables.${kind}-how`)}</p>
          <ul class="small-pages">
            {printables
              .filter((file) => file.kind === kind)
              .map((file) => (
                <li>
                  <a href={href(file.path)}>
                    {file.smallPage && <SmallPagePicture view={view} page={file.smallPage} />}
                    {file.title}
                  </a>{" "}
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

/** What the link beside it leads to; there are many, so a browser fetches those in view. */
function SmallPagePicture({ view, page: { path, widthMm, heightMm } }: { view: View; page: SmallPage }) {
  const [width, height] = [widthMm, heightMm].map((mm) => String(Math.round(mm)));
  return <img src={view.href(path)} width={width} height={height} alt="" loading="lazy" decoding="async" />;
}

/** Where a reader types what to look for; on the search's own page its script answers at once. */
export function SearchForm({ view: { say, href } }: { view: View }) {
  return (
    <form
      id="search"
      method="get"
      action={href(sitePaths.search)}
      data-none={say("search.none")}
      data-some={say("search.some", { count: "{count}" })}
    >
      <label for="query">{say("search.label")}</label>
      <input id="query" name="q" type="search" autocomplete="off" autocapitalize="none" spellcheck="false" />
      <button type="submit">{say("search.go")}</button>
    </form>
  );
}

/** The search; its results come from the page's script. */
export function SearchPage({ view }: { view: View }) {
  const { say } = view;
  return (
    <>
      <header class="page-head">
        <h1>{say("search.title")}</h1>
      </header>
      <search>
        <SearchForm view={view} />
      </search>
      <p id="search-count" role="status" />
      <p id="search-part" hidden>
        {say("search.part")} <a href={view.href(sitePaths.onThisPhone)}>{say("on-this-phone.title")}</a>
      </p>
      <ol id="search-results" class="results" />
      <noscript>
        <p>{say("search.no-script")}</p>
      </noscript>
    </>
  );
}
