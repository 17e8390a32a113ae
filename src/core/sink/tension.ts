import type { S } from "../units.ts";
import type { TriedLink } from "./step-system.ts";

/** Share of its length by which a link may be too long. */
const tooLongShare = 1e-9;

/** Lets a link begin as it was: taut where it pulled, unless the bed stopped a node short and left it slack. */
export function takeTension(link: TriedLink): void {
  const { tensionUn } = link.hung;
  const upper = link.upper.point;
  const lower = link.lower.point;
  const dx = lower.x - upper.x;
  const dy = lower.y - upper.y;
  const drawn = dx * dx + dy * dy > (0.9 * link.lengthMm) ** 2;
  link.taut = drawn && tensionUn > 0;
  link.tensionUn = link.taut ? tensionUn : 0;
}

/** Takes up links that came out too long, lets go of those that would push; whether any changed. */
export function sortLinks(links: readonly TriedLink[], stepS: S): boolean {
  let changed = false;
  for (const link of links) {
    if (link.taut) {
      if (link.tensionUn >= 0) continue;
      link.taut = false;
      link.tensionUn = 0;
      changed = true;
    } else {
      const dx = endX(link, stepS);
      const dy = endY(link, stepS);
      if (Math.sqrt(dx * dx + dy * dy) <= link.lengthMm * (1 + tooLongShare)) continue;
      link.taut = true;
      changed = true;
    }
  }
  return changed;
}

/** From the upper to the lower point at the end of the step. */
function endX({ upper, lower }: TriedLink, stepS: S): number {
  return lower.point.x + stepS * lower.vx - upper.point.x - stepS * upper.vx;
}

function endY({ upper, lower }: TriedLink, stepS: S): number {
  return lower.point.y + stepS * lower.vy - upper.point.y - stepS * upper.vy;
}

/** Adds a taut link's pull on its ends, and that it is as long as its tension stretches it. */
export function addTension(link: TriedLink, stepS: S): void {
  const { upper, lower, row, tensionUn } = link;
  if (!link.taut) {
    row.diagonal = 1;
    return;
  }
  const dx = endX(link, stepS);
  const dy = endY(link, stepS);
  const length = Math.sqrt(dx * dx + dy * dy);
  const nx = dx / length;
  const ny = dy / length;
  row.right = (link.lengthMm + link.stretchMmPerUn * tensionUn - length) / stepS;
  row.diagonal = -link.stretchMmPerUn / stepS;
  row.left5 = -nx;
  row.left4 = -ny;
  row.left2 = nx;
  row.left1 = ny;
  lower.rowX.right -= tensionUn * nx;
  lower.rowY.right -= tensionUn * ny;
  upper.rowX.right += tensionUn * nx;
  upper.rowY.right += tensionUn * ny;
  // Turning of a taut link: the tension holds it in its direction.
  const stiff = (stepS * tensionUn) / length;
  const kxx = stiff * ny * ny;
  const kxy = -stiff * nx * ny;
  const kyy = stiff * nx * nx;
  upper.rowX.diagonal += kxx;
  upper.rowY.diagonal += kyy;
  upper.rowY.left1 += kxy;
  lower.rowX.diagonal += kxx;
  lower.rowY.diagonal += kyy;
  lower.rowY.left1 += kxy;
  lower.rowX.left3 -= kxx;
  lower.rowX.left2 -= kxy;
  lower.rowY.left4 -= kxy;
  lower.rowY.left3 -= kyy;
}
