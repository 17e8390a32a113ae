import { entry, last, paired } from "../core/lists.ts";
import { type Pose, poseBetween, readPoses } from "../drawing/film/poses.ts";
import { knotStage } from "./film-knot.ts";
import { dataOf, partWithin } from "./page-parts.ts";

interface Pace {
  /** A step of a person stays this long, and takes so much of it to become the next [s]. */
  readonly stepS: number;
  readonly changeS: number;
  /** Share of the change from which on the next step's words are shown. */
  readonly toldFrom: number;
}

const usual: Pace = { stepS: 2.4, changeS: 0.6, toldFrom: 0.5 };
/** The way of a cord is followed with the eyes, and its words say what is being done. */
const tied: Pace = { stepS: 6, changeS: 3.5, toldFrom: 0 };

interface PlayedMoment {
  readonly startS: number;
  readonly caption: string;
  /** The caption as a voice says it. */
  readonly said: string;
  readonly poses: readonly Pose[];
}

/** Of many small steps each becomes the next all the time. */
function paceOf(step: string | undefined): Pace {
  return step === undefined ? usual : { ...usual, stepS: Number(step), changeS: Number(step) };
}

/** What shows a film at a time: its picture, its caption, its clock and the place of its slider. */
export function filmScreen(player: HTMLElement, content: DocumentFragment) {
  const knot = content.querySelector(".film-tied")?.textContent;
  const pace = knot ? tied : paceOf(partWithin(content, "ol").dataset.step);
  const moments = readMoments(content, pace);
  const moving = partWithin(player, ".film-moving");
  const posed = stageOf(moving, [...partWithin(content, ".film-parts").children]);
  const tie = knot ? knotStage(moving, knot) : undefined;
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
    const gone = next ? share(moment.startS, atS, next.startS, isTimed ? undefined : pace.changeS) : 0;
    if (!tie?.(gone > 0 ? place + 1 : place, gone > 0 ? gone : 1))
      posed(moment.poses, gone > 0 ? next?.poses : undefined, gone);
    const told = !isTimed && next && gone > pace.toldFrom ? next : moment;
    if (caption.textContent !== told.caption) caption.textContent = told.caption;
    const said = clock ? secondsText(atS, dataOf(clock, "words")) : told.said;
    if (clock) clock.textContent = said;
    slider.value = String(isTimed ? atS : moments.indexOf(told));
    slider.setAttribute("aria-valuetext", said);
  }

  return {
    show,
    slider,
    startsS: moments.map(({ startS }) => startS),
    slide: (step: number) => {
      slider.value = String(step);
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    },
    timeOfSlider: () => Number(slider.value) * (isTimed ? 1 : pace.stepS),
  };
}

/** How far one moment has become the next: with the clock all the way, else in so many seconds at the end of its stay. */
function share(fromS: number, atS: number, toS: number, changeS = toS - fromS): number {
  const gone = 1 - (toS - atS) / changeS;
  return Math.min(1, Math.max(0, gone));
}

function secondsText(atS: number, words: string): string {
  const digits = { minimumFractionDigits: 1, maximumFractionDigits: 1 };
  return words.replace("{seconds}", atS.toLocaleString(document.documentElement.lang, digits));
}

function readMoments(content: DocumentFragment, { stepS }: Pace): readonly PlayedMoment[] {
  return [...content.querySelectorAll<HTMLElement>("li")].map((one, place) => ({
    startS: one.dataset.time === undefined ? place * stepS : Number(one.dataset.time),
    caption: one.textContent ?? "",
    said: one.dataset.said ?? one.textContent ?? "",
    poses: readPoses(one.dataset.poses ?? ""),
  }));
}

/** What paints the poses: it keeps the marks of the moment before as far as they are of the same parts. */
function stageOf(moving: Element, parts: readonly Element[]) {
  let shown: { readonly part: number; readonly mark: Element }[] = [];
  return (poses: readonly Pose[], next: readonly Pose[] | undefined, gone: number): void => {
    const isSame =
      moving.childElementCount === shown.length &&
      shown.length === poses.length &&
      poses.every(({ part }, i) => shown[i]?.part === part);
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
