import { loadScript } from "./load-script.ts";

/** A rig's page: shows the chosen depth alone and keeps it in the address. */
const picker = document.querySelector<HTMLElement>(".depth-picker")!;
const links = [...picker.querySelectorAll("a")];
const said = document.getElementById("depth-shown")!;

function show(id: string): void {
  for (const link of links) {
    const chosen = link.hash === `#${id}`;
    if (chosen) link.setAttribute("aria-current", "true");
    else link.removeAttribute("aria-current");
    const part = document.getElementById(link.hash.slice(1))!;
    part.hidden = !chosen;
    if (chosen) said.textContent = part.querySelector("h3")!.textContent;
  }
}

function isDepth(id: string): boolean {
  return links.some(({ hash }) => hash === `#${id}`);
}

picker.addEventListener("click", (event) => {
  const link = (event.target as Element).closest("a");
  if (!link) return;
  event.preventDefault();
  history.replaceState(null, "", link.hash);
  show(link.hash.slice(1));
});
addEventListener("hashchange", () => {
  if (isDepth(location.hash.slice(1))) show(location.hash.slice(1));
});

const asked = location.hash.slice(1);
picker.dataset.ready = "";
show(isDepth(asked) ? asked : links[0]!.hash.slice(1));
if (isDepth(asked)) picker.scrollIntoView();

/** Fitting needs the sums, so its scripts are loaded when it is first opened. */
const fit = document.getElementById("fit") as HTMLDetailsElement;
fit.addEventListener("toggle", loadFit, { once: true });
if (location.search !== "" || asked === "fit") fit.open = true;
if (asked === "fit") fit.scrollIntoView();

async function loadFit(): Promise<void> {
  const { scripts = "", notLoaded = "" } = fit.dataset;
  try {
    for (const address of scripts.split(" ")) await loadScript(address);
  } catch {
    // The scripts of this page's edition went with it, and those of the next are not for this page.
    fit.querySelector("p")!.textContent = notLoaded;
  }
}
