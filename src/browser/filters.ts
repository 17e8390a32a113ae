import { entry } from "../core/lists.ts";
import { partById, partWithin } from "./page-parts.ts";
import { bestFirst, nearest } from "./rig-filter.ts";
import { fillIn, form, readAnswers } from "./water-form.ts";

/** The list of rigs: shows those that fit the questions, and keeps the answers in the address. */
const result = partById("filter-result");
const list = partById("rig-list");
const rigs = [...list.querySelectorAll<HTMLElement>("article")];

function show(): void {
  const { wishes, address, unread } = readAnswers();
  const marks = rigs.map(({ dataset }) => dataset);
  const { shown, left } = nearest(marks, wishes);
  list.append(...bestFirst(marks, wishes).map((at) => entry(rigs, at)));
  for (const [at, rig] of rigs.entries()) {
    rig.hidden = unread || !shown[at];
    // Whoever has said how deep the water is finds the rig made for it.
    partWithin<HTMLAnchorElement>(rig, "a").search = address.toString();
  }
  const count = unread ? 0 : shown.filter(Boolean).length;
  const { some = "", nearest: letGo = "" } = result.dataset;
  const told = some.replace("{count}", String(count));
  result.textContent =
    left.length === 0 ? told : `${told}. ${letGo.replace("{left}", left.map(questionOf).join(" "))}`;
  const { depth, pace, ...others } = wishes;
  const query = new URLSearchParams([...Object.entries(others), ...address]);
  history.replaceState(null, "", `?${query}`);
}

function questionOf(name: string): string {
  const field = form.elements.namedItem(name);
  if (field instanceof RadioNodeList) {
    return (field[0] as HTMLInputElement).closest("fieldset")!.querySelector("legend")!.textContent!;
  }
  return (field as HTMLInputElement).labels?.[0]?.textContent ?? name;
}

form.addEventListener("input", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  show();
  result.scrollIntoView({ block: "nearest" });
});
// Whoever comes with answers wants the rigs, not the questions.
const cameWithAnswers = location.search !== "";
fillIn();
show();
if (cameWithAnswers) result.scrollIntoView();
