import { sitePaths } from "../../src/model/addresses.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** Parts of the page; the script shows those that the rig has. */
const parts = ["settling", "depth", "current"] as const;

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
      <p id="try-said" role="status" />
      {parts.map((part) => (
        <section id={`try-${part}`} aria-labelledby={`try-${part}-title`} hidden>
          <h2 id={`try-${part}-title`}>{say(`try.${part}.title`)}</h2>
          <p>{say(`try.${part}.how`)}</p>
          {part === "current" && <Jumps view={view} />}
          <div class="try-shown" />
        </section>
      ))}
    </article>
  );
}

/** Places on the slider of the float that is held back, by its steps. */
const jumps = [
  ["free", 0],
  ["half", 10],
  ["stopped", 20],
] as const;

function Jumps({ view: { say } }: { readonly view: View }) {
  return (
    <p class="film-buttons">
      {jumps.map(([name, step]) => (
        <button type="button" data-step={String(step)}>
          {say(`try.current.${name}`)}
        </button>
      ))}
    </p>
  );
}
