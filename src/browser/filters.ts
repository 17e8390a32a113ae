import { fits } from "./rig-filter.ts";

/** The list of rigs: shows those that fit the questions, and keeps the answers in the address. */
const form = document.querySelector<HTMLFormElement>("form.questions")!;
const result = document.getElementById("filter-result")!;
const rigs = [...document.querySelectorAll<HTMLElement>("#rig-list > article")];
const choices = [...form.querySelectorAll("select")];

function show(): void {
  const wanted = Object.fromEntries(choices.map(({ name, value }) => [name, value]));
  for (const rig of rigs) rig.hidden = !fits(rig.dataset, wanted);
  const count = rigs.filter(({ hidden }) => !hidden).length;
  const { some = "", none = "" } = result.dataset;
  result.textContent = count > 0 ? some.replace("{count}", String(count)) : none;
  const answers = new URLSearchParams(Object.entries(wanted).filter(([, value]) => value !== ""));
  history.replaceState(null, "", `?${answers}`);
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
show();
