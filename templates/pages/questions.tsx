import { sitePaths } from "../../src/model/addresses.ts";
import { type Library, levels, type RigEntry } from "../../src/model/library.ts";
import { questions } from "../../src/model/questions.ts";
import { keyOf } from "../../src/words/words.ts";
import { kindsCaught } from "./catches.ts";
import { type Choices, DepthSlider, Either, PaceFields, pacedWay, Select } from "./fields.tsx";
import { GuideShotBox } from "./shot-box.tsx";
import type { View } from "./view.ts";

/** Slider of a water that nobody has said anything of yet [mm]: from very shallow to what a sliding float is for. */
const slider = { leastMm: 400, mostMm: 6000, atMm: 1500 };

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
      <WaterKind view={view} isList={isList} />
      <DepthQuestion view={view} />
      <PaceFields
        view={view}
        id="water-pace"
        fieldIds={["pace-way", "pace-time"]}
        way={pacedWay(view).way}
        hidden
      />
      <Wish
        name="catch"
        label={say("filter.catch")}
        any={say("filter.any")}
        choices={fish.map((kind) => [kind, kind])}
      />
      {isList && (
        <>
          <Wish
            name="method"
            label={say("filter.method")}
            any={say("filter.any")}
            choices={patterns.map((kind) => [kind, say(`pattern.${keyOf(kind)}`)])}
          />
          <Wish
            name="level"
            label={say("filter.level")}
            any={say("filter.any")}
            choices={levels.map((level) => [level, say(`level.${level}`)])}
          />
        </>
      )}
      {!isList && <GuideShotBox view={view} />}
      <button type="submit">{isList ? say("filter.show") : say("filter.show-rig")}</button>
      <p class="keep needs-script">
        <label>
          <input type="checkbox" id="keep" /> {say("filter.keep")}
        </label>
      </p>
    </form>
  );
}

function WaterKind({ view: { say }, isList }: { view: View; isList: boolean }) {
  return (
    <fieldset class="either">
      <legend>{say("filter.water")}</legend>
      {isList && <Either name="water" value="" label={say("filter.any")} chosen />}
      <Either name="water" value="still" label={say("water.still")} chosen={!isList} />
      <Either name="water" value="flowing" label={say("water.flowing")} />
    </fieldset>
  );
}

function DepthQuestion({ view }: { view: View }) {
  const { say, library } = view;
  return (
    <div class="depth-question">
      <label for="water-depth">{say("filter.depth")}</label>
      <input
        id="water-depth"
        name="depth"
        placeholder={view.figures.typed(questions[library.guide.units].depth.example)}
        autocomplete="off"
        spellcheck="false"
        aria-describedby="water-unread"
      />
      <DepthSlider view={view} id="water-slider" class="needs-script" {...slider} />
      <div id="water-unread" role="status" />
    </div>
  );
}

function depthRange({ figures, library }: View) {
  const { least, most, example } = questions[library.guide.units].depth;
  return { least: figures.depth(least), most: figures.depth(most), example: figures.typed(example) };
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

interface WishProps {
  readonly name: string;
  readonly label: string;
  readonly any: string;
  readonly choices: Choices;
}

/** A choice that may be left open. */
function Wish({ name, label, any, choices }: WishProps) {
  return <Select id={`choose-${name}`} name={name} label={label} choices={[["", any], ...choices]} />;
}

function unique<T>(values: readonly T[]): T[] {
  return [...new Set(values)];
}
