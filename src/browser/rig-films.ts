import { TryParts } from "../../templates/pages/try-parts.tsx";
import { kitIn, rigAsked, unitsOf } from "./asked-rig.ts";
import { drivenFilms } from "./driven-films.ts";
import { loadedRig, say } from "./fit-data.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/** The films of a rig on its own page, for the water and the float that the page shows it with. */
export function startRigFilms(place: HTMLElement): void {
  const link = partById<HTMLAnchorElement>("try-link");
  const depthField = partById<HTMLInputElement>("fit-depth");
  const rig = loadedRig();
  place.append(...toDom(TryParts({ say, within: true })));
  const films = drivenFilms(dataOf(place, "worker"));
  const refit = () => {
    const asked = new URLSearchParams(link.search);
    if (!asked.has("depth")) asked.set("depth", depthField.value);
    films.show(rigAsked(rig, asked), kitIn(unitsOf(asked)));
  };
  // The page keeps in this link what its rig is made for.
  new MutationObserver(refit).observe(link, { attributeFilter: ["href"] });
  partWithin(document, ".depth-picker").addEventListener("click", refit);
  refit();
}
