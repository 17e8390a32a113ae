import { last } from "../../core/lists.ts";
import type { Sink } from "../../core/sink/sink-of-rig.ts";
import type { S } from "../../core/units.ts";
import type { SisterShot } from "../../model/in-water.ts";
import type { SolvedDepth } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import { sooner } from "../plots/sooner.ts";
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

/** Which is there sooner, by the seconds that are told of each. */
function result(sides: readonly SinkingSide[], { words, figures }: DrawingKit): string {
  const soon = soonerOf(sides);
  if (!soon) return words("drawing.film.sinking.alike");
  return words("drawing.film.sinking.sooner", { name: soon.one.name, time: figures.time(soon.gainS) });
}
