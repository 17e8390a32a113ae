import { DepthPart } from "../../templates/pages/depth.tsx";
import { pageWords } from "../../templates/pages/page-words.ts";
import { hangPicture, rigPicture, sinkPicture } from "../../templates/pages/rig-picture.ts";
import type { Voice } from "../../templates/pages/view.ts";
import { first, withId } from "../core/lists.ts";
import type { ShotScale } from "../core/tackle/shot.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { measureText } from "../drawing/labels/font-metrics.ts";
import type { AskedQuestion } from "../model/questions.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { type UnitChoice, unitChoices } from "../model/unit-choice.ts";
import type { WordTree } from "../model/word-tree.ts";
import { solveInWater } from "../solve/in-water.ts";
import { solveRig } from "../solve/solve-rig.ts";
import { type Figures, makeFigures } from "../words/figures.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { waterText } from "../words/water-text.ts";
import { makeWords } from "../words/words.ts";
import type { MakeCard } from "./card.ts";
import { type FieldProblem, fitRig } from "./fit-rig.ts";
import { keepAnswers, keptAnswers } from "./kept-answers.ts";
import { loadScript } from "./load-script.ts";
import { dataOf, partById } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/** Set by the data scripts, which stand before this one. A count that JSON cannot hold came as null. */
declare const dotdownGuide: {
  readonly words: WordTree;
  readonly guide: Parameters<MakeCard>[1];
  readonly scales: readonly ShotScale[];
};
declare const dotdownRig: Rig;
/** Set by `card.js`, which is loaded when the first card is asked for. */
declare const dotdownCard: MakeCard | undefined;

const form = document.getElementById("fit-form") as HTMLFormElement;
const result = partById("fit-result");
const problemList = partById("fit-problems");
const status = partById("fit-status");
const said = partById("fit-said");
const buttons = partById("fit-buttons");
const slider = document.getElementById("fit-slider") as HTMLInputElement;
const cardButton = document.getElementById("fit-card") as HTMLButtonElement;
const cardStatus = partById("fit-card-status");
const link = document.getElementById("fit-link") as HTMLAnchorElement;
const words = makeWords(dotdownGuide.words);
const say = pageWords(words);
const rig: Rig = {
  ...dotdownRig,
  tub: dotdownRig.tub.map((shot) => ({ ...shot, count: shot.count ?? Number.POSITIVE_INFINITY })),
};
const scale = withId(dotdownGuide.scales, rig.scaleId);
const fields = [...form.elements].filter(
  (field): field is HTMLInputElement | HTMLSelectElement => "name" in field && field.name !== "",
);
const depthField = fields.find(({ name }) => name === "depth") as HTMLInputElement;
const sliderStepMm = Number(slider.dataset.stepMm);

/** What the tables show, for the card; nothing where there are none. */
let shown: { readonly solved: SolvedRig; readonly kit: DrawingKit } | undefined;

const typingPauseMs = 250;
const announcePauseMs = 700;
let announceTimer: ReturnType<typeof setTimeout> | undefined;
/** What is shorter is told as a tip is. */
const leastDepthMm = 150;
let inWaterTimer: ReturnType<typeof setTimeout> | undefined;

function refit(): void {
  const changed = new Map(
    fields.filter((one) => one.value !== ownValue(one)).map(({ name, value }) => [name, value]),
  );
  keepInAddress(changed);
  const units = unitsChosen();
  const figures = makeFigures(units, words, dotdownGuide.guide.language);
  const kit = { words, figures, measure: measureText };
  const voice: Voice = {
    figures,
    say,
    reason: (finding) => reasonText(finding, words, figures),
    told: rigTexts({ words, figures }),
    inWater: (solved, depth) => waterText(solved, depth, kit),
    drawRig: (solved, depth, idPrefix) => rigPicture(solved, depth, kit, idPrefix),
    drawSink: (solved, depth, idPrefix) => sinkPicture(solved, depth, kit, idPrefix),
    drawHang: (solved, depth, idPrefix) => hangPicture(solved, depth, kit, idPrefix),
  };
  clearTimeout(inWaterTimer);
  cardStatus.textContent = "";
  const { rig: fitted, problems } = fitRig(rig, scale, changed, units);
  showProblems(problems, figures);
  if (problems.length > 0) {
    showNothing(say("fit.unread"));
    return;
  }
  const solved = solveRig(fitted);
  const depth = solved.ok ? solved.value.depths[0] : undefined;
  if (!solved.ok || !depth) {
    showNothing([say("fit.failed"), ...solved.findings.map(voice.reason)].join(" "));
    return;
  }
  shown = { solved: solved.value, kit };
  cardButton.disabled = false;
  buttons.hidden = false;
  slider.value = String(Math.round(depth.depthMm / sliderStepMm));
  slider.setAttribute("aria-valuetext", figures.depth(depth.depthMm));
  keepAnswers(Object.fromEntries(["depth", "pace", "units"].map((name) => [name, changed.get(name)])));
  const show = (made: SolvedDepth) =>
    showResult(toDom(DepthPart({ voice, solved: solved.value, depth: made, id: "fitted" })));
  show(depth);
  // How it sinks takes longer, so it waits until nobody is typing.
  inWaterTimer = setTimeout(() => {
    const inWater = solveInWater(solved.value, depth);
    if (inWater.ok) show({ ...depth, inWater: inWater.value });
  }, typingPauseMs);
  const done = say("fit.done", { depth: figures.depth(depth.depthMm) });
  status.textContent = done;
  announce([done, ...depth.findings.map(voice.reason)].join(" "));
}

/** What a field says where nobody has touched it. */
function ownValue(field: HTMLInputElement | HTMLSelectElement): string {
  if (field instanceof HTMLInputElement) return field.defaultValue;
  const options = [...field.options];
  return (options.find(({ defaultSelected }) => defaultSelected) ?? first(options)).value;
}

/** Parts that the reader has unfolded stay so. */
function showResult(nodes: readonly Node[]): void {
  const open = [...result.querySelectorAll("details")].map((part) => part.open);
  result.replaceChildren(...nodes);
  for (const [at, part] of [...result.querySelectorAll("details")].entries()) part.open = open[at] ?? false;
}

/** Read out once nobody types any more. */
function announce(text: string): void {
  clearTimeout(announceTimer);
  announceTimer = setTimeout(() => {
    said.textContent = text;
  }, announcePauseMs);
}

/** No figures, and above all no card, of a water that nobody asked for. */
function showNothing(why: string): void {
  shown = undefined;
  cardButton.disabled = true;
  buttons.hidden = true;
  result.replaceChildren();
  status.textContent = why;
  announce(
    [...problemList.children]
      .map(({ firstChild }) => firstChild?.textContent)
      .concat(why)
      .join(" "),
  );
}

function unitsChosen(): UnitChoice {
  const chosen = (form.elements.namedItem("units") as HTMLSelectElement).value;
  return unitChoices.find((choice) => choice === chosen) ?? dotdownGuide.guide.units;
}

function showProblems(problems: readonly FieldProblem[], figures: Figures): void {
  const wrong = new Set(problems.map(({ field }) => field));
  for (const field of fields) {
    if (wrong.has(field.name)) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  problemList.replaceChildren(
    ...problems.map((problem) => {
      const item = document.createElement("li");
      item.append(problemText(problem, figures), ...("meant" in problem ? buttonsFor(problem) : []));
      return item;
    }),
  );
}

function problemText(problem: FieldProblem, figures: Figures): string {
  const { typed } = problem;
  const name = nameOf(problem.field);
  if (!("question" in problem)) return say(`fit.${problem.code}`, { name, typed });
  const { question } = problem;
  const amount = (value: number) => amountText(question.kind, value, figures);
  const range = { least: amount(question.least), most: amount(question.most) };
  return say(`fit.${problem.code}`, {
    name,
    typed,
    ...range,
    example: question.example,
  });
}

function amountText(kind: AskedQuestion["kind"], value: number, figures: Figures): string {
  if (kind === "length") return value < leastDepthMm ? figures.tip(value) : figures.depth(value);
  return kind === "temperature" ? figures.temperature(value) : `${figures.number(value, 2)} m/s`;
}

/** The readings that were likely meant, one to tap. */
function buttonsFor({ field, meant }: Extract<FieldProblem, { question: AskedQuestion }>): HTMLElement[] {
  return meant.map((text) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = say("fit.did-you-mean", { reading: text });
    button.addEventListener("click", () => {
      const input = fields.find(({ name }) => name === field)!;
      input.value = text;
      input.focus();
      refit();
    });
    return button;
  });
}

function nameOf(fieldName: string): string {
  const field = fields.find(({ name }) => name === fieldName);
  return field?.getAttribute("aria-label") ?? field?.labels?.[0]?.textContent ?? fieldName;
}

/** The depth and what else was typed stand in the address, so that a coach can send them. */
function keepInAddress(changed: ReadonlyMap<string, string>): void {
  const query = new URLSearchParams([...new Map([["depth", depthField.value], ...changed])]);
  const address = `${location.pathname}?${query}`;
  history.replaceState(null, "", location.hash === "#fit" ? `${address}#fit` : address);
  link.href = address;
}

async function saveCard(): Promise<void> {
  if (!shown) return;
  const { solved, kit } = shown;
  cardStatus.textContent = say("fit.card-working");
  try {
    if (typeof dotdownCard === "undefined") await loadScript(dataOf(cardButton, "script"));
  } catch {
    cardStatus.textContent = say("fit.card-not-here");
    return;
  }
  try {
    const card = await dotdownCard!(solved, dotdownGuide.guide, kit);
    const address = URL.createObjectURL(
      new Blob([(await card.pdf()) as BlobPart], { type: "application/pdf" }),
    );
    const save = document.createElement("a");
    save.href = address;
    save.download = `${rig.id}-${Math.round(first(solved.depths).depthMm / 10)}.pdf`;
    save.click();
    URL.revokeObjectURL(address);
    cardStatus.textContent = say("fit.card-done");
  } catch (error) {
    const reason = error instanceof Error && error.name === "DoesNotFitError" ? error.message : "";
    cardStatus.textContent = `${say("fit.card-failed")} ${reason}`.trim();
  }
}

cardButton.addEventListener("click", saveCard);

const asked = new URLSearchParams(location.search);
const untouched = asked.size === 0 && depthField.value === depthField.defaultValue;
for (const [name, value] of untouched ? Object.entries(keptAnswers()) : asked) {
  const field = fields.find((one) => one.name === name);
  if (field) field.value = value;
}
form.addEventListener("input", refit);
depthField.addEventListener("input", refit);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  refit();
  depthField.scrollIntoView();
});
form.addEventListener("reset", () => setTimeout(refit));

let frame = 0;
slider.addEventListener("input", () => {
  const figures = makeFigures(unitsChosen(), words, dotdownGuide.guide.language);
  depthField.value = figures.shortDepth(Number(slider.value) * sliderStepMm);
  cancelAnimationFrame(frame);
  frame = requestAnimationFrame(refit);
});
// Whoever moved the slider first had it moved before this script was there.
if (slider.value !== slider.defaultValue) slider.dispatchEvent(new Event("input"));
else refit();
