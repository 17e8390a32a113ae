import { paired } from "../core/lists.ts";
import { type Pose, poseBetween } from "../drawing/film/poses.ts";
import type { FilmSource } from "./film-source.ts";

interface Shown {
  readonly part: number;
  readonly mark: Element;
  at: string;
}

export interface Stage {
  /** Paints poses, a share of the way to the next ones where there are any. */
  paint(poses: readonly Pose[], next?: readonly Pose[], gone?: number): void;
  /** Makes the marks that poses will need. */
  ready(poses: readonly Pose[]): void;
}

/** What paints poses in a group: it keeps the marks of the moment before as far as they are of the same parts, and moves those that moved. */
export function stageOf(group: Element, partAt: FilmSource["part"]): Stage {
  let shown: Shown[] = [];
  /** Marks that are not shown, by the parts that they are of. */
  const spare = new Map<number, Element[]>();
  const put = (part: number, mark: Element) => spare.set(part, [...(spare.get(part) ?? []), mark]);
  const putParts = (poses: readonly Pose[]) => {
    // A knot's own stage may have been at work.
    if (shown.some(({ mark }) => mark.parentNode !== group)) shown = [];
    if (shown.length === 0) group.replaceChildren();
    for (const { part, mark } of shown.splice(poses.length)) {
      mark.remove();
      put(part, mark);
    }
    for (const [i, { part }] of poses.entries()) {
      const before = shown[i];
      if (before?.part === part) continue;
      const mark = spare.get(part)?.pop() ?? partAt(part);
      if (before) {
        before.mark.replaceWith(mark);
        put(before.part, before.mark);
      } else group.append(mark);
      shown[i] = { part, mark, at: "" };
    }
  };
  return {
    paint: (poses, next, gone = 0) => {
      putParts(poses);
      for (const [i, [pose, one]] of paired(poses, shown).entries()) {
        if (pose.kind === "mark") continue;
        const at = poseBetween(pose, next?.[i], gone);
        if (at === one.at) continue;
        one.at = at;
        if (pose.kind === "path") one.mark.setAttribute("d", at);
        else one.mark.setAttribute("transform", `translate(${at})`);
      }
    },
    ready: (poses) => {
      const known = new Set(shown.map(({ part }) => part));
      for (const { part } of poses) {
        if (known.has(part) || spare.has(part)) continue;
        put(part, partAt(part));
      }
    },
  };
}
