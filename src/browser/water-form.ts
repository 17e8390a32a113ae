import { readWritten } from "../core/as-written.ts";
import { mmPerInch } from "../core/units.ts";
import { questions } from "../model/questions.ts";
import { inFeetAlone, unitChoices } from "../model/unit-choice.ts";
import { makeTypedText } from "../words/number-text.ts";
import { boxForm } from "./box-form.ts";
import { isKeptOnDevice, keepAnswers, keepOnDevice, keptAnswers } from "./kept-answers.ts";
import { paceParts, paceText } from "./pace-fields.ts";
import { partById, partWithin } from "./page-parts.ts";
import type { RigWishes } from "./rig-filter.ts";
import { selectOnTap } from "./select-on-tap.ts";

export const form = partWithin<HTMLFormElement>(document, "form.questions");
const depthField = partById<HTMLInputElement>("water-depth");
const slider = partById<HTMLInputElement>("water-slider");
const unread = partById("water-unread");
const pace = partById<HTMLFieldSetElement>("water-pace");
const paceWay = partById<HTMLInputElement>("pace-way");
const paceTime = partById<HTMLInputElement>("pace-time");
const keep = partById<HTMLInputElement>("keep");
const units = unitChoices.find((choice) => choice === form.dataset.units) ?? "metric first";
const boxPart = form.querySelector<HTMLElement>(".box");
const box = boxPart && boxForm(boxPart);
/** As the page's language writes numbers. */
const typedText = makeTypedText(document.documentElement.lang);
const stepMm = Number(slider.dataset.stepMm);

interface WaterAnswers {
  /** As the list of rigs asks for them: depth in mm, pace in m/s. */
  readonly wishes: RigWishes;
  /** As the reader gave them, for the address of a rig's page. */
  readonly address: URLSearchParams;
  /** Whether something was typed that cannot be read: then there is no answer. */
  readonly unread: boolean;
}

/** Reads the form; what cannot be read is said, with the likely readings to tap. */
export function readAnswers(): WaterAnswers {
  const given = new FormData(form);
  const wishes: Record<string, string> = {};
  for (const [name, value] of given) if (value !== "") wishes[name] = String(value);
  pace.hidden = wishes.water !== "flowing";
  const typed = depthField.value.trim();
  const depth = typed === "" ? undefined : readWritten(typed, questions[units].depth);
  unread.replaceChildren(...(depth === undefined || depth.ok ? [] : problem(depth.meant)));
  if (depth?.ok) {
    wishes.depth = String(Math.round(depth.value));
    slider.value = String(Math.round(depth.value / stepMm));
    slider.setAttribute("aria-valuetext", typed);
  } else delete wishes.depth;
  if (depth && !depth.ok) depthField.setAttribute("aria-invalid", "true");
  else depthField.removeAttribute("aria-invalid");
  const address = new URLSearchParams(typed === "" ? {} : { depth: typed });
  const runs = paceTyped();
  if (runs) {
    wishes.pace = String(runs.ms);
    address.set("pace", runs.text);
  }
  const shot = box ? wishes.box : keptAnswers().box;
  delete wishes.box;
  if (shot) address.set("box", shot);
  keepAnswers({
    depth: typed || undefined,
    pace: runs?.text,
    water: wishes.water,
    catch: wishes.catch,
    box: shot,
  });
  return { wishes, address, unread: depth?.ok === false };
}

/** The pace of running water, where both its figures are there. */
function paceTyped(): { readonly text: string; readonly ms: number } | undefined {
  if (pace.hidden || paceTime.value.trim() === "") return undefined;
  const text = paceText(paceWay.value, paceTime.value);
  const read = readWritten(text, questions[units].pace);
  if (read.ok) paceTime.removeAttribute("aria-invalid");
  else paceTime.setAttribute("aria-invalid", "true");
  return read.ok ? { text, ms: read.value } : undefined;
}

function problem(meant: readonly string[]): Node[] {
  const text = document.createElement("p");
  text.textContent = [form.dataset.unread, ...(meant.length > 0 ? [form.dataset.meant] : [])].join(" ");
  const buttons = meant.map((reading) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = typedText(reading);
    button.addEventListener("click", () => {
      depthField.value = typedText(reading);
      depthField.focus();
      depthField.dispatchEvent(new Event("input", { bubbles: true }));
    });
    return button;
  });
  return [text, ...buttons];
}

/** Depths of the slider as somebody would type them. */
function depthText(mm: number): string {
  if (!inFeetAlone(units)) return typedText(`${Math.round(mm / 10) / 100} m`);
  const inches = Math.round(mm / mmPerInch);
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

/** Puts in what the address has, or else what is kept. */
export function fillIn(): void {
  const asked = new URLSearchParams(location.search);
  const known = asked.size > 0 ? [...asked] : Object.entries(keptAnswers());
  for (const [name, value] of known) {
    const field = form.elements.namedItem(name);
    if (field instanceof HTMLSelectElement && ![...field.options].some((one) => one.value === value))
      continue;
    if (
      field instanceof RadioNodeList ||
      field instanceof HTMLSelectElement ||
      field instanceof HTMLInputElement
    ) {
      field.value = value;
    }
    if (name === "box") box?.write(value);
    if (name === "pace") [paceWay.value, paceTime.value] = paceParts(value);
  }
  keep.checked = isKeptOnDevice();
}

slider.addEventListener("input", () => {
  depthField.value = depthText(Number(slider.value) * stepMm);
  form.dispatchEvent(new Event("input"));
});
selectOnTap(depthField);
keep.addEventListener("change", () => keepOnDevice(keep.checked));
