import { last } from "../../core/lists.ts";
import type { Sink } from "../../core/sink/sink-of-rig.ts";
import type { S } from "../../core/units.ts";
import type { SisterShot } from "../../model/in-water.ts";
import type { SolvedDepth } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import type { Run } from "../labels/label-text.ts";
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

/** When the baits are furthest apart in depth, while both still fall. */
export function mostApartS(sides: readonly SinkingSide[]): S {
  const soonestS = soonestEndS(sides);
  const times = sides.flatMap(({ sink }) => sink.line.moments.map(({ timeS }) => timeS));
  const apartMm = (timeS: S) => {
    const deep = sides.map(({ sink }) => last(lineAt(sink.line, timeS)).place.yMm);
    return Math.max(...deep) - Math.min(...deep);
  };
  return times
    .filter((timeS) => timeS < 0.9 * soonestS)
    .reduce((most, timeS) => (apartMm(timeS) > apartMm(most) ? timeS : most), 0.4 * soonestS);
}

/** Which is there sooner, by the seconds that are told of each; and that a heap is none the better for it. */
function result(sides: readonly SinkingSide[], { words, figures }: DrawingKit): string {
  const soon = soonerOf(sides);
  const said = soon
    ? words("drawing.film.sinking.sooner", { name: soon.one.name, time: figures.time(soon.gainS) })
    : words("drawing.film.sinking.alike");
  return landsApart(sides) ? `${said} ${words("drawing.film.sinking.tangles")}` : said;
}

/** The same in a few words, as beside the curves of the fall. */
export function resultRuns(sides: readonly SinkingSide[], kit: DrawingKit): Run[] {
  const said = tellSooner(
    sides.map(({ name, sink }) => ({ name, endS: endS(sink) })),
    kit,
  );
  if (!landsApart(sides)) return [{ text: said, face: "bold" }];
  return [
    { text: `${said};`, face: "bold" },
    { text: kit.words("drawing.film.sinking.heap-tangles"), ink: "accent" },
  ];
}
