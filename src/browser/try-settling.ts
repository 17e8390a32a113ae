import { cockingPullG, cocks } from "../core/float/cocking.ts";
import { tipShowingMm } from "../core/float/tip.ts";
import { type Metal, pullG } from "../core/tackle/shot.ts";
import type { FilmRoom } from "../drawing/film/film.ts";
import { type Loaded, settlingStage } from "../drawing/film/settling-film.ts";
import { toldTip } from "../drawing/film/tip-panel.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { marksToSvg } from "../drawing/svg.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { say } from "./fit-data.ts";
import { partWithin } from "./page-parts.ts";

/** A size of shot and how many of it are on. */
interface Count {
  readonly size: string;
  readonly massG: number;
  readonly metal: Metal;
  on: number;
}

/** Shows a float that the reader loads: each size of the tub has a button to add one and one to take one off. */
export function showSettling(
  shown: HTMLElement,
  solved: SolvedRig,
  depth: SolvedDepth,
  room: FilmRoom,
  kit: DrawingKit,
): void {
  const { float, conditions, tub } = solved.rig;
  const own = allShot(depth);
  const counts = tub
    .map(
      ({ size, massG, metal }): Count => ({
        size,
        massG,
        metal,
        on: own.filter((one) => one.size === size).length,
      }),
    )
    .sort((a, b) => b.massG - a.massG);
  const cockedMm = tipShowingMm(float, cockingPullG(float, conditions) ?? 0, conditions) ?? 0;
  const stage = settlingStage(solved, depth, [cockedMm, depth.tipShowingMm], room, kit);
  const box = `0 0 ${room.widthMm} ${Math.ceil(stage.heightMm)}`;
  shown.innerHTML = `<div class="film-picture" role="img"><svg viewBox="${box}" fill="none" aria-hidden="true">${marksToSvg(stage.still)}<g class="film-moving"></g></svg></div><p class="film-caption" aria-live="polite"></p><ul class="try-shot"></ul><p><button type="button"></button></p>`;
  const [picture, moving] = [partWithin(shown, ".film-picture"), partWithin<Element>(shown, ".film-moving")];
  picture.setAttribute("aria-label", kit.words("drawing.film.settling.about"));
  const draw = () => {
    const loaded = loadOf(counts, solved, depth);
    moving.innerHTML = marksToSvg(stage.moving(loaded));
    partWithin(shown, ".film-caption").textContent = tell(loaded, depth, kit);
  };
  const rows = counts.map((count) => rowOf(count, draw, kit));
  partWithin(shown, ".try-shot").append(...rows.map(({ row }) => row));
  const reset = partWithin(shown, "p > button");
  reset.textContent = say("try.settling.reset");
  reset.addEventListener("click", () => {
    for (const count of counts) count.on = own.filter(({ size }) => size === count.size).length;
    for (const { write } of rows) write();
    draw();
  });
  draw();
}

/** A size with its two buttons. */
function rowOf(count: Count, changed: () => void, kit: DrawingKit) {
  const row = document.createElement("li");
  const said = document.createElement("span");
  const write = () => {
    said.textContent = kit.words("figures.several-shot", { count: count.on, size: count.size });
  };
  const button = (sign: "−" | "+", by: 1 | -1, name: string) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = sign;
    made.setAttribute("aria-label", name);
    made.addEventListener("click", () => {
      count.on = Math.max(0, count.on + by);
      write();
      changed();
    });
    return made;
  };
  const { size } = count;
  row.append(
    button("−", -1, say("try.settling.take", { size })),
    said,
    button("+", 1, say("try.settling.add", { size })),
  );
  write();
  return { row, write };
}

/** The float with so many of each size on: the rig's own in their places first, the rest at its foot. */
function loadOf(counts: readonly Count[], solved: SolvedRig, depth: SolvedDepth): Loaded {
  const { float, conditions } = solved.rig;
  const own = [...depth.lockShot, ...depth.lineShot.toReversed()];
  const shot = counts.flatMap(({ size, on }) => own.filter((one) => one.size === size).slice(0, on));
  const more = counts.flatMap(({ size, massG, metal, on }) => {
    const extra = on - own.filter((one) => one.size === size).length;
    return Array.from({ length: Math.max(0, extra) }, () => ({ massG, metal }));
  });
  const loadG = counts.reduce(
    (sum, { massG, metal, on }) => sum + on * pullG(massG, metal, conditions),
    solved.hookAndBaitPullG,
  );
  const tip = cocks(float, loadG, conditions) ? toldTip(tipShowingMm(float, loadG, conditions)) : undefined;
  const isHalfCocked = tip === undefined && shot.length + more.length > 0;
  return { caption: "", shot, more, hasHook: true, tip, isHalfCocked };
}

/** What shows, and what to do until it is what the rig wants. */
function tell({ tip, isHalfCocked }: Loaded, depth: SolvedDepth, { figures }: DrawingKit): string {
  if (tip === undefined) return say(isHalfCocked ? "try.settling.half" : "try.settling.flat");
  if (tip === null) return say("try.settling.under");
  const values = { tip: figures.tip(tip), right: figures.tip(depth.tipShowingMm) };
  if (values.tip === values.right) return say("try.settling.right", values);
  return say(tip > depth.tipShowingMm ? "try.settling.too-little" : "try.settling.too-much", values);
}
