import { entry, last, rising } from "../../core/lists.ts";
import type { Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import type { SisterShot } from "../../model/in-water.ts";
import type { SolvedDepth } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import { type Run, together } from "../labels/label-text.ts";
import { sooner, tellSooner } from "../plots/sooner.ts";
import { lineAt } from "./line-at.ts";

/** One of the two that fall. */
export interface SinkingSide {
  readonly name: string;
  readonly sink: Sink;
  readonly shot: readonly SisterShot[];
}

export const endS = (sink: Sink): S => last(sink.line.moments).timeS;

/** Whether the bait ends clear of the bed, as the rig is set. */
export const hangsClear = ({ overdepthMm }: SolvedDepth): boolean => overdepthMm < 0;

/** When the bait of the sooner one is there. */
export const soonestEndS = (sides: readonly SinkingSide[]): S =>
  Math.min(...sides.map(({ sink }) => endS(sink)));

/**
 * The clock at a moment, as near as what is told beside it: to the tenth of a second while both fall, but never past the
 * whole second that is told of the sooner one; in whole seconds from then on.
 */
export function tellClock(sides: readonly SinkingSide[], timeS: S, { words, figures }: DrawingKit): string {
  const soonestS = soonestEndS(sides);
  if (timeS >= soonestS) return figures.time(timeS);
  const seconds = figures.number(Math.min(timeS, Math.round(soonestS)), 1);
  return words("drawing.film.seconds", { seconds });
}

export function tell(sides: readonly SinkingSide[], timeS: S, depth: SolvedDepth, kit: DrawingKit): string {
  const { words, figures } = kit;
  const told = sides.map(({ name, sink }) => {
    if (timeS < endS(sink)) {
      const gap = figures.shortGap(last(lineAt(sink.line, timeS)).place.yMm);
      return words("drawing.film.sinking.on-the-way", { name, gap });
    }
    if (!hangsClear(depth)) return words("drawing.film.sinking.down", { name });
    return words("drawing.film.sinking.hangs", { name, gap: figures.shortGap(-depth.overdepthMm) });
  });
  const [one, other] = told;
  const time = tellClock(sides, timeS, kit);
  const said = words("drawing.film.sinking.moment", { time, one: one ?? "", other: other ?? "" });
  return timeS < Math.max(...sides.map(({ sink }) => endS(sink))) ? said : `${said} ${result(sides, kit)}`;
}

export const soonerOf = (sides: readonly SinkingSide[]) =>
  sooner(sides.map(({ name, sink }) => ({ name, endS: endS(sink) })));

/** Whether one of them lands in a heap and the other does not. */
export const landsApart = (sides: readonly SinkingSide[]): boolean =>
  new Set(sides.map(({ sink }) => sink.landing)).size > 1;

/** The even times of both, as far apart as the one that has them less often, and the moments when a bait is down. */
export function timesOf(sides: readonly SinkingSide[]): readonly S[] {
  const gapS = Math.max(...sides.map(({ sink }) => entry(sink.line.moments, 1).timeS));
  const ends = sides.map(({ sink }) => endS(sink));
  const even = Array.from({ length: Math.ceil(Math.max(...ends) / gapS) }, (_, i) => i * gapS);
  return rising([...even, ...ends]);
}

const baitDeepMm = ({ sink }: SinkingSide, timeS: S): Mm => last(lineAt(sink.line, timeS)).place.yMm;

/** Of the times of a film that when the baits are furthest apart in depth, while both still fall. */
export function mostApartS(sides: readonly SinkingSide[]): S {
  const soonestS = soonestEndS(sides);
  const apartMm = (timeS: S) => {
    const deep = sides.map((side) => baitDeepMm(side, timeS));
    return Math.max(...deep) - Math.min(...deep);
  };
  return timesOf(sides)
    .filter((timeS) => timeS < 0.9 * soonestS)
    .reduce((most, timeS) => (apartMm(timeS) > apartMm(most) ? timeS : most), 0);
}

/** Where both baits are when they are furthest apart, by their names; nothing where they are told alike then, too. */
function apartOnTheWay(sides: readonly SinkingSide[], kit: DrawingKit) {
  const timeS = mostApartS(sides);
  const [one, other] = sides.map((side) => ({
    name: side.name,
    gap: kit.figures.shortGap(baitDeepMm(side, timeS)),
  }));
  if (!one || !other || one.gap === other.gap) return undefined;
  return { time: tellClock(sides, timeS, kit), one, other };
}

/** Which is there sooner, by the seconds that are told of each; and that a heap is none the better for it. */
function result(sides: readonly SinkingSide[], kit: DrawingKit): string {
  const { words, figures } = kit;
  const soon = soonerOf(sides);
  const said = soon
    ? words("drawing.film.sinking.sooner", { name: soon.one.name, time: figures.time(soon.gainS) })
    : [words("drawing.film.sinking.alike"), ...toldApart(sides, kit)].join(" ");
  return landsApart(sides) ? `${said} ${words("drawing.film.sinking.tangles")}` : said;
}

/** Where baits that end at one time were further apart, in a sentence. */
function toldApart(sides: readonly SinkingSide[], kit: DrawingKit): string[] {
  const apart = apartOnTheWay(sides, kit);
  if (!apart) return [];
  const { time, one, other } = apart;
  return [
    kit.words("drawing.film.sinking.apart", {
      time,
      one: one.name,
      oneGap: one.gap,
      other: other.name,
      otherGap: other.gap,
    }),
  ];
}

/** The same in a few words, as beside the curves of the fall. */
export function resultRuns(sides: readonly SinkingSide[], kit: DrawingKit): Run[] {
  const said = tellSooner(
    sides.map(({ name, sink }) => ({ name, endS: endS(sink) })),
    kit,
  );
  const apart = soonerOf(sides) ? undefined : apartOnTheWay(sides, kit);
  const onTheWay: Run[] = apart
    ? [
        {
          text: kit.words("drawing.film.sinking.apart-in-short", {
            time: together(apart.time),
            one: together(apart.one.gap),
            other: together(apart.other.gap),
          }),
        },
      ]
    : [];
  const isFollowed = apart !== undefined || landsApart(sides);
  const first: Run = { text: isFollowed ? `${said};` : said, face: "bold" };
  if (!landsApart(sides)) return [first, ...onTheWay];
  return [
    first,
    ...onTheWay.map((run) => ({ ...run, text: `${run.text};` })),
    { text: kit.words("drawing.film.sinking.heap-tangles"), ink: "accent" },
  ];
}
