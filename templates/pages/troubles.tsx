import { termId } from "../../src/model/addresses.ts";
import type { Trouble } from "../../src/model/library.ts";
import { signTimes } from "../../src/model/signs.ts";
import { keyOf } from "../../src/words/words.ts";
import { Either } from "./fields.tsx";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** What the float does, what it means, and what to do: asked for in three taps, or to browse. */
export function TroublesPage({ view }: { view: View }) {
  const { say, library } = view;
  return (
    <>
      <PageHead title={say("troubles.title")} lead={say("troubles.lead")} />
      <Asked view={view} />
      <nav class="signs" aria-label={say("on-this-page")} data-unsearched="">
        <ul id="signs">
          {library.troubles.map((trouble) => (
            <Sign view={view} trouble={trouble} />
          ))}
        </ul>
      </nav>
      {library.troubles.map((trouble) => (
        <CauseAndCure view={view} trouble={trouble} />
      ))}
    </>
  );
}

/** The first two taps; the third is on a sign. */
function Asked({ view: { say, library } }: { view: View }) {
  const times = signTimes.filter((time) => library.troubles.some(({ when }) => when === time));
  if (times.length === 0) return null;
  return (
    <div id="ask" class="diagnosis needs-script" data-unsearched="">
      <fieldset>
        <legend>{say("troubles.when")}</legend>
        {times.map((time) => (
          <Either name="when" value={time} label={say(`troubles.${keyOf(time)}`)} />
        ))}
      </fieldset>
      <fieldset>
        <legend>{say("troubles.water")}</legend>
        <Either name="water" value="still" label={say("water.still")} />
        <Either name="water" value="flowing" label={say("water.flowing")} />
      </fieldset>
      <p id="signs-found" role="status" data-some={say("troubles.found", { count: "{count}" })} />
    </div>
  );
}

function Sign({ view, trouble: { sign, when, water, shows } }: { view: View; trouble: Trouble }) {
  return (
    <li data-when={when} data-water={water}>
      <a href={`#${termId(sign)}`}>
        {shows && (
          <span class="sign-picture" aria-hidden="true">
            <raw-html html={view.drawSign(shows, sign)} />
          </span>
        )}
        {sign}
      </a>
    </li>
  );
}

function CauseAndCure({
  view: { say },
  trouble: { sign, causes, remedies },
}: {
  view: View;
  trouble: Trouble;
}) {
  const id = termId(sign);
  const lists = [
    ["means", causes],
    ["do", remedies],
  ] as const;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{sign}</h2>
      <div class="side-by-side">
        {lists.map(([key, items]) => (
          <div>
            <h3>{say(`troubles.${key}`)}</h3>
            <ol>
              {items.map((item) => (
                <li>{item}</li>
              ))}
            </ol>
          </div>
        ))}
      </div>
    </section>
  );
}
