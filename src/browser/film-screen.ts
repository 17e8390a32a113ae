import { entry, last } from "../core/lists.ts";
import { knotStage } from "./film-knot.ts";
import type { FilmSource, SourceMoment } from "./film-source.ts";
import type { Stage } from "./film-stage.ts";
import { anotherTask } from "./give-way.ts";
import { dataOf, partWithin, writeAttribute, writeText } from "./page-parts.ts";

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
 * before, and reads nothing that the page would have to be laid out for. Picture, caption and time take turns, a frame each, as
 * all of them would take too long for one; while it runs, a turn puts in what the next moment will show.
 */
export function filmScreen(player: HTMLElement, source: FilmSource, stage: Stage) {
  const pace = paceOf(source);
  const startsS = source.moments.map(({ timeS }, place) => timeS ?? place * pace.stepS);
  const slider = partWithin<HTMLInputElement>(player, "input");
  const clock = player.querySelector<HTMLElement>(".film-clock");
  const writers = writersOf(player, source, clock ? { clock } : { toldFrom: pace.toldFrom });
  const draw = painter(player, source, stage);
  const readyNext = ({ place }: At, runs: boolean) => {
    // What is still being put in is not to be taken out meanwhile.
    if (!stage.shows(entry(source.moments, place).poses)) return false;
    const next = (runs && source.moments[place + 1]?.poses) || [];
    return stage.putIn(next) || stage.takeOut(next);
  };
  // Room for the longest is there from the start, or what stands below would jump.
  if (source.longest !== undefined) partWithin(player, ".film-caption").dataset.longest = source.longest;
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
  const jobs = [draw, ...writers, readyNext];
  let turn = 0;
  let readied: number | undefined;
  return {
    /** Does one of what there is to do for a time, and says whether there was any. */
    show: (atS: number, runs: boolean): boolean => {
      const now = at(atS);
      const due = jobs.map((_, i) => (turn + i) % jobs.length).find((job) => entry(jobs, job)(now, runs));
      if (due !== undefined) turn = due + 1;
      return due !== undefined;
    },
    /** Makes ready what the moment of a time and the one after it are told and drawn with, in tasks between the frames, which have no time for it. */
    readySoon: async (atS: number): Promise<void> => {
      const { place } = at(atS);
      if (place === readied) return;
      readied = place;
      for (const moment of source.moments.slice(place, place + 2)) {
        await anotherTask();
        readyMoment(moment, stage);
      }
    },
    startsS,
    /** The time of a value of the slider. */
    timeOf: (value: string) => Number(value) * (clock ? 1 : pace.stepS),
  };
}

function readyMoment(moment: SourceMoment, stage: Stage): void {
  moment.ready?.();
  stage.ready(moment.poses);
}

/** Where a film's time is told: on its clock, or by its steps, the next from so much of a change on. */
type ToldBy = { readonly clock: HTMLElement } | { readonly clock?: undefined; readonly toldFrom: number };

/** What writes the caption of a film and what its time; each says whether there was any to write. */
function writersOf(player: HTMLElement, source: FilmSource, by: ToldBy): ((now: At) => boolean)[] {
  const { moments } = source;
  const caption = partWithin(player, ".film-caption");
  const slider = partWithin<HTMLInputElement>(player, "input");
  const { clock } = by;
  const seconds = clock && secondsIn(dataOf(clock, "words"), source.wholeFromS);
  const toldAt = ({ place, gone }: At) => (by.clock === undefined && gone > by.toldFrom ? place + 1 : place);
  return [
    (now) => writeText(caption, entry(moments, toldAt(now)).caption),
    (now) => {
      // As the slider itself would write it.
      const value = String(clock ? Number(now.atS.toFixed(1)) : toldAt(now));
      const isMoved = slider.value !== value;
      if (isMoved) slider.value = value;
      const said = seconds?.(now.atS) ?? entry(moments, toldAt(now)).said;
      writeAttribute(slider, "aria-valuetext", said);
      return (clock && writeText(clock, said)) || isMoved;
    },
  ];
}

/** What paints the picture of a film, and says whether it was another. */
function painter(player: HTMLElement, { moments, knot }: FilmSource, stage: Stage): (now: At) => boolean {
  const tie = knot ? knotStage(partWithin(player, ".film-moving"), knot) : undefined;
  let painted = "";
  return ({ place, gone }) => {
    const now = `${place} ${gone}`;
    if (now === painted) return false;
    const { poses } = entry(moments, place);
    if (stage.putIn(poses)) return true;
    painted = now;
    tie?.(place, gone);
    stage.paint(poses, gone > 0 ? moments[place + 1]?.poses : undefined, gone);
    return true;
  };
}

/** How far one moment has become the next: with the clock all the way, else in so many seconds at the end of its stay. */
function share(fromS: number, atS: number, toS: number, changeS = toS - fromS): number {
  const gone = 1 - (toS - atS) / changeS;
  return Math.min(1, Math.max(0, gone));
}

/** What writes a language's numbers, by their digits after the point: kept, as a browser takes long to make it. */
const writers: Intl.NumberFormat[] = [];
function written(seconds: number, minimumFractionDigits: 0 | 1): string {
  const style = { minimumFractionDigits, maximumFractionDigits: minimumFractionDigits };
  writers[minimumFractionDigits] ??= new Intl.NumberFormat(document.documentElement.lang, style);
  return writers[minimumFractionDigits].format(seconds);
}

/** As the film's captions tell a time: to the tenth, but not past the whole second from which on they tell whole ones. */
function secondsIn(words: string, wholeFromS = Number.POSITIVE_INFINITY): (atS: number) => string {
  return (atS) =>
    words.replace(
      "{seconds}",
      atS < wholeFromS ? written(Math.min(atS, Math.round(wholeFromS)), 1) : written(atS, 0),
    );
}
