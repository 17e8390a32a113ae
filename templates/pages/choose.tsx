import { sitePaths } from "../../src/model/addresses.ts";
import { windStrengths } from "../../src/model/choosing-rules.ts";
import { levels } from "../../src/model/library.ts";
import { placeQuestions } from "../../src/model/place-questions.ts";
import { questions } from "../../src/model/questions.ts";
import { PaceFields, pacedWay, Select } from "./fields.tsx";
import { PageHead } from "./page-head.tsx";
import { GuideShotBox } from "./shot-box.tsx";
import type { View } from "./view.ts";

/** Which rigs suit a water, asked in a form: the page's script does the sums. */
export function ChoosePage({ view }: { readonly view: View }) {
  const { say, href } = view;
  return (
    <article class="prose choose">
      <PageHead title={say("choose.title")} lead={say("choose.lead")} />
      <noscript>
        <p>{say("choose.no-script")}</p>
      </noscript>
      <form
        id="choose-form"
        class="needs-script"
        aria-label={say("choose.title")}
        data-worker={href(sitePaths.asset("sums-worker.js"))}
        data-unread={say("choose.unread", { typed: "{typed}", example: "{example}" })}
        data-wanted={say("choose.wanted", { example: "{example}" })}
        data-dry={say("choose.dry", { example: "{example}" })}
      >
        <div class="questions">
          <Place view={view} />
          <OwnWater view={view} />
          <Field view={view} name="level" />
          <Asked view={view} />
          <Field view={view} name="rod" />
        </div>
        <FishTicks view={view} />
        <GuideShotBox view={view} />
        <p>
          <button type="submit">{say("choose.show")}</button>
        </p>
      </form>
      <p id="choose-said" role="status" />
      <div id="choose-result" tabindex="-1" />
    </article>
  );
}

/** Places of the guide's swims, and any other water. */
function Place({ view: { say, library } }: { readonly view: View }) {
  return (
    <p>
      <label for="choose-place">{say("choose.place")}</label>
      <select id="choose-place" name="place">
        {library.swims.map(({ id, title, spots }) => (
          <optgroup label={title}>
            {spots.map((spot) => (
              <option value={`${id}|${spot.title}`}>{spot.title}</option>
            ))}
          </optgroup>
        ))}
        <option value="">{say("choose.another")}</option>
      </select>
    </p>
  );
}

/** What of another water somebody has to say. */
function OwnWater({ view }: { readonly view: View }) {
  const { say } = view;
  return (
    <fieldset id="choose-water">
      <legend>{say("fit.your-water")}</legend>
      <Select
        id="choose-kind"
        name="water"
        label={say("choose.kind")}
        choices={[
          ["still", say("water.still")],
          ["flowing", say("water.flowing")],
        ]}
      />
      <Field view={view} name="depth" />
      <Field view={view} name="distance" />
      <PaceFields
        view={view}
        id="choose-pace"
        fieldIds={["choose-pace-way", "choose-pace-time"]}
        way={pacedWay(view).way}
      />
    </fieldset>
  );
}

function Asked({ view: { say } }: { readonly view: View }) {
  return (
    <>
      <Select
        id="choose-wind"
        name="wind"
        label={say("choose.wind")}
        choices={windStrengths.map((wind) => [wind, say(`choosing.wind.${wind}`)])}
      />
      <Select
        id="choose-learner"
        name="learner"
        label={say("choose.learner")}
        choices={levels.map((level) => [level, say(`choosing.learner.${level}`)])}
        chosen="next"
      />
    </>
  );
}

/** A figure that is typed, with what a good answer looks like. */
function Field({ view: { say, library, figures }, name }: { readonly view: View; readonly name: FieldName }) {
  const { units } = library.guide;
  const asked = { ...questions[units], ...placeQuestions[units] }[name];
  return (
    <p>
      <label for={`choose-${name}`}>{name === "depth" ? say("try.how-deep") : say(`choose.${name}`)}</label>
      <input
        id={`choose-${name}`}
        name={name}
        placeholder={figures.typed(asked.example)}
        autocomplete="off"
        spellcheck="false"
      />
    </p>
  );
}
type FieldName = "depth" | "distance" | "level" | "rod";

/** Fish that a rig must do for; those of the swim where nothing is ticked. */
function FishTicks({ view: { say, library } }: { readonly view: View }) {
  if (library.species.length === 0) return null;
  return (
    <details>
      <summary>{say("choose.fish")}</summary>
      <p>{say("choose.fish-how")}</p>
      <ul class="shot-box ticks">
        {library.species.map(({ title }) => (
          <li>
            <label>
              <input type="checkbox" name="fish" value={title} /> {title}
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}
