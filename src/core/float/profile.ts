import { neighbours } from "../lists.ts";
import { cube } from "../power.ts";
import type { Mm } from "../units.ts";
/** A point of an outline: its diameter at a height above the lower eye. Straight lines join the points. */
export interface ProfilePoint {
  readonly atMm: Mm;
  readonly diameterMm: Mm;
}

/** A solid of revolution about the float's axis: from the lower eye up, heights never falling. */
export type Profile = readonly ProfilePoint[];

/** The piece between two points: cylinder, cone or frustum. */
interface Frustum {
  readonly fromMm: Mm;
  readonly heightMm: Mm;
  readonly radiusMm: Mm;
  /** Change of the radius with height. */
  readonly slope: number;
}

/** Pieces of the outlines that somebody has: a bite alone asks for those of its float a hundred times. */
const known = new WeakMap<Profile, readonly Frustum[]>();

function frusta(profile: Profile): readonly Frustum[] {
  const pieces = known.get(profile) ?? piecesOf(profile);
  known.set(profile, pieces);
  return pieces;
}

/** Points at one height are a shoulder: a step in diameter without any height of its own. */
function piecesOf(profile: Profile): readonly Frustum[] {
  const pieces: Frustum[] = [];
  for (const [below, above] of neighbours(profile)) {
    const heightMm = above.atMm - below.atMm;
    if (heightMm > 0) {
      const slope = (above.diameterMm - below.diameterMm) / 2 / heightMm;
      pieces.push({ fromMm: below.atMm, heightMm, radiusMm: below.diameterMm / 2, slope });
    }
  }
  return pieces;
}

/** Volume of the lowest `x` mm of a piece: `πx(r₀² + r₀r + r²)/3` with `r = r₀ + slope·x`. */
function pieceVolumeMm3({ radiusMm: r0, slope }: Frustum, x: number): number {
  const r = r0 + slope * x;
  return (Math.PI / 3) * x * (r0 * r0 + r0 * r + r * r);
}

/** Height above the lower eye of the topmost point [mm]; 0 for an empty profile. */
export function topMm(profile: Profile): number {
  return profile.at(-1)?.atMm ?? 0;
}

/**
 * Volume below a height.
 *
 * @param heightMm height above the lower eye [mm]; outside the profile the nearer end counts
 * @returns volume [mm³], exact for cylinders, cones and frusta
 */
export function volumeBelowMm3(profile: Profile, heightMm: Mm): number {
  let volume = 0;
  for (const piece of frusta(profile)) {
    const x = Math.min(heightMm - piece.fromMm, piece.heightMm);
    if (x > 0) volume += pieceVolumeMm3(piece, x);
  }
  return volume;
}

/**
 * Height below which a volume lies: the inverse of `volumeBelowMm3`, in closed form.
 *
 * With `V = π(r³ − r₀³)/(3·slope)` in a piece, `r = ∛(r₀³ + 3V·slope/π)`; then `x = (3V/π)/(r² + r·r₀ + r₀²)`, which
 * is `(r − r₀)/slope` without its cancellation and holds for cylinders too.
 *
 * @param volumeMm3 volume [mm³]
 * @returns height above the lower eye [mm]; the nearer end for a volume below 0 or above the whole
 */
export function heightOfVolumeMm(profile: Profile, volumeMm3: number): number {
  let left = volumeMm3;
  for (const piece of frusta(profile)) {
    const whole = pieceVolumeMm3(piece, piece.heightMm);
    if (left >= whole) {
      left -= whole;
      continue;
    }
    if (left <= 0) return piece.fromMm;
    const { radiusMm: r0, slope } = piece;
    const c = (3 * left) / Math.PI;
    const r = Math.cbrt(cube(r0) + c * slope);
    return piece.fromMm + Math.min(piece.heightMm, c / (r * r + r * r0 + r0 * r0));
  }
  return topMm(profile);
}

/**
 * First moment about the lower eye of the volume below a height: `∫ z dV`. Divided by the volume it is the height
 * of that volume's centre.
 *
 * @param heightMm height above the lower eye [mm]
 * @returns moment [mm⁴]
 */
export function momentBelowMm4(profile: Profile, heightMm: Mm): number {
  let moment = 0;
  for (const piece of frusta(profile)) {
    const x = Math.min(heightMm - piece.fromMm, piece.heightMm);
    if (x <= 0) continue;
    const { radiusMm: r0, slope: k } = piece;
    const aboveItsFoot = Math.PI * x * x * ((r0 * r0) / 2 + (2 * r0 * k * x) / 3 + (k * k * x * x) / 4);
    moment += piece.fromMm * pieceVolumeMm3(piece, x) + aboveItsFoot;
  }
  return moment;
}

/** Diameter at a height [mm]; on a shoulder that of the part below it, outside the profile that of the nearer end. */
export function diameterAtMm(profile: Profile, heightMm: Mm): number {
  const pieces = frusta(profile);
  const piece = pieces.find(({ fromMm, heightMm: h }) => heightMm <= fromMm + h) ?? pieces.at(-1);
  if (!piece) return 0;
  const x = Math.min(Math.max(heightMm - piece.fromMm, 0), piece.heightMm);
  return 2 * (piece.radiusMm + piece.slope * x);
}
