import { metals } from "../../src/core/tackle/shot.ts";
import { fahrenheitFromCelsius } from "../../src/core/units.ts";
import type { Child } from "../../src/markup/jsx-runtime.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import type { RigEntry } from "../../src/model/library.ts";
import { keyOf } from "../../src/words/words.ts";
import type { View } from "./view.ts";

const units = ["metric first", "metric", "imperial"] as const;

/** The form for a reader's own water, float, rod and shot box; the page's script shows it and does the sums. */
export function FitPart({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, href, library } = view;
  const { rig } = entry;
  const typed = typedFigures(view);
  return (
    <details
      id="fit"
      class="needs-script"
      data-scripts={[sitePaths.asset("guide-data.js"), sitePaths.rigData(rig.id), sitePaths.asset("fit.js")]
        .map(href)
        .join(" ")}
      data-not-loaded={say("fit.not-loaded")}
    >
      <summary>{say("fit.title")}</summary>
      <p>{say("fit.lead")}</p>
      <form id="fit-form" aria-label={say("fit.title")}>
        <fieldset>
          <legend>{say("fit.your-water")}</legend>
          <Field say={say} name="depth" value={typed.depth(rig.depthsMm[0]!)} />
          <Field say={say} name="temperature" value={typed.temperature(rig.conditions.tempC)} />
          {rig.water === "flowing" && (
            <Field say={say} name="pace" value={rig.pacesMs[0] ? view.figures.pace(rig.pacesMs[0]) : ""} />
          )}
        </fieldset>
        <fieldset>
          <legend>{say("fit.your-float")}</legend>
          <Field say={say} name="capacity" value={markingOf(view, rig.float.id)} />
          <Select
            say={say}
            name="capacity-basis"
            chosen={rig.float.capacityBasis}
            options={(["marked", "measured"] as const).map((basis) => [basis, say(`fit.basis-${basis}`)])}
          />
          <Select
            say={say}
            name="capacity-metal"
            chosen={rig.float.capacityMetal}
            options={metals.map((metal) => [metal, say(`metal.${metal}`)])}
          />
          <Field say={say} name="tip" value={`${Math.round(rig.float.tipShowingMm)} mm`} />
        </fieldset>
        <fieldset>
          <legend>{say("fit.your-rod")}</legend>
          <Field say={say} name="rod" value={typed.depth(rig.rodLengthMm)} />
          <Select
            say={say}
            name="units"
            chosen={library.guide.units}
            options={units.map((choice) => [choice, say(`fit.units-${keyOf(choice)}`)])}
          />
        </fieldset>
        <details class="box">
          <summary>{say("fit.your-box")}</summary>
          <p>{say("fit.your-box-lead")}</p>
          <ShotBox view={view} entry={entry} />
        </details>
        <p class="buttons">
          <button type="submit">{say("fit.show")}</button>
          <button type="reset">{say("fit.reset")}</button>
        </p>
      </form>
      <ul id="fit-problems" class="findings" />
      <p id="fit-status" role="status" />
      <p>
        <button type="button" id="fit-card" data-script={href(sitePaths.asset("card.js"))} disabled>
          {say("fit.card")}
        </button>
      </p>
      <p id="fit-card-status" role="status" />
      <div id="fit-result" />
      <p>
        <a id="fit-link" href={href(view.path)}>
          {say("fit.link")}
        </a>
      </p>
    </details>
  );
}

type Say = View["say"];

/** A field of the form: the words of the form have its label. */
type FieldName =
  | "depth"
  | "temperature"
  | "pace"
  | "capacity"
  | "capacity-basis"
  | "capacity-metal"
  | "tip"
  | "rod"
  | "units";

function Field({ say, name, value }: { say: Say; name: FieldName; value: string }) {
  const id = `fit-${name}`;
  return (
    <p>
      <label for={id}>{say(`fit.${name}`)}</label>
      <input id={id} name={name} value={value} autocomplete="off" spellcheck="false" />
    </p>
  );
}

interface SelectProps {
  readonly say: Say;
  readonly name: FieldName;
  readonly chosen: string;
  readonly options: readonly (readonly [value: string, words: string])[];
}

function Select({ say, name, chosen, options }: SelectProps) {
  const id = `fit-${name}`;
  return (
    <p>
      <label for={id}>{say(`fit.${name}`)}</label>
      <select id={id} name={name}>
        <Options chosen={chosen} options={options} />
      </select>
    </p>
  );
}

function Options({ chosen, options }: Pick<SelectProps, "chosen" | "options">): Child {
  return options.map(([value, words]) => (
    <option value={value} selected={value === chosen}>
      {words}
    </option>
  ));
}

function ShotBox({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, library } = view;
  const { rig } = entry;
  const sizes = library.scales.find(({ id }) => id === rig.scaleId)?.sizes ?? [];
  return (
    <table class="shot-box">
      <caption class="unseen">{say("fit.your-box")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("shot.size")}</th>
          <th scope="col">{say("fit.count")}</th>
          <th scope="col">{say("shot.metal")}</th>
        </tr>
      </thead>
      <tbody>
        {sizes.map(({ name }) => {
          const own = rig.tub.find(({ size }) => size === name);
          const plenty = own?.count === Number.POSITIVE_INFINITY;
          return (
            <tr>
              <th scope="row">{name.replaceAll(" ", "\u00a0")}</th>
              <td>
                <input
                  name={`count-${name}`}
                  value={plenty ? "" : String(own?.count ?? 0)}
                  placeholder={plenty ? say("fit.plenty") : undefined}
                  inputmode="numeric"
                  autocomplete="off"
                  aria-label={say("fit.count-of", { size: name })}
                />
              </td>
              <td>
                <select name={`metal-${name}`} aria-label={say("fit.metal-of", { size: name })}>
                  <Options
                    chosen={own?.metal ?? "tin"}
                    options={metals.map((metal) => [metal, say(`metal.${metal}`)])}
                  />
                </select>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function markingOf({ library }: View, floatId: string): string {
  return library.floats.find(({ float }) => float.id === floatId)?.marking ?? "";
}

/** Figures as a reader may type them, in the guide's first system of units. */
function typedFigures({ figures, library }: View) {
  const imperial = library.guide.units === "imperial";
  return {
    depth: (mm: number) => figures.shortDepth(mm),
    temperature: (c: number) =>
      imperial ? `${Math.round(fahrenheitFromCelsius(c))} F` : `${Math.round(c)} C`,
  };
}
