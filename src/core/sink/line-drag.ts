/**
 * Drag of the line, gathered along each piece. Speed runs evenly from end to end, so drag shared out by leverage is a
 * cubic along the piece for a constant coefficient, and two Gauss points take it exactly: a piece that swings about
 * its end needs no division for its drag. (Lumped at the ends it would come out half as large again.)
 *
 * Drag across the line is many times that along it, so line that is drawn round a bend follows its own track.
 * Straight pieces would have to be dragged sideways past every corner, an error that falls off no faster than their
 * length; so drag takes the line as a smooth curve, whose direction at a bare node is the mean of the pieces that
 * meet there. At a shot the line may have a corner.
 *
 * Directions are those at which the speeds so far would bring the line by the end of the step, and friction along it
 * is in proportion to the speed; whatever the directions, drag takes energy out. Of a slack piece, drawn out to a
 * share r of its length, a part r lies along the chord; the rest trails in loops behind what pulls it, and follows
 * its own track, so it resists along itself only.
 */
import type { Mm, S } from "../units.ts";
import { axialDragGMmS, crossFlowDragGMmS, type Fluid } from "../water/drag.ts";
import type { DragPlace, TriedLink } from "./step-system.ts";

/** Share of its length from which a piece counts as drawn out. */
const drawnOutShare = 0.95;

/** Takes directions where the links will be after a time at the speeds they have. */
export function takeDirections(links: readonly TriedLink[], aheadS: S, fluid: Fluid): void {
  for (const link of links) takeChord(link, aheadS, fluid);
  let smoothAbove = false;
  let aboveX = 0;
  let aboveY = 0;
  for (const link of links) {
    const { next } = link;
    const smoothBelow = next !== undefined && runsOn(link, next);
    const belowX = smoothBelow ? next.alongX - link.alongX : 0;
    const belowY = smoothBelow ? next.alongY - link.alongY : 0;
    // From the middle of the link to its ends the direction turns by half the difference to the next link's.
    const turns = (smoothAbove ? 1 : 0) + (smoothBelow ? 1 : 0) || 1;
    for (const place of link.dragPlaces) {
      takeAcross(
        place,
        link,
        (place.fromUpper - 0.5) * (2 / turns),
        (aboveX + belowX) / 2,
        (aboveY + belowY) / 2,
      );
    }
    smoothAbove = smoothBelow;
    aboveX = belowX;
    aboveY = belowY;
  }
}

function takeChord(link: TriedLink, aheadS: S, fluid: Fluid): void {
  const upper = link.upper.point;
  const lower = link.lower.point;
  const dx = lower.x - upper.x + aheadS * (lower.vx - upper.vx);
  const dy = lower.y - upper.y + aheadS * (lower.vy - upper.vy);
  const chord = Math.sqrt(dx * dx + dy * dy);
  link.alongX = chord > 0 ? dx / chord : 0;
  link.alongY = chord > 0 ? dy / chord : 0;
  link.drawnOutShare = Math.min(1, chord / link.lengthMm);
  const speed = Math.sqrt((upper.vx + lower.vx) ** 2 + (upper.vy + lower.vy) ** 2) / 2;
  link.axialDragGMmS = axialDragGMmS(link.diameterMm || 1, speed, fluid);
}

/** Whether the line runs on smoothly from a link to the next: bare, drawn out, and not folded back. */
function runsOn(link: TriedLink, next: TriedLink): boolean {
  return (
    link.lower.drags.length === 0 &&
    link.diameterMm > 0 &&
    link.drawnOutShare > drawnOutShare &&
    next.drawnOutShare > drawnOutShare &&
    link.alongX * next.alongX + link.alongY * next.alongY > 0
  );
}

function takeAcross(place: DragPlace, link: TriedLink, from: number, turnX: number, turnY: number): void {
  const nx = link.alongY + from * turnY;
  const ny = -link.alongX - from * turnX;
  const scale = link.drawnOutShare / (nx * nx + ny * ny || 1);
  place.acrossXx = scale * nx * nx;
  place.acrossXy = scale * nx * ny;
  place.acrossYy = scale * ny * ny;
}

/** Adds a link's drag to the right side, and its slope to the band. */
export function addLineDrag(link: TriedLink, fluid: Fluid): void {
  if (link.diameterMm === 0) return;
  for (const place of link.dragPlaces) addDragAt(place, link, link.lengthMm / 2, fluid);
}

function addDragAt(
  place: DragPlace,
  { upper, lower, diameterMm, axialDragGMmS }: TriedLink,
  lengthMm: Mm,
  fluid: Fluid,
) {
  const { fromUpper: below, acrossXx, acrossXy, acrossYy } = place;
  const above = 1 - below;
  const ux = above * upper.vx + below * lower.vx;
  const uy = above * upper.vy + below * lower.vy;
  const acrossX = acrossXx * ux + acrossXy * uy;
  const acrossY = acrossXy * ux + acrossYy * uy;
  const across2 = Math.max(0, ux * acrossX + uy * acrossY);
  const axial = lengthMm * axialDragGMmS;
  // What goes across resists this much more than what goes along.
  const cross = lengthMm * crossFlowDragGMmS(diameterMm, Math.sqrt(across2), fluid) - axial;
  const more = across2 > 0 ? (0.6 * cross) / across2 : 0;
  const kxx = axial + cross * acrossXx + more * acrossX * acrossX;
  const kxy = cross * acrossXy + more * acrossX * acrossY;
  const kyy = axial + cross * acrossYy + more * acrossY * acrossY;
  const fx = axial * ux + cross * acrossX;
  const fy = axial * uy + cross * acrossY;

  upper.rowX.right -= above * fx;
  upper.rowY.right -= above * fy;
  lower.rowX.right -= below * fx;
  lower.rowY.right -= below * fy;
  const uu = above * above;
  const ul = above * below;
  const ll = below * below;
  upper.rowX.diagonal += uu * kxx;
  upper.rowY.diagonal += uu * kyy;
  upper.rowY.left1 += uu * kxy;
  lower.rowX.diagonal += ll * kxx;
  lower.rowY.diagonal += ll * kyy;
  lower.rowY.left1 += ll * kxy;
  lower.rowX.left3 += ul * kxx;
  lower.rowX.left2 += ul * kxy;
  lower.rowY.left4 += ul * kxy;
  lower.rowY.left3 += ul * kyy;
}
