import { paired } from "../core/lists.ts";
import { type Pose, poseBetween } from "../drawing/film/poses.ts";
import { alike } from "./alike.ts";
import { lookOf, type MovingPart, type PartTag } from "./film-part.ts";
import type { FilmSource } from "./film-source.ts";

/** A part as it stands in the picture, to be seen or not. */
interface Mark extends MovingPart {
  readonly part: number;
  readonly tag: PartTag;
  at: string;
  /** Where it stands, unless it is on its way to another. */
  stands: Pose | undefined;
  isHidden: boolean;
}

/** So many marks are put in, or taken out, at a time: words have to be laid out, which takes a slow phone long. */
const mostAtOnce = 6;
/** So many may stay in the picture hidden, should they be wanted again. */
const mostHidden = 40;

export interface Stage {
  /** Paints poses, a share of the way to the next ones where there are any. */
  paint(poses: readonly Pose[], next?: readonly Pose[], gone?: number): void;
  /** Whether these are what it painted last. */
  shows(poses: readonly Pose[]): boolean;
  /**
   * Puts in some of the marks that poses lack, hidden, so that to paint them is to show what is laid out already; says whether
   * there were any.
   */
  putIn(poses: readonly Pose[]): boolean;
  /** Takes out some of what is neither shown nor in poses, where it has become much; says whether there was any. */
  takeOut(poses: readonly Pose[]): boolean;
  /** Makes the marks that poses will need. */
  ready(poses: readonly Pose[]): void;
}

/**
 * What paints poses in a group: it keeps the marks of other moments as far as they are of the same parts, moves those that
 * moved, and hides what is not to be seen.
 */
export function stageOf(group: Element, partAt: FilmSource["part"]): Stage {
  const { marks, standFor, putIn, takeOut, ready } = marksIn(group, partAt);
  let painted: readonly Pose[] | undefined;
  let shown: readonly Mark[] = [];
  /** What they become, and what of it each of them goes to. */
  let becoming: readonly Pose[] | undefined;
  let ahead: readonly (Pose | undefined)[] = [];

  const show = (poses: readonly Pose[]) => {
    putIn(poses, poses.length);
    shown = standFor(poses).flatMap((mark) => mark ?? []);
    const seen = new Set(shown);
    for (const mark of marks) hide(mark, !seen.has(mark));
    painted = poses;
    becoming = undefined;
    ahead = [];
  };
  return {
    paint: (poses, next, gone = 0) => {
      if (poses !== painted) show(poses);
      if (next !== becoming) ahead = next ? goingTo(poses, next) : [];
      becoming = next;
      for (const [i, [pose, mark]] of paired(poses, shown).entries()) move(mark, pose, ahead[i], gone);
    },
    shows: (poses) => poses === painted,
    // The first picture comes whole, as there is none to be seen meanwhile.
    putIn: (poses) => painted !== undefined && putIn(poses, mostAtOnce) > 0,
    takeOut: (poses) => takeOut(new Set([...shown, ...standFor(poses)])) > 0,
    ready,
  };
}

/** The marks that are in a group, and what puts more in. */
function marksIn(group: Element, partAt: FilmSource["part"]) {
  /** As they lie over one another. */
  const marks: Mark[] = [];
  /** Marks that are not in the picture, by the parts that they are of. */
  const spare = new Map<number, MovingPart[]>();
  const put = (key: number, part: MovingPart) => spare.set(key, [...(spare.get(key) ?? []), part]);
  const { standFor, forget } = finderIn(marks);
  return {
    marks,
    standFor,
    /** At most so many of those that poses lack. */
    putIn: (poses: readonly Pose[], most: number): number => {
      let count = 0;
      let over = 0;
      const there = standFor(poses);
      for (const [i, pose] of poses.entries()) {
        const mark = there[i];
        if (mark) over = marks.indexOf(mark) + 1;
        else if (count < most) {
          const { tag } = lookOf(pose);
          const { element, put } = spare.get(keyOf(pose))?.pop() ?? partAt(pose.part, tag);
          const made = { part: pose.part, tag, element, put, at: "", stands: undefined, isHidden: false };
          hide(made, true);
          move(made, pose, undefined, 0);
          group.insertBefore(element, marks[over]?.element ?? null);
          marks.splice(over++, 0, made);
          count++;
        }
      }
      if (count > 0) forget();
      return count;
    },
    takeOut: (wanted: ReadonlySet<Mark | undefined>): number => {
      const idle = marks.filter((mark) => !wanted.has(mark));
      const out = idle.slice(0, Math.max(0, Math.min(mostAtOnce, idle.length - mostHidden)));
      for (const mark of out) {
        mark.element.remove();
        marks.splice(marks.indexOf(mark), 1);
        put(keyOf(mark), mark);
      }
      if (out.length > 0) forget();
      return out.length;
    },
    ready: (poses: readonly Pose[]): void => {
      const known = new Set(marks.map(keyOf));
      for (const pose of poses) {
        const key = keyOf(pose);
        if (known.has(key) || spare.has(key)) continue;
        put(key, partAt(pose.part, lookOf(pose).tag));
      }
    },
  };
}

/** What finds the marks that stand for poses, until others are there than before. */
function finderIn(marks: readonly Mark[]) {
  /** While a film runs it is asked each frame for a moment and for the next one. */
  let found = new WeakMap<readonly Pose[], readonly (Mark | undefined)[]>();
  return {
    standFor: (poses: readonly Pose[]) => {
      const known = found.get(poses);
      if (known) return known;
      const places = alike(marks.map(keyOf), poses.map(keyOf));
      const stand = places.map((place) => (place === undefined ? undefined : marks[place]));
      found.set(poses, stand);
      return stand;
    },
    forget: () => {
      found = new WeakMap();
    },
  };
}

/** For each of some poses the one that it moves to, where there is such a one of its part. */
function goingTo(poses: readonly Pose[], next: readonly Pose[]): (Pose | undefined)[] {
  const found = alike(next.map(keyOf), poses.map(keyOf));
  return poses.map((pose, i) => {
    const to = next[found[i] ?? -1];
    return to?.numbers.some((value, at) => value !== pose.numbers[at]) ? to : undefined;
  });
}

const partTags: readonly PartTag[] = ["path", "polyline", "polygon", "group", "mark"];

/** Which mark of which part it is, as a number. */
const keyOf = (one: Pose | Mark) =>
  partTags.length * one.part + partTags.indexOf(("tag" in one ? one : lookOf(one)).tag);

function hide(mark: Mark, isHidden: boolean): void {
  if (mark.isHidden === isHidden) return;
  mark.isHidden = isHidden;
  if (isHidden) mark.element.setAttribute("visibility", "hidden");
  else mark.element.removeAttribute("visibility");
}

function move(mark: Mark, pose: Pose, next: Pose | undefined, gone: number): void {
  if (pose.kind === "mark" || (!next && mark.stands === pose)) return;
  mark.stands = next ? undefined : pose;
  const at = poseBetween(pose, next, gone, lookOf(pose).letters);
  if (at === mark.at) return;
  mark.at = at;
  mark.put(at);
}
