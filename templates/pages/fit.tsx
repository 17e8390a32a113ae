import { first, withId } from "../../src/core/lists.ts";
import { metals } from "../../src/core/tackle/shot.ts";
import { fahrenheitFromCelsius } from "../../src/core/units.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import type { RigEntry } from "../../src/model/library.ts";
import { inFeetAlone, unitChoices } from "../../src/model/unit-choice.ts";
import { keyOf } from "../../src/words/words.ts";
import { type Choices, DepthSlider, PaceFields, pacedWay, Select } from "./fields.tsx";
import type { Say } from "./page-words.ts";
import { ShotBox } from "./shot-box.tsx";
import type { View } from "./view.ts";

/** How far beyond the rig's own depths the slider goes: the field takes more. */
const sliderReach = { least: 0.5, most: 1.5 };

/** The depth of the reader's water as a field and a slider in one; it stays in reach while the page moves. */
export function WaterBar({ view, entry }: { view: View; entry: RigEntry }) {
  const { say } = view;
  const { depthsMm } = entry.rig;
  return (
    <div class="water-bar needs-script">
      <label for="fit-depth">{say("fit.depth")}</label>
      <input
        id="fit-depth"
        name="depth"
        form="fit-form"
        value={typedDepth(view, first(depthsMm))}
        autocomplete="off"
        spellcheck="false"
        aria-describedby="fit-status"
      />
      <DepthSlider
        view={view}
        id="fit-slider"
        leastMm={Math.min(...depthsMm) * sliderReach.least}
        mostMm={Math.max(...depthsMm) * sliderReach.most}
        atMm={first(depthsMm)}
      />
      <output id="fit-brief" for="fit-depth fit-slider" aria-live="off" />
    </div>
  );
}

/** The pace of the reader's own water, at the top of a rig for running water. */
export function OwnPace({ view, entry: { rig } }: { view: View; entry: RigEntry }) {
  const [paceMs] = rig.pacesMs;
  if (rig.water !== "flowing" || !paceMs) return null;
  const { way, lengthM } = pacedWay(view);
  const time = String(Math.round(lengthM / paceMs));
  return (
    <div class="needs-script">
      <PaceFields
        view={view}
        id="fit-own-pace"
        fieldIds={["fit-pace-way", "fit-pace-time"]}
        way={way}
        time={time}
      >
        <input
          id="fit-pace"
          name="pace"
          form="fit-form"
          value={`${way} in ${time} s`}
          aria-label={view.say("fit.pace")}
          hidden
        />
      </PaceFields>
    </div>
  );
}

/** Where the page's script shows the rig made for the reader's water, and its card. */
export function FitAnswer({ view: { say, href } }: { view: View }) {
  return (
    <div
      id="fit-answer"
      class="needs-script"
      data-working={say("fit.working")}
      data-not-loaded={say("fit.not-loaded")}
    >
      <p id="fit-status" />
      <p id="fit-said" class="unseen" role="status" />
      <ul id="fit-problems" class="findings" />
      <p class="buttons" id="fit-buttons" hidden>
        <button type="button" id="fit-card" data-script={href(sitePaths.asset("card.js"))} disabled>
          {say("fit.card")}
        </button>
        <button type="button" id="fit-card-save" hidden>
          {say("fit.card-save")}
        </button>
      </p>
      <p id="fit-card-status" role="status" />
      <div id="fit-card-shown" />
      <div id="fit-result" />
    </div>
  );
}

/** Addresses of a script that needs a rig's figures, after those that it waits for; each parted from the next by a space. */
export const rigScripts = ({ href }: View, rigId: string, name: "fit.js" | "try.js") =>
  [sitePaths.asset("guide-data.js"), sitePaths.rigData(rigId), sitePaths.asset(name)].map(href).join(" ");

/** The form for a reader's own float, rod and shot box; the page's script does the sums. */
export function FitPart({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, href, library } = view;
  const { rig } = entry;
  const imperial = inFeetAlone(library.guide.units);
  return (
    <details
      id="fit"
      class="needs-script"
      data-scripts={rigScripts(view, rig.id, "fit.js")}
      data-worker={href(sitePaths.asset("sums-worker.js"))}
    >
      <summary>{say("fit.title")}</summary>
      <p>{say("fit.lead")}</p>
      <form id="fit-form" aria-label={say("fit.form-name")}>
        <fieldset>
          <legend>{say("fit.your-water")}</legend>
          <Field say={say} name="temperature" value={typedTemperature(rig.conditions.tempC, imperial)} />
        </fieldset>
        <fieldset>
          <legend>{say("fit.your-float")}</legend>
          <Field say={say} name="capacity" value={withId(library.floats, rig.float.id).marking} />
          <FitSelect
            say={say}
            name="capacity-basis"
            chosen={rig.float.capacityBasis}
            choices={(["marked", "measured"] as const).map((basis) => [basis, say(`fit.basis-${basis}`)])}
          />
          <FitSelect
            say={say}
            name="capacity-metal"
            chosen={rig.float.capacityMetal}
            choices={metals.map((metal) => [metal, say(`metal.${metal}`)])}
          />
          <Field say={say} name="tip" value={view.figures.small(rig.float.tipShowingMm)} />
        </fieldset>
        <fieldset>
          <legend>{say("fit.your-rod")}</legend>
          <Field say={say} name="rod" value={typedDepth(view, rig.rodLengthMm)} />
          <FitSelect
            say={say}
            name="units"
            chosen={library.guide.units}
            choices={unitChoices.map((choice) => [choice, say(`fit.units-${keyOf(choice)}`)])}
          />
        </fieldset>
        <ShotBox view={view} scaleId={rig.scaleId} tub={rig.tub} full />
        <p class="buttons">
          <button type="submit">{say("fit.show")}</button>
          <button type="reset">{say("fit.reset")}</button>
        </p>
      </form>
      <details id="fit-share">
        <summary>{say("fit.share")}</summary>
        <p>
          <a id="fit-link" href={href(view.path)}>
            {say("fit.link")}
          </a>
        </p>
        <div id="fit-code" />
      </details>
    </details>
  );
}

/** A field of the form: the words of the form have its label. */
type FieldName = "temperature" | "capacity" | "capacity-basis" | "capacity-metal" | "tip" | "rod" | "units";

function Field({ say, name, value }: { say: Say; name: FieldName; value: string }) {
  const id = `fit-${name}`;
  return (
    <p>
      <label for={id}>{say(`fit.${name}`)}</label>
      <input id={id} name={name} value={value} autocomplete="off" spellcheck="false" />
    </p>
  );
}

interface FitSelectProps {
  readonly say: Say;
  readonly name: FieldName;
  readonly chosen: string;
  readonly choices: Choices;
}

function FitSelect({ say, name, chosen, choices }: FitSelectProps) {
  return (
    <Select id={`fit-${name}`} name={name} label={say(`fit.${name}`)} chosen={chosen} choices={choices} />
  );
}

/** Figures as a reader may type them, in the guide's first system of units. */
export function typedDepth({ figures }: View, mm: number): string {
  return figures.shortDepth(mm);
}

function typedTemperature(c: number, imperial: boolean): string {
  return imperial ? `${Math.round(fahrenheitFromCelsius(c))} F` : `${Math.round(c)} C`;
}
