import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm, type Profile } from "../../core/float/profile.ts";
import type { Mm } from "../../core/units.ts";

const floatPartNames = ["tip", "body", "stem", "base", "load"] as const;

/** A part of a float as the trade names it, by its place above the lower eye. */
export interface FloatPart {
  readonly name: (typeof floatPartNames)[number];
  readonly fromMm: number;
  readonly toMm: number;
}

/** The body is what is at least this thick, against the thickest. */
const bodyShare = 0.6;
/** What is below the body is a stem if it is this much of the length, else only a base. */
const stemShare = 0.25;
/** The share of the length that a built-in load is drawn in. */
const loadShare = 0.14;

/** Heights between which the profile is thick enough to be the body. */
function bodyOf(profile: Profile): [number, number] {
  const least = bodyShare * Math.max(...profile.map((p) => p.diameterMm));
  const thick = profile.map((p) => p.diameterMm >= least);
  const first = thick.indexOf(true);
  const last = thick.lastIndexOf(true);
  return [crossing(profile, first - 1, first, least), crossing(profile, last, last + 1, least)];
}

/** Where the outline passes a diameter between two points; the inner point where there is no outer one. */
function crossing(profile: Profile, lower: number, upper: number, diameterMm: number): number {
  const a = profile[lower];
  const b = profile[upper];
  if (!a || !b) return (a ?? b)!.atMm;
  const share = (diameterMm - a.diameterMm) / (b.diameterMm - a.diameterMm || 1);
  return a.atMm + share * (b.atMm - a.atMm);
}

/** How much of its foot a built-in load takes up on the drawing [mm of the float]. */
function loadMm(float: Float): number {
  return float.selfLoadG > 0 ? loadShare * lengthMm(float) : 0;
}

/** What the mark of a float is drawn from. */
export function floatLook(float: Float) {
  return {
    profile: float.profile,
    tipMm: float.tipShowingMm,
    loadMm: loadMm(float),
    eye: float.attachment !== "top and bottom",
  };
}

/** The same for a picture large enough for its shape: rounded, its stem or base told from its body. */
export function closeLook(float: Float) {
  const stem = floatParts(float).find(({ name }) => name === "stem" || name === "base");
  return { ...floatLook(float), isSmooth: true, stemMm: stem?.toMm ?? 0 };
}

/** The parts of a float from the top down, found from its outline. */
export function floatParts(float: Float): FloatPart[] {
  const top = lengthMm(float);
  const mark = top - float.tipShowingMm;
  const [bodyFrom, bodyTo] = bodyOf(float.profile);
  const tipFrom = Math.min(bodyTo, mark);
  const load = loadMm(float);
  const found: FloatPart[] = [
    { name: "tip", fromMm: tipFrom, toMm: top },
    { name: "body", fromMm: Math.max(bodyFrom, load), toMm: tipFrom },
  ];
  if (bodyFrom > load)
    found.push({ name: bodyFrom >= stemShare * top ? "stem" : "base", fromMm: load, toMm: bodyFrom });
  if (load > 0) found.push({ name: "load", fromMm: 0, toMm: load });
  return found;
}

/** Thickness of a part [mm], to a tenth, as nobody measures a float finer: of the body at its thickest, of the others half-way along. */
export function thicknessMm(float: Float, part: FloatPart): number {
  const mm =
    part.name === "body"
      ? Math.max(...float.profile.map((p) => p.diameterMm))
      : diameterAtMm(float.profile, (part.fromMm + part.toMm) / 2);
  return Math.round(mm * 10) / 10;
}

/**
 * Heights of the rubbers that hold a float at both ends: on its foot and just below the tip.
 *
 * @param roomMm so far from either a small float's rubbers have to stand to leave them to be seen [mm of the float]
 */
export function rubberHeightsMm(float: Float, roomMm: Mm = 0): [lower: number, upper: number] {
  const top = lengthMm(float);
  return [Math.max(0.07 * top, roomMm), top - float.tipShowingMm - Math.max(0.05 * top, roomMm)];
}
