import { entry, last, paired } from "../core/lists.ts";
import { type Pose, poseBetween, readPoses } from "../drawing/film/poses.ts";
import { dataOf, partWithin } from "./page-parts.ts";

/** A step of a person stays this long, and takes so much of it to become the next [s]. */
const stepS = 2.4;
const changeS = 0.6;

interface PlayedMoment {
  readonly startS: number;
  readonly caption: string;
  readonly poses: readonly Pose[];
}

/** What shows a film at a time: its picture, its caption, its clock and the place of its slider. */
export function filmScreen(player: HTMLElement, content: DocumentFragment) {
  const moments = readMoments(content);
  const stage = stageOf(partWithin(player, ".film-moving"), [...partWithin(content, ".film-parts").children]);
  const caption = partWithin(player, ".film-caption");
  const slider = partWithin<HTMLInputElement>(player, "input");
  const clock = player.querySelector<HTMLElement>(".film-clock");
  const isTimed = clock !== null;
  slider.max = String(isTimed ? Math.ceil(10 * last(moments).startS) / 10 : moments.length - 1);
  slider.step = isTimed ? "0.1" : "1";

  function show(atS: number): void {
    const place = Math.max(
      0,
      moments.findLastIndex(({ startS }) => startS <= atS + 1e-6),
    );
    const [moment, next] = [entry(moments, place), moments[place + 1]];
    const gone = next ? share(moment.startS, atS, next.startS, isTimed) : 0;
    stage(moment.poses, gone > 0 ? next?.poses : undefined, gone);
    const told = !isTimed && next && gone > 0.5 ? next : moment;
    if (caption.textContent !== told.caption) caption.textContent = told.caption;
    const said = clock ? secondsText(atS, dataOf(clock, "words")) : told.caption;
    if (clock) clock.textContent = said;
    slider.value = String(isTimed ? atS : moments.indexOf(told));
    slider.setAttribute("aria-valuetext", said);
  }

  return {
    show,
    slider,
    startsS: moments.map(({ startS }) => startS),
    timeOfSlider: () => Number(slider.value) * (isTimed ? 1 : stepS),
  };
}

/** How far one moment has become the next: with the clock all the way, else at the end of its stay. */
function share(fromS: number, atS: number, toS: number, isTimed: boolean): number {
  const gone = isTimed ? (atS - fromS) / (toS - fromS) : 1 - (toS - atS) / changeS;
  return Math.min(1, Math.max(0, gone));
}

function secondsText(atS: number, words: string): string {
  const digits = { minimumFractionDigits: 1, maximumFractionDigits: 1 };
  return words.replace("{seconds}", atS.toLocaleString(document.documentElement.lang, digits));
}

function readMoments(content: DocumentFragment): readonly PlayedMoment[] {
  return [...content.querySelectorAll<HTMLElement>("li")].map((one, place) => ({
    startS: one.dataset.time === undefined ? place * stepS : Number(one.dataset.time),
    caption: one.textContent ?? "",
    poses: readPoses(one.dataset.poses ?? ""),
  }));
}

/** What paints the poses: it keeps the marks of the moment before as far as they are of the same parts. */
function stageOf(moving: Element, parts: readonly Element[]) {
  let shown: { readonly part: number; readonly mark: Element }[] = [];
  return (poses: readonly Pose[], next: readonly Pose[] | undefined, gone: number): void => {
    const isSame = shown.length === poses.length && poses.every(({ part }, i) => shown[i]?.part === part);
    if (!isSame) {
      shown = poses.map(({ part }) => ({ part, mark: document.importNode(entry(parts, part), true) }));
      moving.replaceChildren(...shown.map(({ mark }) => mark));
    }
    for (const [i, [pose, { mark }]] of paired(poses, shown).entries()) {
      if (pose.kind === "mark") continue;
      const at = poseBetween(pose, next?.[i], gone);
      if (pose.kind === "path") mark.setAttribute("d", at);
      else mark.setAttribute("transform", `translate(${at})`);
    }
  };
}
