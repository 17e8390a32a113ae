import { paired } from "../core/lists.ts";
import { paintTying, tying } from "../drawing/knots/tying.ts";
import type { Item } from "../drawing/model.ts";
import { itemToSvg } from "../drawing/svg-items.ts";
import type { KnotPicture } from "../model/knot-picture.ts";
import { svgMarks } from "./svg-marks.ts";

/** The mark of each item that has been drawn. */
type Marks = WeakMap<Item, Element>;

/** So much of a step is made ready before it is shown: all of it that lies already. */
const readyShare = 0.01;

/** What draws a knot with a share of a step's next one tied, and nothing once its steps are over. */
export function knotStage(moving: Element, json: string) {
  const knot = JSON.parse(json) as Pick<KnotPicture, "frame" | "steps">;
  const [, , widthMm = 0, heightMm = 0] = (moving.parentElement?.getAttribute("viewBox") ?? "")
    .split(" ")
    .map(Number);
  const group = document.createElementNS("http://www.w3.org/2000/svg", "g");
  moving.append(group);
  const marks: Marks = new WeakMap();
  const ready = new Set<number>();
  let steps: ReturnType<typeof tying> | undefined;
  return (place: number, gone: number): void => {
    steps ??= tying(knot, { widthMm, heightMm });
    const [step, next] = [steps[place], steps[place + 1]];
    const isOnTheWay = gone > 0 && next !== undefined;
    const tied = isOnTheWay ? next : step;
    putMarks(group, tied ? paintTying(tied, isOnTheWay ? gone : 1) : [], marks);
    // While a step is looked at, the next is made ready: its first frame would take too long.
    if (!isOnTheWay && next && !ready.has(place)) {
      ready.add(place);
      setTimeout(() => makeMarks(paintTying(next, readyShare), marks));
    }
  };
}

/** Makes those marks of items that are not there yet. */
function makeMarks(items: readonly Item[], marks: Marks): void {
  const fresh = items.filter((item) => !marks.has(item));
  for (const [item, mark] of paired(fresh, svgMarks(fresh.map((item) => itemToSvg(item, "page")).join(""))))
    marks.set(item, mark);
}

/** The marks of items in a group: those that it shows already stay as they are, others go, and what is new is put between. */
function putMarks(group: Element, items: readonly Item[], marks: Marks): void {
  makeMarks(items, marks);
  const wanted = items.flatMap((item) => marks.get(item) ?? []);
  const kept = new Set(wanted);
  for (const mark of [...group.children]) if (!kept.has(mark)) mark.remove();
  let next = group.firstElementChild;
  for (const mark of wanted) {
    if (mark === next) next = next.nextElementSibling;
    else group.insertBefore(mark, next);
  }
}
