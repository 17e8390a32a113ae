import { axialDragGMmS, crossFlowDragGMmS, type Fluid } from "../drag.ts";
import { bandWidth } from "./banded.ts";
import type { ChainLink, ChainState } from "./chain.ts";

/** Places along a piece, as shares from its upper end, at which the drag is taken: Gauss's two points. */
const places = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)] as const;

/**
 * Drag of the line, gathered along each straight piece. Speed runs evenly from end to end, so drag shared out by
 * leverage is a cubic along the piece for a constant coefficient, and two Gauss points take it exactly: a piece that
 * swings about its end needs no division for its drag. (Lumped at the ends it would come out half as large again.)
 *
 * The drag across the line and along it are taken apart by the direction at the start of the step, and the friction
 * along it, which hardly depends on the speed but in proportion, by the speed then. Of a slack piece,
 * drawn out to a share r of its length, a part r lies along the chord; the rest trails in loops behind what pulls it,
 * and follows its own track, so it resists along itself only.
 */
export function makeLineDrag(
  links: readonly ChainLink[],
  fluid: Fluid,
  band: Float64Array,
  right: Float64Array,
) {
  // Across the line, as the tensor (xx, xy, yy) that leaves of a speed what goes across the line.
  const across = new Float64Array(3 * links.length);
  const axialPerMm = new Float64Array(links.length);

  function prepare({ x, y, vx, vy }: ChainState): void {
    for (let i = 0; i < links.length; i++) {
      const dx = x[i + 1]! - x[i]!;
      const dy = y[i + 1]! - y[i]!;
      const chord = Math.sqrt(dx * dx + dy * dy);
      const share = chord > 0 ? Math.min(1, chord / links[i]!.lengthMm) / (chord * chord) : 0;
      across[3 * i] = share * dy * dy;
      across[3 * i + 1] = -share * dx * dy;
      across[3 * i + 2] = share * dx * dx;
      const speed = Math.sqrt((vx[i]! + vx[i + 1]!) ** 2 + (vy[i]! + vy[i + 1]!) ** 2) / 2;
      axialPerMm[i] = axialDragGMmS(links[i]!.diameterMm || 1, speed, fluid);
    }
  }

  /** Adds every piece's drag to the right side, and its slope to the band. */
  function add(vx: Float64Array, vy: Float64Array): void {
    for (let i = 0; i < links.length; i++) {
      const { lengthMm, diameterMm } = links[i]!;
      if (diameterMm > 0) {
        for (const place of places) addPlace(i, lengthMm / 2, diameterMm, place, vx, vy);
      }
    }
  }

  function addPlace(
    link: number,
    lengthMm: number,
    diameterMm: number,
    place: number,
    vx: Float64Array,
    vy: Float64Array,
  ): void {
    const above = 1 - place;
    const ux = above * vx[link]! + place * vx[link + 1]!;
    const uy = above * vy[link]! + place * vy[link + 1]!;
    const nxx = across[3 * link]!;
    const nxy = across[3 * link + 1]!;
    const nyy = across[3 * link + 2]!;
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

    const upper = link === 0 ? 0 : 3 * link - 2;
    const lower = 3 * link + 1;
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
