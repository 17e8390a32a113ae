import { keptAnswers } from "./kept-answers.ts";
import { dataOf, partById } from "./page-parts.ts";

/** What the float says: two answers leave the signs that fit, and a tap on one leads to its cause and cure. */
const ask = partById("ask");
const found = partById("signs-found");
const signs = [...partById("signs").querySelectorAll("li")];

function show(): void {
  const [when, water] = [answer("when"), answer("water")];
  for (const sign of signs) {
    const { when: time, water: where } = sign.dataset;
    sign.hidden =
      (when !== undefined && time !== when) || (water !== undefined && where !== "either" && where !== water);
  }
  const count = signs.filter(({ hidden }) => !hidden).length;
  found.textContent = when ? dataOf(found, "some").replace("{count}", String(count)) : "";
}

const answer = (name: string) => ask.querySelector<HTMLInputElement>(`[name="${name}"]:checked`)?.value;

const { water: known } = keptAnswers();
const asKnown = ask.querySelector<HTMLInputElement>(`[name="water"][value="${known}"]`);
if (asKnown) asKnown.checked = true;
ask.addEventListener("input", show);
show();
// Coming back, browsers put the answers in after this script has run.
addEventListener("pageshow", show);
