import { printPaths } from "../../src/model/addresses.ts";
import { exampleDistanceMm, hazardKinds } from "../../src/model/swim.ts";
import { keyOf } from "../../src/words/words.ts";
import { PageHead } from "./page-head.tsx";
import type { PageKey, Say } from "./page-words.ts";
import { printableAt, type View } from "./view.ts";

type FieldName = PageKey extends infer Key
  ? Key extends `soundings.field.${infer Name}`
    ? Name
    : never
  : never;

const rowCounts = { soundings: 12, spots: 4, hazards: 4 };
const rows = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

/** The soundings page as a form: what is typed becomes the text of a swim's file. */
export function SoundingsPage({ view }: { view: View }) {
  const { say, href } = view;
  const sheet = printableAt(view, printPaths.soundings);
  const field = (name: FieldName, type = "text") => <Field say={say} name={name} type={type} />;
  return (
    <article class="prose">
      <PageHead title={say("soundings.title")} lead={say("soundings.lead")} />
      {sheet && (
        <p>
          <a href={href(sheet.path)}>{say("soundings.to-print")}</a>
        </p>
      )}
      <form class="soundings">
        <h2>{say("soundings.where")}</h2>
        <div class="questions">
          {field("title")}
          {field("summary")}
          <p>
            <label for="swim-water">{say("soundings.field.water")}</label>
            <select id="swim-water" name="water">
              <option value="still">{say("soundings.still")}</option>
              <option value="flowing">{say("soundings.flowing")}</option>
            </select>
          </p>
          {field("pace")}
          {field("sounded", "date")}
          {field("level-mark")}
          {field("road")}
          {field("way")}
          {field("grid-reference")}
          {field("places", "number")}
          {field("fish")}
          <p>
            <label for="swim-rules">{say("soundings.field.rules")}</label>
            <textarea id="swim-rules" name="rules" rows="2" />
          </p>
        </div>
        <h2>{say("soundings.depths")}</h2>
        <p>{say("soundings.how", { example: view.figures.shortDepth(exampleDistanceMm) })}</p>
        {field("line")}
        <RowTable say={say} count={rowCounts.soundings} columns={["from-bank", "depth"]} />
        <h2>{say("soundings.spots")}</h2>
        <RowTable say={say} count={rowCounts.spots} columns={["spot", "spot-from-bank"]} />
        <h2>{say("soundings.hazards")}</h2>
        <Hazards view={view} />
        <p>
          <button type="submit">{say("soundings.make")}</button>
        </p>
      </form>
      <Result say={say} />
      <noscript>
        <p>{say("soundings.no-script")}</p>
      </noscript>
    </article>
  );
}

/** What is wrong with what was typed, or the file that comes of it. */
function Result({ say }: { say: Say }) {
  return (
    <>
      <ul
        id="swim-problems"
        tabindex="-1"
        hidden
        data-missing={say("soundings.missing", { field: "{field}", typed: "{typed}" })}
        data-unread={say("soundings.unread", { field: "{field}", typed: "{typed}" })}
        data-twice={say("soundings.twice", { typed: "{typed}" })}
        data-few={say("soundings.few")}
        data-beyond={say("soundings.beyond", { typed: "{typed}" })}
      />
      <div id="swim-result" hidden>
        <h2>{say("soundings.file")}</h2>
        <p>{say("soundings.save-how")}</p>
        <p>
          <label for="swim-text">{say("soundings.text")}</label>
          <textarea id="swim-text" rows="16" readonly />
        </p>
        <p>
          <a id="swim-save" class="button" href="#swim-text" download="our-swim.yaml">
            {say("soundings.save")}
          </a>
        </p>
      </div>
    </>
  );
}

function Field({ say, name, type }: { say: Say; name: FieldName; type: string }) {
  return (
    <p>
      <label for={`swim-${name}`} data-name={name}>
        {say(`soundings.field.${name}`)}
      </label>
      <input id={`swim-${name}`} name={name} type={type} autocomplete="off" />
    </p>
  );
}

function RowTable({ say, count, columns }: { say: Say; count: number; columns: readonly FieldName[] }) {
  return (
    <table>
      <thead>
        <tr>
          {columns.map((name) => (
            <th scope="col" data-name={name}>
              {say(`soundings.field.${name}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows(count).map((number) => (
          <tr>
            {columns.map((name) => (
              <TextCell say={say} name={name} number={number} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function TextCell({ say, name, number }: { say: Say; name: FieldName; number: number }) {
  const label = say("soundings.row", { field: say(`soundings.field.${name}`), number });
  return (
    <td>
      <input name={name} autocomplete="off" aria-label={label} />
    </td>
  );
}

function Hazards({ view: { say } }: { view: View }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" data-name="hazard">
            {say("soundings.field.hazard")}
          </th>
          <th scope="col">{say("soundings.field.hazard-where")}</th>
          <th scope="col">{say("soundings.field.hazard-do")}</th>
        </tr>
      </thead>
      <tbody>
        {rows(rowCounts.hazards).map((number) => (
          <tr>
            <td>
              <select
                name="hazard"
                aria-label={say("soundings.row", { field: say("soundings.field.hazard"), number })}
              >
                {hazardKinds.map((kind) => (
                  <option value={kind}>{say(`swim.hazard.${keyOf(kind)}`)}</option>
                ))}
              </select>
            </td>
            {(["hazard-where", "hazard-do"] as const).map((name) => (
              <TextCell say={say} name={name} number={number} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
