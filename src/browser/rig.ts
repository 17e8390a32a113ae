import { first } from "../core/lists.ts";
import { keptAnswers } from "./kept-answers.ts";
import { loadScripts } from "./load-script.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { selectOnTap } from "./select-on-tap.ts";

/**
 * A rig's page. Until the reader asks for another water it shows the depths that were built, the chosen one alone; then
 * the sums are loaded (`fit.ts`), and they show the rig made for the depth in the field.
 */
const picker = partWithin<HTMLElement>(document, ".depth-picker");
const links = [...picker.querySelectorAll("a")];
const said = partById("depth-shown");
const built = partById("depths-built");
const answer = partById("fit-answer");
const status = partById("fit-status");
const field = partById<HTMLInputElement>("fit-depth");
const slider = partById<HTMLInputElement>("fit-slider");
const fit = partById<HTMLDetailsElement>("fit");

function show(id: string): void {
  for (const link of links) {
    const chosen = link.hash === `#${id}`;
    if (chosen) link.setAttribute("aria-current", "true");
    else link.removeAttribute("aria-current");
    const part = partById(link.hash.slice(1));
    part.hidden = !chosen;
    if (chosen) said.textContent = partWithin(part, "h3").textContent;
  }
}

function linkOf(id: string): HTMLAnchorElement | undefined {
  return links.find(({ hash }) => hash === `#${id}`);
}

picker.addEventListener("click", (event) => {
  const link = (event.target as Element).closest("a");
  if (!link) return;
  event.preventDefault();
  field.value = dataOf(link, "depth");
  if (loading) {
    field.dispatchEvent(new Event("input", { bubbles: true }));
    return;
  }
  history.replaceState(null, "", link.hash);
  show(link.hash.slice(1));
});
addEventListener("hashchange", () => {
  const link = linkOf(location.hash.slice(1));
  if (!link) return;
  show(link.hash.slice(1));
  field.value = dataOf(link, "depth");
});

let loading: Promise<void> | undefined;

/** Loads the sums. Nothing of another water is shown meanwhile. */
function loadFit(): Promise<void> {
  loading ??= (async () => {
    // What comes takes about as much room as what goes, so that nothing below jumps.
    partById("fit-result").style.minHeight = `${built.offsetHeight}px`;
    built.hidden = true;
    for (const link of links) link.removeAttribute("aria-current");
    status.textContent = dataOf(answer, "working");
    try {
      await loadScripts(dataOf(fit, "scripts").split(" "));
    } catch {
      // The scripts of this page's edition went with it, and those of the next are not for this page.
      status.textContent = dataOf(answer, "notLoaded");
    }
  })();
  return loading;
}

/** Without a signal a card that was never fetched is made here, for the depth in the field. */
async function cardOffline(address: string): Promise<void> {
  if (await caches.match(address)) {
    location.href = address;
    return;
  }
  await loadFit();
  const button = partById<HTMLButtonElement>("fit-card");
  await offered(button);
  button.click();
}

/** Resolves once the sums are done and the button for the card may be pressed. */
function offered(button: HTMLButtonElement): Promise<void> {
  return new Promise((done) => {
    const look = () => {
      if (button.disabled) return;
      changes.disconnect();
      done();
    };
    const changes = new MutationObserver(look);
    changes.observe(button, { attributeFilter: ["disabled"] });
    look();
  });
}

const builtCard = document.getElementById("built-card") as HTMLAnchorElement | null;
builtCard?.addEventListener("click", (event) => {
  if (navigator.onLine || location.protocol === "file:") return;
  event.preventDefault();
  void cardOffline(builtCard.href);
});

const films = document.getElementById("rig-films");
films?.addEventListener(
  "toggle",
  () => loadScripts(dataOf(films, "scripts").split(" ")).catch(() => films.append(dataOf(films, "failed"))),
  { once: true },
);

selectOnTap(field);
const asked = location.hash.slice(1);
const own = linkOf(asked);
built.dataset.ready = "";
show((own ?? first(links)).hash.slice(1));
if (own) field.value = dataOf(own, "depth");
for (const control of [field, slider]) control.addEventListener("input", loadFit, { once: true });
fit.addEventListener("toggle", loadFit, { once: true });
if (location.search !== "" || (!own && keptAnswers().depth !== undefined)) loadFit();
if (asked === "" && new URLSearchParams(location.search).has("depth")) beginAt(field);
if (own) beginAt(picker);
if (asked === "fit") {
  fit.open = true;
  beginAt(fit);
}

/** At once: a page that glides away while it is painted for the first time has no first sight to be measured by. */
function beginAt(part: HTMLElement): void {
  part.scrollIntoView({ behavior: "instant" });
}
