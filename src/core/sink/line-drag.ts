import type { Mm, S } from "../units.ts";
import { axialDragGMmS, crossFlowDragGMmS } from "../water/drag.ts";
import { bandWidth, column } from "./banded.ts";
import type { Chain, ChainState } from "./chain.ts";

/** Places along a piece, as shares from its upper end, at which the drag is taken: Gauss's two points. */
const places = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)] as const;

/** Share of its length from which a piece counts as drawn out. */
const drawnOutShare = 0.95;

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
export function makeLineDrag({ nodes, links, fluid }: Chain, band: Float64Array, right: Float64Array) {
  const count = links.length;
  const tx = new Float64Array(count);
  const ty = new Float64Array(count);
  const share = new Float64Array(count);
  const axialPerMm = new Float64Array(count);
  // Across the line at each Gauss point, as the tensor (xx, xy, yy) that leaves of a speed what goes across the line.
  const across = new Float64Array(6 * count);

  /** Takes directions where the pieces will be after a time at the speeds they have. */
  function prepare({ x, y, vx, vy }: ChainState, aheadS: S): void {
    for (let i = 0; i < count; i++) {
      const dx = x[i + 1]! - x[i]! + aheadS * (vx[i + 1]! - vx[i]!);
      const dy = y[i + 1]! - y[i]! + aheadS * (vy[i + 1]! - vy[i]!);
      const chord = Math.sqrt(dx * dx + dy * dy);
      tx[i] = chord > 0 ? dx / chord : 0;
      ty[i] = chord > 0 ? dy / chord : 0;
      share[i] = Math.min(1, chord / links[i]!.lengthMm);
      const speed = Math.sqrt((vx[i]! + vx[i + 1]!) ** 2 + (vy[i]! + vy[i + 1]!) ** 2) / 2;
      axialPerMm[i] = axialDragGMmS(links[i]!.diameterMm || 1, speed, fluid);
    }
    for (let i = 0; i < count; i++) {
      const upper = i > 0 && isSmooth(i - 1);
      const lower = i + 1 < count && isSmooth(i);
      // From the middle of the piece to its ends the direction turns by half the difference to the next piece's.
      const turns = (upper ? 1 : 0) + (lower ? 1 : 0) || 1;
      const turnX = ((upper ? tx[i]! - tx[i - 1]! : 0) + (lower ? tx[i + 1]! - tx[i]! : 0)) / 2;
      const turnY = ((upper ? ty[i]! - ty[i - 1]! : 0) + (lower ? ty[i + 1]! - ty[i]! : 0)) / 2;
      for (let j = 0; j < places.length; j++) {
        const from = (places[j]! - 0.5) * (2 / turns);
        const nx = ty[i]! + from * turnY;
        const ny = -tx[i]! - from * turnX;
        const scale = share[i]! / (nx * nx + ny * ny || 1);
        const at = 6 * i + 3 * j;
        across[at] = scale * nx * nx;
        across[at + 1] = scale * nx * ny;
        across[at + 2] = scale * ny * ny;
      }
    }
  }

  /** Whether the line runs on smoothly from a piece to the next: bare, drawn out, and not folded back. */
  function isSmooth(i: number): boolean {
    return (
      nodes[i]!.drags.length === 0 &&
      links[i]!.diameterMm > 0 &&
      share[i]! > drawnOutShare &&
      share[i + 1]! > drawnOutShare &&
      tx[i]! * tx[i + 1]! + ty[i]! * ty[i + 1]! > 0
    );
  }

  /** Adds every piece's drag to the right side, and its slope to the band. */
  function add(vx: Float64Array, vy: Float64Array): void {
    for (let i = 0; i < links.length; i++) {
      const { lengthMm, diameterMm } = links[i]!;
      if (diameterMm > 0) {
        addPlace(i, lengthMm / 2, diameterMm, 0, vx, vy);
        addPlace(i, lengthMm / 2, diameterMm, 1, vx, vy);
      }
    }
  }

  function addPlace(
    link: number,
    lengthMm: Mm,
    diameterMm: Mm,
    gauss: 0 | 1,
    vx: Float64Array,
    vy: Float64Array,
  ): void {
    const place = places[gauss];
    const above = 1 - place;
    const ux = above * vx[link]! + place * vx[link + 1]!;
    const uy = above * vy[link]! + place * vy[link + 1]!;
    const nxx = across[6 * link + 3 * gauss]!;
    const nxy = across[6 * link + 3 * gauss + 1]!;
    const nyy = across[6 * link + 3 * gauss + 2]!;
    const acrossX = nxx * ux + nxy * uy;
    const acrossY = nxy * ux + nyy * uy;
    const across2 = Math.max(0, ux * acrossX + uy * acrossY);
    const axial = lengthMm * axialPerMm[link]!;
    // What goes across resists this much more than what goes along.
    const cross = lengthMm * crossFlowDragGMmS(diameterMm, Math.sqrt(across2), fluid) - axial;
    const more = across2 > 0 ? (0.6 * cross) / across2 : 0;
    const kxx = axial + cross * nxx + more * acrossX * acrossX;
    const kxy = cross * nxy + more * acrossX * acrossY;
    const kyy = axial + cross * nyy + more * acrossY * acrossY;
    const fx = axial * ux + cross * acrossX;
    const fy = axial * uy + cross * acrossY;

    const upper = column(link);
    const lower = column(link + 1);
    right[upper]! -= above * fx;
    right[lower]! -= place * fx;
    right[lower + 1]! -= place * fy;
    const uu = above * above;
    const ul = above * place;
    const ll = place * place;
    band[bandWidth * upper]! += uu * kxx;
    band[bandWidth * lower]! += ll * kxx;
    band[bandWidth * (lower + 1)]! += ll * kyy;
    band[bandWidth * (lower + 1) + 1]! += ll * kxy;
    band[bandWidth * lower + lower - upper]! += ul * kxx;
    band[bandWidth * (lower + 1) + lower + 1 - upper]! += ul * kxy;
    if (link === 0) return;
    right[upper + 1]! -= above * fy;
    band[bandWidth * (upper + 1)]! += uu * kyy;
    band[bandWidth * (upper + 1) + 1]! += uu * kxy;
    band[bandWidth * lower + lower - upper - 1]! += ul * kxy;
    band[bandWidth * (lower + 1) + lower - upper]! += ul * kyy;
  }

  return { prepare, add };
}
