import type { Pose } from "../drawing/film/poses.ts";

/** What a part is in the page. */
export type PartTag = "path" | "polyline" | "polygon" | "group" | "mark";

/** A part as it is put into a picture. */
export interface MovingPart {
  readonly element: Element;
  /** Puts it where `poseBetween` says. */
  readonly put: (at: string) => void;
}

/** How the poses of a shape are shown, and what stands between the numbers there. */
interface Look {
  readonly tag: PartTag;
  readonly letters: readonly string[];
}

const straight = /^M(, ,L)*, ,(Z?)$/;
/** The looks of lines, by their shapes. */
const looks = new Map<string, Look>();

/**
 * What shows a pose with the least work: where only places are other, a browser reckons the style of a path and of a group anew
 * each time, but not that of straight lines.
 */
export function lookOf({ kind, shape, letters }: Pose): Look {
  if (kind !== "path") return { tag: kind, letters };
  const known = looks.get(shape);
  if (known) return known;
  const found = straight.exec(shape);
  const look: Look = found
    ? { tag: found[2] ? "polygon" : "polyline", letters: letters.map(() => " ") }
    : { tag: "path", letters };
  looks.set(shape, look);
  return look;
}

/** A part that was drawn as a path, a group or any mark, as its tag says. */
export function movingPart(drawn: Element, tag: PartTag): MovingPart {
  if (tag === "polyline" || tag === "polygon") {
    const element = made(tag, drawn);
    return { element, put: (at) => element.setAttribute("points", at) };
  }
  if (tag === "path") return { element: drawn, put: (at) => drawn.setAttribute("d", at) };
  const circles = [...drawn.children];
  if (tag !== "group" || !circles.every(isDisc))
    return { element: drawn, put: (at) => drawn.setAttribute("transform", `translate(${at})`) };
  const dots = circles.flatMap(dotsOf);
  drawn.replaceChildren(...dots);
  return { element: drawn, put: (at) => putDots(dots, at) };
}

/** An element with the attributes of a path, but for its places. */
function made(tag: string, { attributes }: Pick<Element, "attributes">): Element {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const { name, value } of attributes) if (name !== "d") element.setAttribute(name, value);
  return element;
}

const sizeOf = (mark: Element, name: string) => Number(mark.getAttribute(name));

/** A circle round its group's place that is filled, and so can be shown as the round end of a line. */
function isDisc(mark: Element): boolean {
  return mark.tagName === "circle" && mark.hasAttribute("fill") && !sizeOf(mark, "cx") && !sizeOf(mark, "cy");
}

/** A filled circle as the round ends of lines: its edge where it has one, and what it is filled with. */
function dotsOf(circle: Element): Element[] {
  const [edge, edgeMm, acrossMm] = [
    circle.getAttribute("stroke"),
    sizeOf(circle, "stroke-width"),
    2 * sizeOf(circle, "r"),
  ];
  const fill = circle.getAttribute("fill") ?? "";
  return edge ? [dot(edge, acrossMm + edgeMm), dot(fill, acrossMm - edgeMm)] : [dot(fill, acrossMm)];
}

function dot(colour: string, acrossMm: number): Element {
  const line = document.createElementNS("http://www.w3.org/2000/svg", "polyline");
  line.setAttribute("stroke", colour);
  line.setAttribute("stroke-width", acrossMm.toFixed(2));
  line.setAttribute("stroke-linecap", "round");
  return line;
}

/** As not every browser shows the ends of a line without a length, it has a hundredth of a millimetre. */
function putDots(dots: readonly Element[], at: string): void {
  const [x, y] = at.split(" ").map(Number);
  for (const one of dots) one.setAttribute("points", `${x} ${y} ${Number(x) + 0.01} ${y}`);
}
