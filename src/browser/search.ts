import MiniSearch from "minisearch";
import type { SearchEntry } from "../model/search-entry.ts";

/** Set by `search-index.js`, which stands before this script. */
declare const dotdownSearch: readonly SearchEntry[];

const form = document.getElementById("search") as HTMLFormElement;
const field = document.getElementById("query") as HTMLInputElement;
const count = document.getElementById("search-count")!;
const list = document.getElementById("search-results")!;

const index = new MiniSearch<SearchEntry>({
  fields: ["title", "summary", "text"],
  searchOptions: { boost: { title: 4, summary: 2 }, prefix: true, fuzzy: 0.2, combineWith: "AND" },
});
index.addAll(dotdownSearch);

function find(): void {
  const query = field.value.trim();
  const found = index.search(query).map(({ id }) => dotdownSearch.find((entry) => entry.id === id)!);
  list.replaceChildren(...found.map(resultItem));
  const { some = "", none = "" } = form.dataset;
  count.textContent =
    query === "" ? "" : found.length > 0 ? some.replace("{count}", String(found.length)) : none;
  history.replaceState(null, "", query === "" ? location.pathname : `?${new URLSearchParams({ q: query })}`);
}

function resultItem({ address, title, summary, kind }: SearchEntry): HTMLElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = address;
  link.textContent = title;
  const about = document.createElement("p");
  about.textContent = `${kind}. ${summary}`;
  item.append(link, about);
  return item;
}

field.value = new URLSearchParams(location.search).get("q") ?? "";
field.addEventListener("input", find);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  find();
});
find();
