import type { Min } from "../units.ts";

/** A lesson as it takes its time in a session. */
export interface SessionLesson {
  readonly id: string;
  readonly minutes: Min;
  /** Ids of the lessons that must have been held. */
  readonly after: readonly string[];
  /** It is never the one to be left out. */
  readonly mustStay: boolean;
}

/** What a session has to hold between its first minute and its last. */
interface SessionDay {
  /** Minutes after midnight. */
  readonly fromMin: Min;
  /** How long it is in all. */
  readonly roomMin: Min;
  /** To arrive and set up, and to pack up and see everybody off. */
  readonly setUpMin: Min;
  readonly packUpMin: Min;
  /** The least that learners are to fish besides their lessons. */
  readonly leastFishingMin: Min;
  /** In the order in which they are held. */
  readonly lessons: readonly SessionLesson[];
}

/** One part of a session by the clock, in minutes after midnight. */
export interface RunBlock {
  readonly what: "set up" | "lesson" | "fishing" | "pack up";
  /** Of a lesson. */
  readonly id?: string;
  readonly fromMin: Min;
  readonly toMin: Min;
}

/** A session by the clock. */
export interface RunSheet {
  /** One after the other, without a gap; past the end of the session where not everything fits. */
  readonly blocks: readonly RunBlock[];
  /** By how much it is too long; 0 where it fits. */
  readonly overMin: Min;
  /** Lessons to leave out so that it fits; none where nothing is over, or where no lessons can go. */
  readonly leaveOut: readonly string[];
}

/**
 * Everything of a session by the clock: setting up, the lessons, fishing for all the time that is left, packing up.
 * Where it does not fit, fishing has its least, and the sheet says by how much it is over.
 */
export function runSheet(day: SessionDay): RunSheet {
  const taughtMin = day.lessons.reduce((sum, { minutes }) => sum + minutes, 0);
  const leftMin = day.roomMin - day.setUpMin - day.packUpMin - taughtMin;
  const overMin = Math.max(0, day.leastFishingMin - leftMin);
  const parts: readonly (Pick<RunBlock, "what" | "id"> & { readonly minutes: Min })[] = [
    { what: "set up", minutes: day.setUpMin },
    ...day.lessons.map(({ id, minutes }) => ({ what: "lesson" as const, id, minutes })),
    { what: "fishing", minutes: Math.max(leftMin, day.leastFishingMin) },
    { what: "pack up", minutes: day.packUpMin },
  ];
  let atMin = day.fromMin;
  const blocks = parts
    .filter(({ minutes }) => minutes > 0)
    .map(({ minutes, ...part }): RunBlock => {
      const fromMin = atMin;
      atMin += minutes;
      return { ...part, fromMin, toMin: atMin };
    });
  return { blocks, overMin, leaveOut: overMin > 0 ? leastToLeaveOut(day.lessons, overMin) : [] };
}

/**
 * The lessons that win so many minutes with the least time lost, the later ones where that is equal. None of them must
 * stay, and none is needed by one that stays.
 *
 * @returns ids in the order of the session; none where even all that may go are not enough
 */
function leastToLeaveOut(lessons: readonly SessionLesson[], overMin: Min): readonly string[] {
  interface Choice {
    readonly ids: readonly string[];
    readonly minutes: Min;
  }
  let best: Choice | undefined;
  // From the last lesson on: a lesson may go where all that need it go, and those come after it.
  const choose = (at: number, { ids, minutes }: Choice): void => {
    if (best && minutes >= best.minutes) return;
    if (minutes >= overMin) {
      best = { ids, minutes };
      return;
    }
    const lesson = lessons[at];
    if (!lesson) return;
    const isFree =
      !lesson.mustStay && !lessons.some(({ id, after }) => after.includes(lesson.id) && !ids.includes(id));
    if (isFree) choose(at - 1, { ids: [lesson.id, ...ids], minutes: minutes + lesson.minutes });
    choose(at - 1, { ids, minutes });
  };
  choose(lessons.length - 1, { ids: [], minutes: 0 });
  return best?.ids ?? [];
}
