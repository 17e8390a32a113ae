import { mmPerYard } from "../../src/core/units.ts";
import type { Child } from "../../src/markup/jsx-runtime.ts";
import { depthStepMm } from "../../src/model/questions.ts";
import { inFeetAlone } from "../../src/model/unit-choice.ts";
import type { View } from "./view.ts";

/** What may be chosen: what is sent, and what it is called. */
export type Choices = readonly (readonly [value: string, words: string])[];

interface SelectProps {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly choices: Choices;
  readonly chosen?: string;
}

export function Select({ id, name, label, choices, chosen }: SelectProps) {
  return (
    <p>
      <label for={id}>{label}</label>
      <select id={id} name={name}>
        <Options choices={choices} chosen={chosen} />
      </select>
    </p>
  );
}

export function Options({ choices, chosen }: Pick<SelectProps, "choices" | "chosen">): Child {
  return choices.map(([value, words]) => (
    <option value={value} selected={value === chosen}>
      {words}
    </option>
  ));
}

/** One of a few answers, to tap. */
export function Either({
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

interface DepthSliderProps {
  readonly view: View;
  readonly id: string;
  readonly class?: string;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly atMm: number;
}

/** A slider of depths that no form sends: the field beside it has the figure. */
export function DepthSlider({ view, leastMm, mostMm, atMm, ...named }: DepthSliderProps) {
  const stepMm = depthStepMm[view.library.guide.units];
  const steps = (mm: number) => String(Math.round(mm / stepMm));
  return (
    <input
      {...named}
      type="range"
      form="no-form"
      aria-label={view.say("fit.slider")}
      min={steps(leastMm)}
      max={steps(mostMm)}
      value={steps(atMm)}
      data-step-mm={String(stepMm)}
    />
  );
}

interface PaceProps {
  readonly view: View;
  readonly id: string;
  /** Of the two fields: the way paced out, and the seconds. */
  readonly fieldIds: readonly [way: string, time: string];
  readonly way: string;
  readonly time?: string;
  readonly hidden?: boolean;
  readonly children?: Child;
}

/** How fast it runs, by stick and stride: a leaf that drifts past a length paced out on the bank. */
export function PaceFields({ view: { say }, id, fieldIds, way, time, hidden, children }: PaceProps) {
  const [wayId, timeId] = fieldIds;
  return (
    <fieldset id={id} class="pace" hidden={hidden}>
      <legend>{say("filter.pace")}</legend>
      <label for={wayId}>{say("filter.pace-way")}</label>
      <input id={wayId} value={way} autocomplete="off" spellcheck="false" />
      <label for={timeId}>{say("filter.pace-time")}</label>
      <input id={timeId} value={time} inputmode="numeric" autocomplete="off" />
      {children}
    </fieldset>
  );
}

/** Ways over which something is timed, in the reader's units: ten paces of a float, one for what sinks. */
export function pacedWay({ library }: View) {
  return inFeetAlone(library.guide.units)
    ? ({ way: "10 yd", lengthM: mmPerYard / 100, one: "1 yd", oneM: mmPerYard / 1000 } as const)
    : ({ way: "10 m", lengthM: 10, one: "1 m", oneM: 1 } as const);
}
