import { keepPages, keptAddresses, withoutQuery } from "./guide-files.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";

/** The page that says which pages this phone has, keeps more of them, and stands in for one that it has not. */
const lists = [...partById("kept").querySelectorAll("ul")];
/** Where each stands when it is kept. */
const listOf = new Map(
  lists.flatMap((list) => [...list.querySelectorAll("li")].map((item) => [item, list] as const)),
);
const items = [...listOf.keys()];
const notKept = partById("not-kept");
const missingList = partWithin(notKept, "ul");
const more = partById("keep-more");
const buttons = [...more.querySelectorAll("button")];
const status = partById("keep-status");

const linkOf = (item: HTMLElement) => partWithin<HTMLAnchorElement>(item, "a");
const isServed =
  /^https?:$/.test(location.protocol) && "serviceWorker" in navigator && "caches" in globalThis;

/** What of the guide is not here, of one water or of all. */
let missing: readonly HTMLElement[] = [];
const missingOf = ({ dataset: { water } }: HTMLElement) =>
  missing.filter(({ dataset }) => water === undefined || dataset.water === water);

async function show(): Promise<void> {
  const kept = await keptAddresses();
  const isKept = (item: HTMLElement) => kept.has(withoutQuery(linkOf(item).href));
  missing = items.filter((item) => !isKept(item));
  for (const [item, list] of listOf) (isKept(item) ? list : missingList).append(item);
  notKept.hidden = missing.length === 0;
  for (const part of partById("kept").querySelectorAll<HTMLElement>("section")) {
    part.hidden = part.querySelector("li") === null;
  }
  // Where nothing stands between pages and network, nothing that passes is kept.
  more.hidden = missing.length === 0 || !navigator.serviceWorker.controller;
  for (const button of buttons) {
    const bytes = missingOf(button).reduce((sum, item) => sum + Number(dataOf(item, "bytes")), 0);
    button.hidden = bytes === 0;
    button.textContent = dataOf(button, "label").replace("{size}", megabytes(bytes));
  }
}

/** Rounded up, as the reader may pay for them. */
function megabytes(bytes: number): string {
  const { lang } = document.documentElement;
  return (Math.ceil(bytes / 1e5) / 10).toLocaleString(lang, { minimumFractionDigits: 1 });
}

async function keep(button: HTMLButtonElement): Promise<void> {
  const addresses = missingOf(button).map((item) => linkOf(item).href);
  const say = (name: string, values: Readonly<Record<string, number>>) => {
    status.textContent = Object.entries(values).reduce(
      (text, [value, figure]) => text.replace(`{${value}}`, String(figure)),
      dataOf(status, name),
    );
  };
  for (const one of buttons) one.disabled = true;
  say("keeping", { done: 0, all: addresses.length });
  await keepPages(addresses, (done) => say("keeping", { done, all: addresses.length })).catch(() => {});
  for (const one of buttons) one.disabled = false;
  await show();
  // What was asked for may have come from another edition, or not at all.
  const left = addresses.filter((address) => missing.some((item) => linkOf(item).href === address)).length;
  if (left === 0) say("done", {});
  else say("broken", { left });
}

/** The reader was led here from a page that this phone has not. */
function showMissed(address: string): void {
  const missed = partById("missed");
  const said = partWithin(missed, "p");
  const page = items.find((item) => withoutQuery(linkOf(item).href) === withoutQuery(address));
  said.textContent = page
    ? dataOf(said, "missed").replace("{page}", linkOf(page).textContent ?? "")
    : dataOf(missed, "file");
  partWithin<HTMLAnchorElement>(missed, "a").href = address;
  missed.hidden = false;
}

for (const button of buttons) button.addEventListener("click", () => void keep(button));
const asked = new URLSearchParams(location.search).get("page");
// Of this site alone: an address of another has no place in such a link.
const missedAddress = asked === null ? undefined : new URL(asked, new URL("./", location.href));
if (missedAddress?.href.startsWith(new URL("./", location.href).href)) showMissed(missedAddress.href);
if (isServed) {
  void show();
  void navigator.serviceWorker.ready.then(show);
  navigator.serviceWorker.addEventListener("controllerchange", () => void show());
}
