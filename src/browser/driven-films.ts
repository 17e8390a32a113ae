import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { tryParts } from "../../templates/pages/try-parts.tsx";
import { first } from "../core/lists.ts";
import { bitesFilm } from "../drawing/film/bites-film.ts";
import { castFilm } from "../drawing/film/cast-film.ts";
import { currentFilm } from "../drawing/film/current-film.ts";
import { depthFilm } from "../drawing/film/depth-film.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { filmsOf } from "../model/films.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { reasonText } from "../words/reason.ts";
import { besideBy } from "./beside.ts";
import { say } from "./fit-data.ts";
import { partById, partWithin } from "./page-parts.ts";
import { filmShower, type ShowFilm } from "./show-film.ts";
import { showSettling } from "./try-settling.ts";
import { waysChooser } from "./try-sinking.ts";

/** Where a page has to do the long sums itself, they wait until nobody draws a slider. */
const pauseMs = 250;
/** How long one of many steps stays while they are played [s]. */
const stepS = 0.15;
/** Of the twentieths by which a float is held back: checked a little, as most are fished. */
const checkedStep = 2;

type PartName = (typeof tryParts)[number];

/** Shows the films of a rig in the parts of a page that are there for them; sliders stay where the reader left them. */
export function drivenFilms(worker: string) {
  const [firstSums, longSums] = [besideBy(worker), besideBy(worker, pauseMs)];
  const status = partById("try-said");
  const { showFilm, forget } = filmShower();
  const showSinking = waysChooser(longSums, showFilm);
  const showAtOnce = atOnce(showFilm);
  let shown = "";

  function showNothing(why: string): void {
    firstSums.drop();
    longSums.drop();
    for (const part of tryParts) partById(`try-${part}`).hidden = true;
    status.textContent = why;
  }

  function showMade(solved: SolvedRig, kit: DrawingKit): void {
    status.textContent = "";
    showAtOnce(solved, first(solved.depths), kit);
    longSums.ask("drawnThrough", solved, (through, { isLast }) => {
      if (!isLast) return;
      showThrough(solved, through, kit, showFilm);
      longSums.ask("inWater", { solved }, (depth, { isLast }) => {
        if (!isLast) return;
        showBites(solved, depth, kit, showFilm);
        const sinking = partOf("sinking", depth?.inWater !== undefined);
        // After the bites are on the screen: both would take too long for one frame.
        if (sinking && depth) setTimeout(() => showSinking(sinking, solved, depth, kit));
      });
    });
  }

  return {
    showNothing,
    /** @param rig none where what was asked of it cannot be read */
    show(rig: Rig | undefined, kit: DrawingKit): void {
      if (!rig) {
        showNothing(say("fit.unread"));
        return;
      }
      if (shown !== rig.id) forget();
      shown = rig.id;
      firstSums.ask("make", { rig }, (made, { isLast }) => {
        if (!isLast) return;
        if (made.ok) showMade(made.value.solved, kit);
        else {
          const reasons = made.findings.map((finding) => reasonText(finding, kit.words, kit.figures));
          showNothing([say("fit.failed"), ...reasons].join(" "));
        }
      });
    },
  };
}

/** A part of the page, shown where there is something to be seen in it. */
function partOf(name: PartName, isThere: boolean): HTMLElement | undefined {
  const part = partById(`try-${name}`);
  part.hidden = !isThere;
  return isThere ? part : undefined;
}

/**
 * What shows the films that need no long sums. A cast is of the rig's float alone, so it is not drawn anew for another depth;
 * for another rig it is, as its slider begins anew like those of the other films.
 */
function atOnce(showFilm: ShowFilm) {
  let castOf = "";
  return (solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): void => {
    const films = filmsOf(solved, depth);
    const settling = partOf("settling", films.includes("settling"));
    if (settling) showSettling(partWithin(settling, ".try-shown"), solved, depth, pictureRoom, kit);
    const cast = partOf("cast", films.includes("cast"));
    const { id, float } = solved.rig;
    const now = JSON.stringify([id, float]);
    if (!cast || now === castOf) return;
    castOf = now;
    showFilm(cast, castFilm(solved, depth, pictureRoom, kit), kit);
  };
}

/** What is drawn through by hand, in small steps. */
function showThrough(
  solved: SolvedRig,
  depth: SolvedDepth | undefined,
  kit: DrawingKit,
  showFilm: ShowFilm,
): void {
  const films = depth ? filmsOf(solved, depth) : [];
  const draws = { depth: depthFilm, current: currentFilm };
  for (const name of ["depth", "current"] as const) {
    const part = partOf(name, films.includes(name));
    if (!part || !depth) continue;
    const slider = { label: say(`try.${name}.slider`), stepS };
    const start =
      name === "depth" ? depth.depthGuide.findIndex(({ advice }) => advice === "start-here") : checkedStep;
    showFilm(part, { ...draws[name](solved, depth, pictureRoom, kit), slider }, kit, Math.max(0, start));
  }
}

function showBites(
  solved: SolvedRig,
  depth: SolvedDepth | undefined,
  kit: DrawingKit,
  showFilm: ShowFilm,
): void {
  const bites = partOf("bites", depth !== undefined && filmsOf(solved, depth).includes("bites"));
  if (bites && depth) showFilm(bites, bitesFilm(solved, depth, pictureRoom, kit), kit);
}
