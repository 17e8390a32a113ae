import { entry, last, paired } from "../core/lists.ts";
import { type Pose, poseBetween } from "../drawing/film/poses.ts";
import { knotStage } from "./film-knot.ts";
import type { FilmSource } from "./film-source.ts";
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

/** Of many small steps each becomes the next all the time. */
function paceOf({ knot, stepS }: FilmSource): Pace {
  if (knot) return tied;
  return stepS === undefined ? usual : { ...usual, stepS, changeS: stepS };
}

/** A time of a film: its moment, and how far that has become the next. */
interface At {
  readonly atS: number;
  readonly place: number;
  readonly gone: number;
}

/**
 * What shows a film at a time: its picture, its caption, its clock and the place of its slider. It writes what is other than
 * before, and reads nothing that the page would have to be laid out for. Words and picture take turns, a frame each, as both
 * would take too long for one.
 */
export function filmScreen(player: HTMLElement, source: FilmSource) {
  const pace = paceOf(source);
  const startsS = source.moments.map(({ timeS }, place) => timeS ?? place * pace.stepS);
  const slider = partWithin<HTMLInputElement>(player, "input");
  const clock = player.querySelector<HTMLElement>(".film-clock");
  const write = writer(player, source, clock ? { clock } : { toldFrom: pace.toldFrom });
  const draw = painter(player, source);
  slider.max = String(clock ? Math.ceil(10 * last(startsS)) / 10 : startsS.length - 1);
  slider.step = clock ? "0.1" : "1";

  const at = (atS: number): At => {
    const place = Math.max(
      0,
      startsS.findLastIndex((startS) => startS <= atS + 1e-6),
    );
    const nextS = startsS[place + 1];
    const changeS = clock ? undefined : pace.changeS;
    return { atS, place, gone: nextS ? share(entry(startsS, place), atS, nextS, changeS) : 0 };
  };
  let isPicturesTurn = false;
  return {
    /** Does one of what there is to do for a time, and says whether there was any. */
    show: (atS: number): boolean => {
      const now = at(atS);
      const hasDrawn = isPicturesTurn && draw(now);
      isPicturesTurn = !hasDrawn && write(now);
      return hasDrawn || isPicturesTurn || draw(now);
    },
    slider,
    startsS,
    slide: (step: number) => {
      slider.value = String(step);
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    },
    timeOfSlider: () => Number(slider.value) * (clock ? 1 : pace.stepS),
  };
}

/** Where a film's time is told: on its clock, or by its steps, the next from so much of a change on. */
type ToldBy = { readonly clock: HTMLElement } | { readonly clock?: undefined; readonly toldFrom: number };

/** What writes the words of a film, and says whether there were any to write. */
function writer(player: HTMLElement, { moments }: FilmSource, by: ToldBy): (now: At) => boolean {
  const caption = partWithin(player, ".film-caption");
  const slider = partWithin<HTMLInputElement>(player, "input");
  const { clock } = by;
  const seconds = clock && secondsIn(dataOf(clock, "words"));
  const writeCaption = writes((text) => {
    caption.textContent = text;
  });
  const writeSaid = writes((text) => {
    if (clock) clock.textContent = text;
    slider.setAttribute("aria-valuetext", text);
  });
  return ({ atS, place, gone }) => {
    const told = by.clock === undefined && gone > by.toldFrom ? place + 1 : place;
    const moment = entry(moments, told);
    // As the slider itself would write it.
    const value = String(clock ? Number(atS.toFixed(1)) : told);
    const isMoved = slider.value !== value;
    if (isMoved) slider.value = value;
    const isTold = writeCaption(moment.caption);
    return writeSaid(seconds?.(atS) ?? moment.said) || isTold || isMoved;
  };
}

/** What paints the picture of a film, and says whether it was another. */
function painter(player: HTMLElement, { moments, part, knot }: FilmSource): (now: At) => boolean {
  const moving = partWithin(player, ".film-moving");
  const posed = stageOf(moving, part);
  const tie = knot ? knotStage(moving, knot) : undefined;
  let painted = "";
  return ({ place, gone }) => {
    const now = `${place} ${gone}`;
    if (now === painted) return false;
    painted = now;
    const isTied = tie?.(gone > 0 ? place + 1 : place, gone > 0 ? gone : 1);
    if (!isTied) posed(entry(moments, place).poses, gone > 0 ? moments[place + 1]?.poses : undefined, gone);
    return true;
  };
}

/** Writes what is not written already, and says whether it did. */
function writes(write: (text: string) => void): (text: string) => boolean {
  let written: string | undefined;
  return (text) => {
    if (text === written) return false;
    written = text;
    write(text);
    return true;
  };
}

/** How far one moment has become the next: with the clock all the way, else in so many seconds at the end of its stay. */
function share(fromS: number, atS: number, toS: number, changeS = toS - fromS): number {
  const gone = 1 - (toS - atS) / changeS;
  return Math.min(1, Math.max(0, gone));
}

function secondsIn(words: string): (atS: number) => string {
  const digits = { minimumFractionDigits: 1, maximumFractionDigits: 1 };
  const { format } = new Intl.NumberFormat(document.documentElement.lang, digits);
  return (atS) => words.replace("{seconds}", format(atS));
}

interface Shown {
  readonly part: number;
  readonly mark: Element;
  at: string;
}

/** What paints the poses: it keeps the marks of the moment before as far as they are of the same parts, and moves those that moved. */
function stageOf(moving: Element, partAt: FilmSource["part"]) {
  let shown: Shown[] = [];
  const putParts = (poses: readonly Pose[]) => {
    // A knot's own stage may have been at work.
    if (shown.some(({ mark }) => mark.parentNode !== moving)) shown = [];
    if (shown.length === 0) moving.replaceChildren();
    for (const { mark } of shown.splice(poses.length)) mark.remove();
    for (const [i, { part }] of poses.entries()) {
      const before = shown[i];
      if (before?.part === part) continue;
      const mark = partAt(part);
      if (before) before.mark.replaceWith(mark);
      else moving.append(mark);
      shown[i] = { part, mark, at: "" };
    }
  };
  return (poses: readonly Pose[], next: readonly Pose[] | undefined, gone: number): void => {
    putParts(poses);
    for (const [i, [pose, one]] of paired(poses, shown).entries()) {
      if (pose.kind === "mark") continue;
      const at = poseBetween(pose, next?.[i], gone);
      if (at === one.at) continue;
      one.at = at;
      if (pose.kind === "path") one.mark.setAttribute("d", at);
      else one.mark.setAttribute("transform", `translate(${at})`);
    }
  };
}
