import type { SearchEntry } from "../model/search-entry.ts";
import { type FoundSection, makeSearch } from "./find-sections.ts";
import { giveWay } from "./give-way.ts";
import { partById } from "./page-parts.ts";

/** Set by `search-index.js` and `search-rest.js`, which stand before this script. */
declare const dotdownSearch: readonly SearchEntry[];
/** Of pages that a phone needs less: not there where there is no signal and it was never fetched. */
declare const dotdownSearchRest: readonly SearchEntry[] | undefined;
declare const dotdownSynonyms: readonly (readonly string[])[];

const form = partById<HTMLFormElement>("search");
const field = partById<HTMLInputElement>("query");
const count = partById("search-count");
const list = partById("search-results");

let search: Awaited<ReturnType<typeof makeSearch>> | undefined;
const mostShown = 30;

/** What is typed before the search is there is found once it is; of two questions the later one is answered. */
async function find(): Promise<void> {
  if (!search) return;
  const query = field.value.trim();
  const found = search(query);
  const items: HTMLElement[] = [];
  for (const section of found.slice(0, mostShown)) {
    await giveWay();
    items.push(resultItem(section));
  }
  if (query !== field.value.trim()) return;
  list.replaceChildren(...items);
  const { some = "", none = "" } = form.dataset;
  count.textContent =
    query === "" ? "" : found.length > 0 ? some.replace("{count}", String(found.length)) : none;
  history.replaceState(null, "", query === "" ? location.pathname : `?${new URLSearchParams({ q: query })}`);
}

function resultItem({ entry, excerpt }: FoundSection): HTMLElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = entry.address;
  link.textContent = entry.heading;
  const where = document.createElement("p");
  where.textContent = entry.heading === entry.title ? entry.kind : `${entry.kind} · ${entry.title}`;
  const about = document.createElement("p");
  about.append(
    ...excerpt().map(({ text, marked }) => {
      if (!marked) return text;
      const mark = document.createElement("mark");
      mark.textContent = text;
      return mark;
    }),
  );
  item.append(link, where, about);
  return item;
}

field.value = new URLSearchParams(location.search).get("q") ?? "";
field.addEventListener("input", find);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  void find();
});
const rest = typeof dotdownSearchRest === "undefined" ? undefined : dotdownSearchRest;
partById("search-part").hidden = rest !== undefined;
void makeSearch([...dotdownSearch, ...(rest ?? [])], dotdownSynonyms).then((made) => {
  search = made;
  void find();
});
