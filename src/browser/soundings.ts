import { dataOf, partById, partWithin } from "./page-parts.ts";
import { type SwimProblem, swimFile, type TypedSwim } from "./swim-file.ts";

/** The form of a swim's depths: makes the text of its file, or says what is wrong. */
const form = partWithin<HTMLFormElement>(document, "form.soundings");
const result = partById("swim-result");
const text = partById<HTMLTextAreaElement>("swim-text");
const save = partById<HTMLAnchorElement>("swim-save");
const told = partById("swim-problems");

function typedIn(): TypedSwim {
  const given = new FormData(form);
  const one = (name: string) => String(given.get(name) ?? "");
  const all = (name: string) => given.getAll(name).map(String);
  const rows = <K extends string>(names: Readonly<Record<K, string>>, of: string) =>
    all(of).map((_, at) => {
      const cells = Object.entries<string>(names).map(([key, name]) => [key, all(name)[at] ?? ""]);
      return Object.fromEntries(cells) as Record<K, string>;
    });
  const hazards = rows({ what: "hazard", where: "hazard-where", measure: "hazard-do" }, "hazard");
  return {
    title: one("title"),
    summary: one("summary"),
    water: one("water"),
    pace: one("pace"),
    sounded: one("sounded"),
    levelMark: one("level-mark"),
    road: one("road"),
    way: one("way"),
    gridReference: one("grid-reference"),
    places: one("places"),
    fish: one("fish"),
    rules: one("rules"),
    line: one("line"),
    soundings: rows({ fromBank: "from-bank", depth: "depth" }, "depth"),
    spots: rows({ title: "spot", fromBank: "spot-from-bank" }, "spot"),
    // Every row has a kind chosen; one of which nothing is said is none.
    hazards: hazards.filter(({ where, measure }) => where.trim() !== "" || measure.trim() !== ""),
  };
}

function problemText({ problem, field, typed }: SwimProblem): string {
  const named = form.querySelector<HTMLElement>(`[data-name="${field}"]`)?.textContent ?? field;
  return dataOf(told, problem).replace("{field}", named).replace("{typed}", typed);
}

form.addEventListener("submit", (event) => {
  event.preventDefault();
  const made = swimFile(typedIn());
  const isMade = "text" in made;
  result.hidden = !isMade;
  told.hidden = isMade;
  told.replaceChildren();
  if (!isMade) {
    for (const one of made.problems) {
      const item = document.createElement("li");
      item.textContent = problemText(one);
      told.append(item);
    }
    told.focus();
    return;
  }
  text.value = made.text;
  URL.revokeObjectURL(save.href);
  save.href = URL.createObjectURL(new Blob([made.text], { type: "text/plain" }));
  text.focus();
});
