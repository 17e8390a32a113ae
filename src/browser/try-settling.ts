import { cockingPullG, cocks } from "../core/float/cocking.ts";
import { tipShowingMm } from "../core/float/tip.ts";
import { type Metal, pullG } from "../core/tackle/shot.ts";
import type { FilmRoom } from "../drawing/film/film.ts";
import { type Loaded, settlingStage } from "../drawing/film/settling-film.ts";
import { toldTip } from "../drawing/film/tip-panel.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { drawnParts } from "./drawn-parts.ts";
import { stageOf } from "./film-stage.ts";
import { say } from "./fit-data.ts";
import { anotherTask } from "./give-way.ts";
import { inOwnFrame, ownFrame } from "./own-frame.ts";
import { partWithin, writeAttribute, writeText } from "./page-parts.ts";

/** A size of shot and how many of it are on. */
interface Count {
  readonly size: string;
  readonly massG: number;
  readonly metal: Metal;
  on: number;
}

/** Shows the float of a rig at a depth, with its own load on; ends once that is to be seen. */
export type LoadFloat = (solved: SolvedRig, depth: SolvedDepth) => Promise<void>;

/**
 * Lets a reader load a float in a part of the page: each size of the rig's tub has a button to add one and one to take one
 * off. For another depth of the rig the float has its own load again, in the marks that are there.
 */
export function settlingIn(shown: HTMLElement, { tub }: Rig, room: FilmRoom, kit: DrawingKit): LoadFloat {
  shown.innerHTML = `<div class="film-picture" role="img"><svg fill="none" aria-hidden="true"><g class="film-still"></g><g class="film-moving"></g></svg></div><p class="film-caption" aria-live="polite"></p><ul class="try-shot"></ul><p><button type="button"></button></p>`;
  partWithin(shown, ".film-picture").setAttribute("aria-label", kit.words("drawing.film.settling.about"));
  const { posesOf, part } = drawnParts();
  const still = stageOf(partWithin(shown, ".film-still"), part);
  const moving = stageOf(partWithin(shown, ".film-moving"), part);
  const counts = tub
    .map(({ size, massG, metal }): Count => ({ size, massG, metal, on: 0 }))
    .sort((a, b) => b.massG - a.massG);
  let now: { readonly solved: SolvedRig; readonly depth: SolvedDepth; readonly stage: SettlingStage };
  // As with films, words and picture have a frame each.
  const draw = () => {
    const { solved, depth, stage } = now;
    const loaded = loadOf(counts, solved, depth);
    const told = tell(loaded, depth, kit);
    const poses = posesOf(stage.moving(loaded));
    inOwnFrame(() => {
      for (const { write } of rows) write();
      writeText(partWithin(shown, ".film-caption"), told);
    });
    inOwnFrame(() => moving.paint(poses));
  };
  const loadAnew = () => {
    const own = allShot(now.depth);
    for (const count of counts) count.on = own.filter(({ size }) => size === count.size).length;
    draw();
  };
  const rows = counts.map((count) => rowOf(count, draw, kit));
  partWithin(shown, ".try-shot").append(...rows.map(({ row }) => row));
  const reset = partWithin(shown, "p > button");
  reset.textContent = say("try.settling.reset");
  reset.addEventListener("click", loadAnew);
  return async (solved, depth) => {
    const { float, conditions } = solved.rig;
    const cockedMm = tipShowingMm(float, cockingPullG(float, conditions) ?? 0, conditions) ?? 0;
    const stage = settlingStage(solved, depth, [cockedMm, depth.tipShowingMm], room, kit);
    const poses = posesOf(stage.still);
    const box = `0 0 ${room.widthMm} ${Math.ceil(stage.heightMm)}`;
    await ownFrame();
    writeAttribute(partWithin(shown, "svg"), "viewBox", box);
    still.paint(poses);
    await anotherTask();
    now = { solved, depth, stage };
    loadAnew();
    await ownFrame();
  };
}

type SettlingStage = ReturnType<typeof settlingStage>;

/** A size with its two buttons. */
function rowOf(count: Count, changed: () => void, kit: DrawingKit) {
  const row = document.createElement("li");
  const said = document.createElement("span");
  const write = () => {
    writeText(said, kit.words("figures.several-shot", { count: count.on, size: count.size }));
  };
  const button = (sign: "−" | "+", by: 1 | -1, name: string) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = sign;
    made.setAttribute("aria-label", name);
    made.addEventListener("click", () => {
      count.on = Math.max(0, count.on + by);
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
