import { entry } from "../core/lists.ts";
import { dataOf, partById } from "./page-parts.ts";
import { bestFirst, nearest } from "./rig-filter.ts";
import { fillIn, form, readAnswers } from "./water-form.ts";

/** The first page: the answers name a rig, and lead to it made for that water. */
const found = partById("water-found");
const also = partById("water-also");
const list = partById("water-rigs");
const rigs = [...list.querySelectorAll("li")];
const mostAlso = 3;

/** The rig's page with the answers, where there is one. */
function show(): string | undefined {
  const { wishes, address, unread } = readAnswers();
  const asks = wishes.depth !== undefined && !unread;
  const marks = rigs.map(({ dataset }) => dataset);
  const best = asks ? bestFirst(marks, wishes) : [];
  const others = best.slice(1, 1 + mostAlso);
  for (const at of best) {
    const link = entry(rigs, at).querySelector("a")!;
    link.search = address.toString();
  }
  for (const [at, item] of rigs.entries()) item.hidden = !others.includes(at);
  list.append(...others.map((at) => entry(rigs, at)));
  list.hidden = also.hidden = others.length === 0;
  const first = rigs[best[0] ?? -1]?.querySelector("a");
  found.textContent = first ? dataOf(found, "first").replace("{rig}", first.textContent!) : "";
  if (first && nearest(marks, wishes).left.length > 0) found.textContent += `. ${found.dataset.nearest}`;
  return first?.href;
}

form.addEventListener("input", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  const rig = show();
  if (rig) location.href = rig;
  else partById("water-depth").focus();
});
fillIn();
show();
