import type { Child } from "../../src/markup/jsx-runtime.ts";
import { depthStepMm } from "../../src/model/questions.ts";
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
