import { type WaterKind, waterKinds } from "../../src/core/water/water.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

interface ListedPage {
  readonly path: string;
  readonly title: string;
  readonly kind?: "lesson" | "rig" | "page";
  readonly isUnlisted?: boolean;
}

/**
 * Which pages this phone has, how it gets more, and what a reader sees in place of a page that it has not. Without its
 * script it is a list of all pages.
 */
export function OnThisPhonePage({ view, pages }: { view: View; pages: readonly ListedPage[] }) {
  const { say } = view;
  const listed = pages.filter(
    ({ path, isUnlisted }) => !isUnlisted && path !== sitePaths.notFound && path !== view.path,
  );
  const groups = [
    ["rest", say("on-this-phone.rest"), listed.filter(({ kind }) => kind !== "lesson" && kind !== "rig")],
    ["rigs", say("menu.rigs"), listed.filter(({ kind }) => kind === "rig")],
    ["lessons", say("menu.lessons"), listed.filter(({ kind }) => kind === "lesson")],
  ] as const;
  const waters = new Map(view.library.rigs.map(({ id, rig }) => [sitePaths.rig(id), rig.water]));
  return (
    <>
      <PageHead title={say("on-this-phone.title")} lead={say("on-this-phone.lead")} />
      <MissedPage view={view} />
      <KeepMore view={view} />
      <div id="kept">
        {groups
          .filter(([, , those]) => those.length > 0)
          .map(([id, title, those]) => (
            <section aria-labelledby={id}>
              <h2 id={id}>{title}</h2>
              <ul class="files">
                {those.map((page) => (
                  <PageLink view={view} page={page} water={waters.get(page.path)} />
                ))}
              </ul>
            </section>
          ))}
      </div>
      <details id="not-kept" hidden>
        <summary>{say("on-this-phone.not-kept")}</summary>
        <ul class="files" />
      </details>
    </>
  );
}

/** What was asked for and is not here yet. */
function MissedPage({ view: { say } }: { view: View }) {
  return (
    <div id="missed" hidden data-file={say("on-this-phone.file")}>
      <p role="status" data-missed={say("on-this-phone.missed", { page: "{page}" })} />
      <p>
        <a class="button" href="#kept">
          {say("on-this-phone.again")}
        </a>
      </p>
    </div>
  );
}

function KeepMore({ view: { say } }: { view: View }) {
  return (
    <section id="keep-more" hidden aria-labelledby="keep-more-title">
      <h2 id="keep-more-title">{say("on-this-phone.more")}</h2>
      <p>{say("on-this-phone.more-how")}</p>
      <p class="buttons">
        {waterKinds.map((water) => (
          <button
            type="button"
            data-water={water}
            data-label={say(`on-this-phone.keep-${water}`, { size: "{size}" })}
          />
        ))}
        <button type="button" data-label={say("on-this-phone.keep-all", { size: "{size}" })} />
      </p>
      <p
        id="keep-status"
        role="status"
        data-keeping={say("on-this-phone.keeping", { done: "{done}", all: "{all}" })}
        data-done={say("on-this-phone.done")}
        data-broken={say("on-this-phone.broken", { left: "{left}" })}
      />
    </section>
  );
}

/** The page's script finds out which of them are kept. */
function PageLink({
  view: { href, phone },
  page: { path, title },
  water,
}: {
  view: View;
  page: ListedPage;
  water: WaterKind | undefined;
}) {
  return (
    <li data-bytes={String(phone.bytesOf(path))} data-water={water}>
      <a href={href(path)}>{title}</a>
    </li>
  );
}
