import { entry } from "../core/lists.ts";
import { keepPages, keptAddresses, withoutQuery } from "./guide-files.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { bestFirst, nearest } from "./rig-filter.ts";
import { fillIn, form, readAnswers } from "./water-form.ts";

/** The first page: the answers name a rig, and lead to it made for that water. */
const found = partById("water-found");
const also = partById("water-also");
const list = partById("water-rigs");
const rigs = [...list.querySelectorAll("li")];
const mostAlso = 3;

/** Links to the rigs that the answers lead to, the best first. */
let offered: readonly HTMLAnchorElement[] = [];

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
  offered = best.slice(0, 1 + mostAlso).map((at) => partWithin(entry(rigs, at), "a"));
  const [first] = offered;
  found.textContent = first ? dataOf(found, "first").replace("{rig}", first.textContent!) : "";
  if (first && nearest(marks, wishes).left.length > 0) found.textContent += `. ${found.dataset.nearest}`;
  return first?.href;
}

/** The pages of the rigs for that water stay on the phone, where they do not from the start. */
async function keepOffered(): Promise<void> {
  if (!("caches" in globalThis) || !navigator.serviceWorker.controller) return;
  const kept = await keptAddresses();
  const addresses = offered.map((link) => withoutQuery(link.href)).filter((address) => !kept.has(address));
  await keepPages(addresses).catch(() => {});
}

form.addEventListener("input", show);
form.addEventListener("change", () => void keepOffered());
form.addEventListener("submit", (event) => {
  event.preventDefault();
  const rig = show();
  if (rig) location.href = rig;
  else partById("water-depth").focus();
});
fillIn();
show();
