import { sitePaths } from "../../src/model/addresses.ts";
import type { Library, RigEntry } from "../../src/model/library.ts";
import { keyOf } from "../../src/words/words.ts";
import { kindsCaught } from "./catches.ts";
import type { View } from "./view.ts";

/** Slider of a water that nobody has said anything of yet [mm]: from very shallow to what a sliding float is for. */
const slider = { leastMm: 400, mostMm: 6000, stepMm: 50, imperialStepMm: 50.8, firstMm: 1500 };

/**
 * What water it is, and what is wanted there; the page's script makes the rig for it the answer. On the list of all
 * rigs there are more questions, and the list is the answer.
 */
export function RigQuestions({ view }: { view: View }) {
  const { say, href, library, path } = view;
  const fish = unique(library.rigs.flatMap((entry) => kindsCaught(library, entry))).sort();
  const patterns = unique(library.rigs.map(({ rig }) => rig.pattern.kind));
  const isList = path === sitePaths.rigs;
  return (
    <form
      class={isList ? "questions needs-script" : "questions"}
      method="get"
      action={href(sitePaths.rigs)}
      aria-label={say("filter.name")}
      data-units={library.guide.units}
      data-unread={say("filter.unread", depthRange(view))}
      data-meant={say("filter.meant")}
    >
      <fieldset class="either">
        <legend>{say("filter.water")}</legend>
        {isList && <Either name="water" value="" label={say("filter.any")} chosen />}
        <Either name="water" value="still" label={say("water.still")} chosen={!isList} />
        <Either name="water" value="flowing" label={say("water.flowing")} />
      </fieldset>
      <DepthQuestion view={view} />
      <Pace view={view} />
      <Choice
        name="catch"
        label={say("filter.catch")}
        any={say("filter.any")}
        options={fish.map((kind) => [kind, kind])}
      />
      {isList && (
        <>
          <Choice
            name="method"
            label={say("filter.method")}
            any={say("filter.any")}
            options={patterns.map((kind) => [kind, say(`pattern.${keyOf(kind)}`)])}
          />
          <Choice
            name="level"
            label={say("filter.level")}
            any={say("filter.any")}
            options={(["first", "beginner", "next"] as const).map((level) => [level, say(`level.${level}`)])}
          />
        </>
      )}
      <button type="submit">{isList ? say("filter.show") : say("filter.show-rig")}</button>
      <p class="keep needs-script">
        <label>
          <input type="checkbox" id="keep" /> {say("filter.keep")}
        </label>
      </p>
    </form>
  );
}

function DepthQuestion({ view: { say, library } }: { view: View }) {
  const imperial = library.guide.units === "imperial";
  const stepMm = imperial ? slider.imperialStepMm : slider.stepMm;
  const steps = (mm: number) => String(Math.round(mm / stepMm));
  return (
    <div class="depth-question">
      <label for="water-depth">{say("filter.depth")}</label>
      <input
        id="water-depth"
        name="depth"
        placeholder={imperial ? "5 ft 6 in" : "1.7 m"}
        autocomplete="off"
        spellcheck="false"
        aria-describedby="water-unread"
      />
      <input
        id="water-slider"
        class="needs-script"
        type="range"
        form="no-form"
        aria-label={say("fit.slider")}
        min={steps(slider.leastMm)}
        max={steps(slider.mostMm)}
        value={steps(slider.firstMm)}
        data-step-mm={String(stepMm)}
      />
      <div id="water-unread" role="status" />
    </div>
  );
}

/** How fast it runs, by a leaf that drifts past a length paced out on the bank. */
function Pace({ view: { say, library } }: { view: View }) {
  const imperial = library.guide.units === "imperial";
  return (
    <fieldset id="water-pace" class="pace" hidden>
      <legend>{say("filter.pace")}</legend>
      <label for="pace-way">{say("filter.pace-way")}</label>
      <input id="pace-way" value={imperial ? "10 yd" : "10 m"} autocomplete="off" />
      <label for="pace-time">{say("filter.pace-time")}</label>
      <input id="pace-time" inputmode="numeric" autocomplete="off" />
    </fieldset>
  );
}

function Either({
  name,
  value,
  label,
  chosen,
}: {
  name: string;
  value: string;
  label: string;
  chosen?: boolean;
}) {
  return (
    <label>
      <input type="radio" name={name} value={value} checked={chosen} /> {label}
    </label>
  );
}

function depthRange({ figures, library }: View) {
  return {
    least: figures.depth(200),
    most: figures.depth(12_000),
    example: library.guide.units === "imperial" ? "5 ft 6 in" : "1.7 m",
  };
}

/** The rigs among which the page's script finds the answer. */
export function RigAnswers({ view: { say, href, library } }: { view: View }) {
  return (
    <div class="needs-script">
      <p
        id="water-found"
        role="status"
        data-first={say("filter.first", { rig: "{rig}" })}
        data-nearest={say("filter.not-quite")}
      />
      <p id="water-also" hidden>
        {say("filter.also")}
      </p>
      <ul id="water-rigs" class="files" hidden>
        {library.rigs.map((entry) => (
          <li hidden {...askedOf(library, entry)}>
            <a href={href(sitePaths.rig(entry.id))}>{entry.title}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What the questions ask of a rig, for the page's script. */
export function askedOf(library: Library, entry: RigEntry): Record<`data-${string}`, string> {
  const { rig } = entry;
  return {
    "data-water": rig.water,
    "data-depths": rig.depthsMm.map((depth) => Math.round(depth)).join(" "),
    "data-paces": rig.pacesMs.join(" "),
    "data-method": rig.pattern.kind,
    "data-level": entry.level,
    "data-catch": kindsCaught(library, entry).join("|"),
  };
}

interface ChoiceProps {
  readonly name: string;
  readonly label: string;
  readonly any: string;
  readonly options: readonly (readonly [value: string, words: string])[];
}

function Choice({ name, label, any, options }: ChoiceProps) {
  const id = `choose-${name}`;
  return (
    <p>
      <label for={id}>{label}</label>
      <select id={id} name={name}>
        <option value="">{any}</option>
        {options.map(([value, words]) => (
          <option value={value}>{words}</option>
        ))}
      </select>
    </p>
  );
}

function unique<T>(values: readonly T[]): T[] {
  return [...new Set(values)];
}
