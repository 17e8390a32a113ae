import type { AskedQuestion } from "../model/questions.ts";
import type { Figures } from "../words/figures.ts";
import { reasonText } from "../words/reason.ts";
import { say, words } from "./fit-data.ts";
import type { FieldProblem } from "./fit-rig.ts";
import { partById } from "./page-parts.ts";

type Field = HTMLInputElement | HTMLSelectElement;

const list = partById("fit-problems");
/** What is shorter is told as a tip is. */
const leastDepthMm = 150;

/** Says what cannot be read, each with the likely readings to tap; a tap puts one in and calls `tapped`. */
export function showProblems(
  problems: readonly FieldProblem[],
  fields: readonly Field[],
  figures: () => Figures,
  tapped: () => void,
): void {
  const wrong = new Set(problems.map(({ field }) => field));
  for (const field of fields) {
    if (wrong.has(field.name)) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  list.replaceChildren(
    ...problems.map((problem) => {
      const item = document.createElement("li");
      item.append(problemText(problem, fields, figures()));
      if ("question" in problem) item.append(...buttonsFor(problem, fields, figures(), tapped));
      return item;
    }),
  );
}

/** The sentences that are shown now. */
export const problemsSaid = (): readonly string[] =>
  [...list.children].map(({ firstChild }) => firstChild?.textContent ?? "");

function problemText(problem: FieldProblem, fields: readonly Field[], figures: Figures): string {
  if ("findings" in problem) {
    return problem.findings.map((finding) => reasonText(finding, words, figures)).join(" ");
  }
  const { typed } = problem;
  const name = nameOf(problem.field, fields);
  if (!("question" in problem)) return say(`fit.${problem.code}`, { name, typed });
  const { kind, least, most, example } = problem.question;
  const amount = (value: number) => amountText(kind, value, figures);
  return say(`fit.${problem.code}`, {
    name,
    typed,
    least: amount(least),
    most: amount(most),
    example: figures.typed(example),
  });
}

function amountText(kind: AskedQuestion["kind"], value: number, figures: Figures): string {
  if (kind === "length") return value < leastDepthMm ? figures.small(value) : figures.depth(value);
  return kind === "temperature" ? figures.temperature(value) : figures.speed(value);
}

function buttonsFor(
  { field, meant }: Extract<FieldProblem, { question: AskedQuestion }>,
  fields: readonly Field[],
  figures: Figures,
  tapped: () => void,
): HTMLElement[] {
  return meant.map((text) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = say("fit.did-you-mean", { reading: figures.typed(text) });
    button.addEventListener("click", () => {
      const input = fields.find(({ name }) => name === field)!;
      input.value = figures.typed(text);
      input.focus();
      tapped();
    });
    return button;
  });
}

function nameOf(fieldName: string, fields: readonly Field[]): string {
  const field = fields.find(({ name }) => name === fieldName);
  return field?.getAttribute("aria-label") ?? field?.labels?.[0]?.textContent ?? fieldName;
}
