import { last } from "../core/lists.ts";
import { ballDiameterMm, type Shot } from "../core/tackle/shot.ts";
import type { Mm } from "../core/units.ts";
import { point, polyline, text, thin, thinMm } from "./items.ts";
import type { Item, MeasureText } from "./model.ts";

/** A shot of the slot. */
interface SlotShot {
  readonly size: string;
  readonly diameterMm: Mm;
}

/** Each size of some shot once, the thickest first. */
export function forSlot(shot: readonly Shot[]): readonly SlotShot[] {
  const sizes = new Map(
    shot.map(({ size, massG, metal }) => [size, { size, diameterMm: ballDiameterMm(massG, metal) }]),
  );
  return [...sizes.values()].sort((a, b) => b.diameterMm - a.diameterMm);
}

interface SlotLook {
  readonly lengthMm: Mm;
  readonly textMm: Mm;
  readonly measure: MeasureText;
}

/** The slot goes on beyond its widest and narrowest mark by this share of their widths. */
const beyond = 0.06;
/** Between two names in one row, and from the slot to the first row [mm]. */
const namesApartMm = 1.2;
const toNamesMm = 1;

/**
 * A slot that narrows evenly, true to size: a shot that is slid along it touches both lines where it is as wide as the shot
 * is thick, and the nearest mark names its size. Marks of two sizes stand apart by many times what their diameters differ.
 *
 * @param shot of one metal, the thickest first
 * @returns its marks, from its wide end at the left, and how high they are
 */
export function drawShotSlot(
  shot: readonly SlotShot[],
  { lengthMm, textMm, measure }: SlotLook,
): { readonly items: readonly Item[]; readonly heightMm: Mm } {
  const widestMm = Math.max(...shot.map(({ diameterMm }) => diameterMm)) * (1 + beyond);
  const narrowestMm = Math.min(...shot.map(({ diameterMm }) => diameterMm)) * (1 - beyond);
  const at = (diameterMm: Mm) => ((widestMm - diameterMm) / (widestMm - narrowestMm)) * lengthMm;
  const edge = (xMm: Mm) => (widestMm - narrowestMm) * (xMm / lengthMm);
  const rows: Mm[] = [];
  // The slot is what is white between the lines.
  const out = thinMm / 2;
  const items: Item[] = [
    polyline([point(0, -out), point(lengthMm, edge(lengthMm) - out)], thin),
    polyline([point(0, widestMm + out), point(lengthMm, widestMm + out)], thin),
  ];
  for (const { size, diameterMm } of shot) {
    const xMm = at(diameterMm);
    const halfMm = measure(size, textMm, "regular") / 2;
    const free = rows.findIndex((endMm) => endMm + namesApartMm <= xMm - halfMm);
    const row = free < 0 ? rows.length : free;
    rows[row] = xMm + halfMm;
    const nameTopMm = widestMm + toNamesMm + row * textMm * 1.1;
    items.push(
      polyline([point(xMm, edge(xMm)), point(xMm, nameTopMm)], thin),
      text(point(xMm, nameTopMm + 0.85 * textMm), size, textMm, { anchor: "middle" }),
    );
  }
  return { items, heightMm: widestMm + toNamesMm + (rows.length + 0.1) * textMm * 1.1 };
}

/** Neighbours in size that differ by less than can be told by this slot, thickest first, as runs of names. */
export function hardToTell(shot: readonly SlotShot[], leastMm: Mm): readonly (readonly string[])[] {
  const runs: SlotShot[][] = [];
  for (const one of shot) {
    const run = runs.at(-1);
    if (run && last(run).diameterMm - one.diameterMm < leastMm) run.push(one);
    else runs.push([one]);
  }
  return runs.filter(({ length }) => length > 1).map((run) => run.map(({ size }) => size));
}
