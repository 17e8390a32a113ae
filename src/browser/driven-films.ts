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
import { type Beside, besideBy, type Standing } from "./beside.ts";
import { say } from "./fit-data.ts";
import { anotherTask } from "./give-way.ts";
import { partById, partWithin, writeText } from "./page-parts.ts";
import { filmShower, type ShowFilm } from "./show-film.ts";
import { type LoadFloat, settlingIn } from "./try-settling.ts";
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
  const notLoaded = () => showNothing(say("fit.not-loaded"));
  const [firstSums, longSums] = [besideBy(worker, notLoaded), besideBy(worker, notLoaded, pauseMs)];
  const status = partById("try-said");
  const { showFilm, forget } = filmShower();
  const showLater = filmsLater(longSums, showFilm);
  const atOnce = filmsAtOnce(showFilm);
  let shown: { readonly id: string; readonly kit: DrawingKit } | undefined;

  function showNothing(why: string): void {
    firstSums.drop();
    longSums.drop();
    for (const part of tryParts) partById(`try-${part}`).hidden = true;
    status.textContent = why;
  }

  async function showMade(solved: SolvedRig, kit: DrawingKit, standing: Standing): Promise<void> {
    writeText(status, "");
    await atOnce.show(solved, kit, standing);
    await anotherTask();
    if (standing.isLast) showLater(solved, kit);
  }

  return {
    showNothing,
    /** @param rig none where what was asked of it cannot be read */
    show(rig: Rig | undefined, kit: DrawingKit): void {
      if (!rig) {
        showNothing(say("fit.unread"));
        return;
      }
      if (shown?.id !== rig.id || shown.kit !== kit) {
        longSums.drop();
        forget();
        atOnce.forget();
      }
      shown = { id: rig.id, kit };
      firstSums.ask("make", { rig }, async (made, standing) => {
        await anotherTask();
        if (!standing.isLast) return;
        if (made.ok) await showMade(made.value.solved, kit, standing);
        else {
          const reasons = made.findings.map((finding) => reasonText(finding, kit.words, kit.figures));
          showNothing([say("fit.failed"), ...reasons].join(" "));
        }
      });
    },
  };
}

/**
 * What shows the films that need long sums: film by film, each made in tasks and shown in frames of its own. Who draws the
 * depth on meanwhile sees the rest for the last depth alone.
 */
function filmsLater(sums: Beside, showFilm: ShowFilm) {
  const showSinking = waysChooser(sums, showFilm);
  const showSunk = async (solved: SolvedRig, depth: SolvedDepth | undefined, kit: DrawingKit) => {
    const bites = partOf("bites", depth !== undefined && filmsOf(solved, depth).includes("bites"));
    await anotherTask();
    if (bites && depth) await showFilm(bites, bitesFilm(solved, depth, pictureRoom, kit), kit);
    await anotherTask();
    const sinking = partOf("sinking", depth?.inWater !== undefined);
    if (sinking && depth) showSinking(sinking, solved, depth, kit);
  };
  return (solved: SolvedRig, kit: DrawingKit): void =>
    sums.ask("drawnThrough", solved.rig, async (through, { isLast }) => {
      if (!isLast) return;
      await anotherTask();
      await showDrawnThrough(solved, through, kit, showFilm);
      await anotherTask();
      sums.ask("sunk", solved.rig, (depth, { isLast }) =>
        isLast ? showSunk(solved, depth, kit) : undefined,
      );
    });
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
function filmsAtOnce(showFilm: ShowFilm) {
  let loadFloat: LoadFloat | undefined;
  let castOf = "";
  return {
    show: async (solved: SolvedRig, kit: DrawingKit, standing: Standing): Promise<void> => {
      const depth = first(solved.depths);
      const films = filmsOf(solved, depth);
      const settling = partOf("settling", films.includes("settling"));
      if (settling) {
        loadFloat ??= settlingIn(partWithin(settling, ".try-shown"), solved.rig, pictureRoom, kit);
        await loadFloat(solved, depth);
      }
      const cast = standing.isLast && partOf("cast", films.includes("cast"));
      const now = JSON.stringify(solved.rig.float);
      if (!cast || now === castOf) return;
      castOf = now;
      await showFilm(cast, castFilm(solved, depth, pictureRoom, kit), kit);
    },
    forget: () => {
      loadFloat = undefined;
      castOf = "";
    },
  };
}

/** Shows what is drawn through by hand, in small steps. */
async function showDrawnThrough(
  solved: SolvedRig,
  depth: SolvedDepth | undefined,
  kit: DrawingKit,
  showFilm: ShowFilm,
): Promise<void> {
  const films = depth ? filmsOf(solved, depth) : [];
  const draws = { depth: depthFilm, current: currentFilm };
  // No water has both.
  for (const name of ["depth", "current"] as const) {
    const part = partOf(name, films.includes(name));
    if (!part || !depth) continue;
    const slider = { label: say(`try.${name}.slider`), stepS };
    const start =
      name === "depth" ? depth.depthGuide.findIndex(({ advice }) => advice === "start-here") : checkedStep;
    const film = { ...draws[name](solved, depth, pictureRoom, kit), slider };
    await showFilm(part, film, kit, Math.max(0, start));
  }
}
