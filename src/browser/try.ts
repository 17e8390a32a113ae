import { FilmPart } from "../../templates/pages/film.tsx";
import { pageFilm } from "../../templates/pages/page-film.ts";
import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { first } from "../core/lists.ts";
import { currentFilm } from "../drawing/film/current-film.ts";
import { depthFilm } from "../drawing/film/depth-film.ts";
import type { Film } from "../drawing/film/film.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { measureText } from "../drawing/labels/font-metrics.ts";
import { filmsOf } from "../model/films.ts";
import { depthStepMm } from "../model/questions.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { unitChoices } from "../model/unit-choice.ts";
import { makeFigures } from "../words/figures.ts";
import { reasonText } from "../words/reason.ts";
import { besideBy } from "./beside.ts";
import { startFilm } from "./film-player.ts";
import { guide, loadedRig, rigs, say, scaleOf, words } from "./fit-data.ts";
import { fitRig } from "./fit-rig.ts";
import { loadScript } from "./load-script.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";
import { showSettling } from "./try-settling.ts";

/** The page where a reader drives films with a rig of their own. Whose figures they are stands in the address. */
const siteAddress = new URL("../", (document.currentScript as HTMLScriptElement).src);
const form = partById("try-form");
const rigField = partById("try-rig") as HTMLSelectElement;
const slider = partById("try-deep") as HTMLInputElement;
const depthSaid = partById("try-deep-said");
const status = partById("try-said");
const ownLink = partById("try-own") as HTMLAnchorElement;
const worker = dataOf(form, "worker");
const [firstSums, throughSums] = [besideBy(worker), besideBy(worker, 250)];

/** How far beyond the rig's own depths the slider goes. */
const reach = { least: 0.5, most: 1.5 };
/** How long one of many steps stays while they are played [s]. */
const stepS = 0.15;

const asked = new URLSearchParams(location.search);
const units = unitChoices.find((choice) => choice === asked.get("units")) ?? guide.units;
const stepMm = depthStepMm[units];
const figures = makeFigures(units, words, guide.language);
const kit: DrawingKit = { words, figures, measure: measureText };
let rig: Rig | undefined;
/** Where the reader has left each slider. */
const left = new Map<string, number>();

/** Figures of the address beside the rig's name, such as the reader's float. */
const answers = () => new Map([...asked].filter(([name]) => name !== "rig"));

async function take(id: string): Promise<void> {
  const known = rigs.find((one) => one.id === id) ?? first(rigs);
  rigField.value = known.id;
  try {
    await loadScript(new URL(known.data, siteAddress).href);
  } catch {
    status.textContent = dataOf(form, "failed");
    return;
  }
  // Meanwhile another may have been chosen.
  if (rigField.value !== known.id) return;
  rig = loadedRig();
  slider.min = String(Math.ceil((Math.min(...rig.depthsMm) * reach.least) / stepMm));
  slider.max = String(Math.floor((Math.max(...rig.depthsMm) * reach.most) / stepMm));
  ownLink.href = new URL(known.page, siteAddress).href;
  left.clear();
  refit();
}

function refit(): void {
  if (!rig) return;
  const { rig: fitted, problems } = fitRig(rig, scaleOf(rig), answers(), units);
  if (problems.length > 0) {
    showNothing(say("fit.unread"));
    return;
  }
  const depthMm = first(fitted.depthsMm);
  slider.value = String(Math.round(depthMm / stepMm));
  slider.setAttribute("aria-valuetext", figures.depth(depthMm));
  depthSaid.textContent = figures.depth(depthMm);
  keepInAddress(fitted.id);
  firstSums.ask("make", { rig: fitted }, (made, isLast) => {
    if (!isLast) return;
    if (!made.ok) {
      const reasons = made.findings.map((finding) => reasonText(finding, words, figures));
      showNothing([say("fit.failed"), ...reasons].join(" "));
      return;
    }
    const { solved } = made.value;
    status.textContent = "";
    showLoad(solved, first(solved.depths));
    throughSums.ask("drawnThrough", solved, (depth, isStill) => {
      if (isStill) showThrough(solved, depth);
    });
  });
}

function showNothing(why: string): void {
  firstSums.drop();
  throughSums.drop();
  for (const part of ["settling", "depth", "current"]) partById(`try-${part}`).hidden = true;
  status.textContent = why;
}

function showLoad(solved: SolvedRig, depth: SolvedDepth): void {
  const part = partById("try-settling");
  part.hidden = !filmsOf(solved, depth).includes("settling");
  if (!part.hidden) showSettling(partWithin(part, ".try-shown"), solved, depth, pictureRoom, kit);
}

function showThrough(solved: SolvedRig, depth: SolvedDepth | undefined): void {
  const films = depth ? filmsOf(solved, depth) : [];
  const draws = { depth: depthFilm, current: currentFilm };
  for (const name of ["depth", "current"] as const) {
    const part = partById(`try-${name}`);
    part.hidden = !depth || !films.includes(name);
    if (part.hidden || !depth) continue;
    const start = name === "depth" ? depth.depthGuide.findIndex(({ advice }) => advice === "start-here") : 2;
    showFilm(part, name, draws[name](solved, depth, pictureRoom, kit), Math.max(0, start));
  }
}

/** Puts a film in its part; its slider stays where the reader left it. */
function showFilm(part: HTMLElement, name: "depth" | "current", film: Film, start: number): void {
  const drawn = { ...film, slider: { label: say(`try.${name}.slider`), stepS } };
  const shown = partWithin(part, ".try-shown");
  const hadFocus = shown.contains(document.activeElement);
  shown.replaceChildren(...toDom(FilmPart({ film: pageFilm(drawn, kit, `try-${name}`), say })));
  const player = partWithin(shown, ".film");
  const goTo = startFilm(player);
  const through = partWithin<HTMLInputElement>(shown, "input[type=range]");
  goTo(Math.min(left.get(name) ?? start, film.moments.length - 1));
  if (hadFocus) through.focus();
  player.addEventListener("input", () => left.set(name, Number(through.value)));
  for (const button of part.querySelectorAll<HTMLElement>(":scope > .film-buttons button"))
    button.onclick = () => goTo(Number(dataOf(button, "step")));
}

function keepInAddress(id: string): void {
  const query = new URLSearchParams([["rig", id], ...answers()]);
  history.replaceState(null, "", `${location.pathname}?${query}${location.hash}`);
  query.delete("rig");
  ownLink.search = String(query);
}

rigField.addEventListener("change", () => {
  // The float and the depth of the rig before are not this one's.
  for (const name of [...asked.keys()]) if (name !== "units") asked.delete(name);
  void take(rigField.value);
});
let frame = 0;
slider.addEventListener("input", () => {
  asked.set("depth", figures.shortDepth(Number(slider.value) * stepMm));
  cancelAnimationFrame(frame);
  frame = requestAnimationFrame(refit);
});
void take(asked.get("rig") ?? rigField.value);
