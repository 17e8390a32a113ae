import { first } from "../core/lists.ts";
import { depthStepMm } from "../model/questions.ts";
import type { Rig } from "../model/rig.ts";
import { answersOf, kitIn, rigAsked, unitsOf } from "./asked-rig.ts";
import { drivenFilms } from "./driven-films.ts";
import { loadedRig } from "./fit-data.ts";
import { anotherTask } from "./give-way.ts";
import { loadScript } from "./load-script.ts";
import { inOwnFrame } from "./own-frame.ts";
import { dataOf, partById } from "./page-parts.ts";
import { listedRigs } from "./rig-list.ts";
import { siteAddress } from "./site-address.ts";

/** How far beyond the rig's own depths the slider goes. */
const reach = { least: 0.5, most: 1.5 };

/** The page where a reader drives films with a rig of their own. Whose figures they are stands in the address. */
export function startTryPage(form: HTMLElement): void {
  const rigField = partById<HTMLSelectElement>("try-rig");
  const slider = partById<HTMLInputElement>("try-deep");
  const asked = new URLSearchParams(location.search);
  const stepMm = depthStepMm[unitsOf(asked)];
  const kit = kitIn(unitsOf(asked));
  const films = drivenFilms(dataOf(form, "worker"));
  let rig: Rig | undefined;

  async function take(id: string): Promise<void> {
    const known = listedRigs().find((one) => one.id === id) ?? first(listedRigs());
    rigField.value = known.id;
    try {
      await loadScript(new URL(known.data, siteAddress).href);
    } catch {
      films.showNothing(dataOf(form, "failed"));
      return;
    }
    // Meanwhile another may have been chosen.
    if (rigField.value !== known.id) return;
    rig = loadedRig();
    slider.min = String(Math.ceil((Math.min(...rig.depthsMm) * reach.least) / stepMm));
    slider.max = String(Math.floor((Math.max(...rig.depthsMm) * reach.most) / stepMm));
    partById<HTMLAnchorElement>("try-own").href = new URL(known.page, siteAddress).href;
    refit();
  }

  function refit(): void {
    if (!rig) return;
    const fitted = rigAsked(rig, asked);
    if (fitted) {
      const depthMm = first(fitted.depthsMm);
      slider.value = String(Math.round(depthMm / stepMm));
      slider.setAttribute("aria-valuetext", kit.figures.depth(depthMm));
      partById("try-deep-said").textContent = kit.figures.depth(depthMm);
    }
    // Not in the frame that has the slider's words: what shows the films and keeps the address takes as long again.
    void anotherTask()
      .then(() => films.show(fitted, kit))
      .then(anotherTask)
      .then(() => fitted && keepInAddress(fitted.id, answersOf(asked)));
  }

  rigField.addEventListener("change", () => {
    // The float and the depth of the rig before are not this one's.
    for (const name of [...asked.keys()]) if (name !== "units") asked.delete(name);
    void take(rigField.value);
  });
  let isAsked = false;
  slider.addEventListener("input", () => {
    asked.set("depth", kit.figures.shortDepth(Number(slider.value) * stepMm));
    if (isAsked) return;
    isAsked = true;
    inOwnFrame(() => {
      isAsked = false;
      refit();
    });
  });
  void take(asked.get("rig") ?? rigField.value);
}

/** The address has the rig and what is asked of it; the way to the rig's page takes the latter along. */
function keepInAddress(id: string, answers: ReadonlyMap<string, string>): void {
  const query = new URLSearchParams([["rig", id], ...answers]);
  history.replaceState(null, "", `${location.pathname}?${query}${location.hash}`);
  query.delete("rig");
  partById<HTMLAnchorElement>("try-own").search = String(query);
}
