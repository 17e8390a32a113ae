import type { FishLooks, FishPlace } from "../../model/fish-looks.ts";
import { bold, circle, type Point, point, polygon, polyline, thin } from "../items.ts";
import type { Ink, Item } from "../model.ts";
import { smooth } from "../smooth.ts";
import { type Fin, pairedFin, tailFin, uprightFin } from "./fish-fins.ts";
import { type Body, bodyOf, flank, heightAt } from "./fish-outline.ts";
import { barShare, markedSides } from "./fish-sides.ts";

/** Room that the whole fish takes [mm]. */
interface FishFrame {
  readonly nose: Point;
  readonly lengthMm: number;
}

/** A fish as marks, and where on it each place is that a label can point at. */
interface FishFigure {
  readonly items: readonly Item[];
  readonly places: Readonly<Record<FishPlace, Point>>;
  readonly topMm: number;
  readonly bottomMm: number;
}

/** A fish from the side, nose to the left, from the proportions of its kind. */
export function fishFigure(looks: FishLooks, { nose, lengthMm }: FishFrame): FishFigure {
  const bodyMm = lengthMm / (1 + looks.tail.lengthShare);
  const to = ({ xMm, yMm }: Point) => point(nose.xMm + xMm * bodyMm, nose.yMm - yMm * bodyMm);
  const body = bodyOf(looks);
  const fins = finsOf(looks, body);
  const eye = point(
    looks.headShare * 0.36,
    body.mouthHeight * 0.35 + heightAt(body.back, looks.headShare * 0.36) * 0.42,
  );
  const eyeMm = Math.max(0.5, bodyMm * 0.022);
  const raysOf = ({ rays }: Fin, ink: Ink) =>
    rays.map(([a, b]) => polyline([to(a), to(b)], { ink, widthMm: 0.35 }));
  const painted = (fin: Fin, ink: Ink) => [
    polygon(fin.outline.map(to), ink, thin),
    ...raysOf(fin, ink === "paper" ? "soft" : "paper"),
  ];
  const red: Ink = looks.redFins ? "accent" : "paper";
  const [back, belly] = [body.back.map(to), body.belly.map(to)];
  const outline = [...back, ...[...belly].reverse()];
  const items: Item[] = [
    ...fins.back.flatMap((fin) => painted(fin, "paper")),
    ...painted(fins.vent, red),
    // Grown out of the body, with no edge between.
    { ...polyline(fins.tail.outline.map(to), thin), fill: "paper" },
    ...raysOf(fins.tail, "soft"),
    ...painted(fins.belly, red),
    polygon(outline, "paper"),
    polyline(back, bold),
    polyline(belly, bold),
    ...markedSides(looks, body, to),
    ...headMarks(looks, body, to),
    ...painted(fins.chest, red),
    circle(to(eye), eyeMm, { fill: looks.redEye ? "accent" : "paper", stroke: thin }),
    circle(to(eye), eyeMm * 0.5, { fill: "ink" }),
  ];
  const all = [
    ...outline,
    ...[...fins.back, fins.vent, fins.tail, fins.belly].flatMap((f) => f.outline.map(to)),
  ];
  return {
    items,
    places: placesOf(looks, body, fins, eye, to),
    topMm: Math.min(...all.map(({ yMm }) => yMm)),
    bottomMm: Math.max(...all.map(({ yMm }) => yMm), nose.yMm - (body.mouthHeight - 0.09) * bodyMm),
  };
}

interface Fins {
  readonly back: readonly Fin[];
  readonly vent: Fin;
  readonly belly: Fin;
  readonly chest: Fin;
  readonly tail: Fin;
}

function finsOf(looks: FishLooks, body: Body): Fins {
  return {
    back: looks.backFins.map((fin) => uprightFin(body, fin, "back")),
    vent: uprightFin(body, looks.ventFin, "belly"),
    belly: pairedFin(body, looks.bellyFinShare, 0.13, 0.03),
    chest: pairedFin(body, looks.headShare + 0.01, 0.13, 0.34),
    tail: tailFin(looks),
  };
}

/** Barbels below the mouth, each from its root to its tip. */
function beard({ barbels }: FishLooks, body: Body): Point[][] {
  return Array.from({ length: barbels }, (_, i) => {
    const x = 0.012 + 0.045 * i;
    const y = heightAt(body.belly, x + 0.01);
    return [point(x + 0.008, y), point(x + 0.004, y - 0.035), point(x + 0.024, y - 0.062 - 0.012 * i)];
  });
}

/** How far each lip of a wide mouth is from its middle. */
const gapeShare = 0.022;

/** Gill cover, mouth and barbels. */
function headMarks(looks: FishLooks, body: Body, to: (at: Point) => Point): Item[] {
  const { headShare, wideMouth } = looks;
  const gill = [0.8, 0.45, 0.05, -0.4, -0.78].map((height) => {
    const bow = headShare + 0.02 * (1 - height * height) * 1.6 - 0.02;
    return point(bow, flank(body, headShare, height).yMm);
  });
  const corner = wideMouth ? 0.34 : 0.2;
  const droop = { up: -0.03, ahead: -0.012, under: -0.014 }[looks.mouth];
  const end = point(corner * headShare, body.mouthHeight + droop);
  const lips = wideMouth
    ? [point(-0.004, body.mouthHeight + gapeShare), end, point(0.002, body.mouthHeight - gapeShare)]
    : [point(0, body.mouthHeight), end];
  return [
    polyline(smooth(gill).map(to), thin),
    // A wide one stands open.
    ...(wideMouth
      ? [polygon(lips.map(to), "paper"), polyline(lips.map(to), bold)]
      : [polyline(lips.map(to), thin)]),
    ...beard(looks, body).map((barbel) =>
      polyline(smooth(barbel).map(to), { ink: "ink", widthMm: 0.5, cap: "round" }),
    ),
  ];
}

function placesOf(
  looks: FishLooks,
  body: Body,
  fins: Fins,
  eye: Point,
  to: (at: Point) => Point,
): FishFigure["places"] {
  const middle = (fin: Fin) => {
    const [root, tip] = fin.rays[1] ?? [point(0, 0), point(0, 0)];
    return point((root.xMm + tip.xMm) / 2, (root.yMm + tip.yMm) / 2);
  };
  const heights = looks.backFins.map(({ heightShare }) => heightShare);
  const backFin = fins.back[heights.indexOf(Math.max(...heights))];
  const onSide = (share: number, height: number) => flank(body, share, height);
  // What is said of a mouth with barbels is told by them: a line from below meets their tip, not the fish.
  const barbelTip = beard(looks, body).at(-1)?.at(-1);
  return {
    mouth: to(barbelTip ?? point(0.015, body.mouthHeight - 0.004)),
    eye: to(eye),
    back: to(onSide(looks.deepestShare * 0.9, 0.97)),
    "back fin": to(backFin ? middle(backFin) : onSide(0.5, 0.9)),
    tail: to(point(1 + looks.tail.lengthShare * 0.5, looks.tailRootShare * 0.55)),
    // On a bar that stands behind the front fin, where there are bars.
    side: to(
      looks.marks === "bars"
        ? onSide(barShare(looks.headShare, 3), 0.4)
        : onSide(looks.headShare + 0.14, 0.3),
    ),
    scales: to(onSide(0.62, -0.35)),
    "belly fin": to(middle(fins.belly)),
    "vent fin": to(middle(fins.vent)),
  };
}
