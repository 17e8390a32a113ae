import { sitePaths } from "../../src/model/addresses.ts";
import { PageHead } from "./page-head.tsx";
import { TryParts } from "./try-parts.tsx";
import type { View } from "./view.ts";

/** Where a reader drives the films with a rig of their own: adds and takes shot, sets the float, holds it back. */
export function TryPage({ view }: { readonly view: View }) {
  const { say, href, library } = view;
  return (
    <article class="try">
      <PageHead title={say("try.title")} lead={say("try.lead")} />
      <noscript>
        <p>{say("try.no-script")}</p>
      </noscript>
      <div
        id="try-form"
        class="needs-script"
        data-worker={href(sitePaths.asset("sums-worker.js"))}
        data-failed={say("try.failed")}
      >
        <p>
          <label for="try-rig">{say("try.rig")}</label>
          <select id="try-rig" name="rig">
            {library.rigs.map(({ id, title }) => (
              <option value={id}>{title}</option>
            ))}
          </select>
        </p>
        <p>
          <label for="try-deep">{say("try.how-deep")}</label>
          <input id="try-deep" type="range" min="1" max="100" />
          <output id="try-deep-said" for="try-deep" aria-live="off" />
        </p>
        <p>
          <a id="try-own" href={href(sitePaths.rigs)}>
            {say("try.own")}
          </a>
        </p>
      </div>
      <TryParts say={say} />
    </article>
  );
}
