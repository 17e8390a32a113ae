import { type Chosen, ChosenRigs } from "../../templates/pages/chosen.tsx";
import { withId } from "../core/lists.ts";
import type { Conditions } from "../model/choosing.ts";
import type { ChoosingData, ChosenSwim } from "../model/choosing-data.ts";
import { conditionsText, ruledOutText, spokenForText } from "../words/choosing-text.ts";
import { makeFigures } from "../words/figures.ts";
import { besideBy } from "./beside.ts";
import { boxForm } from "./box-form.ts";
import { type ChooseProblem, chooseAsked } from "./choose-form.ts";
import { guide, say, scaleOf, words } from "./fit-data.ts";
import { paceParts, paceText } from "./pace-fields.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { listedRigs } from "./rig-list.ts";
import { siteAddress } from "./site-address.ts";
import type { Told } from "./sums.ts";
import { toDom } from "./to-dom.ts";

/** Set by the data script, which stands before this one. A count that JSON cannot hold came as null. */
declare const dotdownChoosing: ChoosingData;
const data = countedAnew(dotdownChoosing);

/** The page that says which rigs suit a water. What is asked stands in the address, so that a coach can send it. */
const form = partById("choose-form") as HTMLFormElement;
const said = partById("choose-said");
const result = partById("choose-result");
const place = partById("choose-place") as HTMLSelectElement;
const kind = partById("choose-kind") as HTMLSelectElement;
const way = partById("choose-pace-way") as HTMLInputElement;
const time = partById("choose-pace-time") as HTMLInputElement;
const boxPart = form.querySelector<HTMLElement>(".box");
const box = boxPart && boxForm(boxPart);
const sums = besideBy(dataOf(form, "worker"), notLoaded, 250);
const figures = makeFigures(guide.units, words, guide.language);
const kit = { words, figures };

function countedAnew(read: ChoosingData): ChoosingData {
  const counted = (tub: ChoosingData["tub"]) =>
    tub.map((shot) => ({ ...shot, count: shot.count ?? Number.POSITIVE_INFINITY }));
  const shelved = read.shelf.rigs.map((entry) => ({
    ...entry,
    rig: { ...entry.rig, tub: counted(entry.rig.tub) },
  }));
  return { ...read, tub: counted(read.tub), shelf: { ...read.shelf, rigs: shelved } };
}

/** What the form says; fields of another water only where it is asked of. */
function answers(): URLSearchParams {
  const given = new URLSearchParams();
  for (const [name, value] of new FormData(form)) if (value !== "") given.append(name, String(value));
  const isOwn = place.value === "";
  for (const name of isOwn ? ["level"] : ["water", "depth", "distance"]) given.delete(name);
  if (isOwn && kind.value === "flowing" && time.value.trim() !== "")
    given.set("pace", paceText(way.value, time.value));
  return given;
}

function showFields(): void {
  const isOwn = place.value === "";
  partById("choose-water").hidden = !isOwn;
  partWithin<HTMLElement>(form, "p:has(> #choose-level)").hidden = isOwn;
  partById("choose-pace").hidden = kind.value !== "flowing";
}

function refit(): void {
  showFields();
  const given = answers();
  history.replaceState(null, "", `${location.pathname}?${given}${location.hash}`);
  const by = { swims: data.swims, units: guide.units, scale: scaleOf(guide), tub: data.tub };
  const asked = chooseAsked(given, by);
  for (const field of form.querySelectorAll("input")) field.removeAttribute("aria-invalid");
  if ("problems" in asked) {
    sums.drop();
    result.replaceChildren();
    result.removeAttribute("aria-busy");
    said.textContent = asked.problems.map(problemText).join(" ");
    return;
  }
  const { conditions, swim, spot } = asked;
  result.setAttribute("aria-busy", "true");
  sums.ask("choose", { rules: data.rules, conditions, shelf: data.shelf }, (told, { isLast }) => {
    if (!isLast) return;
    result.removeAttribute("aria-busy");
    const chosen = chosenOf(told, conditions, swim, spot, given);
    result.replaceChildren(...toDom(ChosenRigs({ say, chosen })));
    said.textContent = say("choose.done", { suit: told.offered.length, out: told.ruledOut.length });
  });
}

function notLoaded(): void {
  result.removeAttribute("aria-busy");
  said.textContent = say("fit.not-loaded");
}

function problemText({ field, problem, typed, example }: ChooseProblem): string {
  const input = document.getElementById(field === "pace" ? "choose-pace-time" : `choose-${field}`);
  input?.setAttribute("aria-invalid", "true");
  const label = input ? `label[for="${input.id}"]` : ".box summary";
  const name = form.querySelector(label)?.textContent ?? "";
  const why = dataOf(form, problem).replace("{typed}", typed).replace("{example}", figures.typed(example));
  return `${name}: ${why}`;
}

function chosenOf(
  { offered, ruledOut }: Told<"choose">,
  conditions: Conditions,
  swim: ChosenSwim | undefined,
  spot: string | undefined,
  given: URLSearchParams,
): Chosen {
  const { depthMm, fromBankMm } = conditions;
  const [depth, distance] = [figures.depth(depthMm), figures.depth(fromBankMm)];
  const titleOf = (id: string) => withId(data.shelf.rigs, id).title;
  return {
    title: words("choosing.place", { spot: spot ?? say("choose.another"), distance, depth }),
    asked: conditionsText(conditions, kit),
    hazards: swim?.hazards ?? [],
    offered: offered.map(({ id, points, because, floatToHookMm }) => ({
      title: titleOf(id),
      address: rigAddress(id, conditions, given),
      points,
      why: because.map((by) => spokenForText(by, kit)).join("; "),
      set: figures.gap(figures.settingMm({ depthMm, floatToHookMm })),
    })),
    ruledOut: ruledOut.map(({ id, because }) => ({
      title: titleOf(id),
      why: because.map((by) => ruledOutText(by, kit)).join(" "),
    })),
  };
}

/** A rig's page for just this water, where its card is to be had. */
function rigAddress(id: string, { depthMm, paceMs }: Conditions, given: URLSearchParams): string {
  const query = new URLSearchParams({ depth: figures.shortDepth(depthMm) });
  if (paceMs !== undefined)
    query.set("pace", given.get("pace") ?? `10 m in ${Math.round(100 / paceMs) / 10} s`);
  for (const name of ["rod", "box"]) {
    const typed = given.get(name);
    if (typed) query.set(name, typed);
  }
  return `${new URL(withId(listedRigs(), id).page, siteAddress).href}?${query}`;
}

function fillIn(): void {
  const asked = new URLSearchParams(location.search);
  for (const [name, value] of asked) {
    const field = form.elements.namedItem(name);
    if (name === "box") box?.write(value);
    else if (name === "pace") [way.value, time.value] = paceParts(value);
    else if (field instanceof HTMLSelectElement) {
      if ([...field.options].some((one) => one.value === value)) field.value = value;
    } else if (field instanceof HTMLInputElement && field.type !== "checkbox") field.value = value;
  }
  for (const tick of form.querySelectorAll<HTMLInputElement>("[name=fish]"))
    tick.checked = asked.getAll("fish").includes(tick.value);
  if (asked.size > 0 && !asked.has("place")) place.value = "";
}

form.addEventListener("input", refit);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  refit();
  result.scrollIntoView();
});
fillIn();
refit();
