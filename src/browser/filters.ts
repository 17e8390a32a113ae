import { nearest } from "./rig-filter.ts";

/** The list of rigs: shows those that fit the questions, and keeps the answers in the address. */
const form = document.querySelector<HTMLFormElement>("form.questions")!;
const result = document.getElementById("filter-result")!;
const rigs = [...document.querySelectorAll<HTMLElement>("#rig-list > article")];
const choices = [...form.querySelectorAll("select")];

function show(): void {
  const wanted = Object.fromEntries(choices.map(({ name, value }) => [name, value]));
  const { shown, left } = nearest(
    rigs.map(({ dataset }) => dataset),
    wanted,
  );
  for (const [at, rig] of rigs.entries()) rig.hidden = !shown[at];
  const count = shown.filter(Boolean).length;
  const { some = "", nearest: letGo = "" } = result.dataset;
  const told = some.replace("{count}", String(count));
  result.textContent =
    left.length === 0 ? told : `${told}. ${letGo.replace("{left}", left.map(questionOf).join(" "))}`;
  const answers = new URLSearchParams(Object.entries(wanted).filter(([, value]) => value !== ""));
  history.replaceState(null, "", `?${answers}`);
}

function questionOf(name: string): string {
  return choices.find((choice) => choice.name === name)?.labels[0]?.textContent ?? name;
}

for (const [name, value] of new URLSearchParams(location.search)) {
  const choice = choices.find((one) => one.name === name);
  if (choice && [...choice.options].some((option) => option.value === value)) choice.value = value;
}
form.addEventListener("change", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  show();
  result.scrollIntoView({ block: "nearest" });
});
// Whoever comes with answers wants the rigs, not the questions.
const cameWithAnswers = location.search !== "";
show();
if (cameWithAnswers) result.scrollIntoView();
