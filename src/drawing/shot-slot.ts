import { entry, last, paired } from "../core/lists.ts";
import { ballDiameterMm, type Shot } from "../core/tackle/shot.ts";
import type { Mm } from "../core/units.ts";
import { point, polyline, text, thin, thinMm } from "./items.ts";
import { placeInOrder, type WantedLabel } from "./labels/label-placement.ts";
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
/** Between two names in one row, and from the slot to the first row, which lines to names off their marks need [mm]. */
const namesApartMm = { wished: 2.4, least: 1.2 } as const;
const toNamesMm = 2;
/** From row to row, in ems. */
const rowLeading = 1.1;

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
  const names = placeNames(
    shot.map(({ size, diameterMm }) => ({ atMm: at(diameterMm), sizeMm: measure(size, textMm, "regular") })),
    lengthMm,
  );
  const rowMm = textMm * rowLeading;
  const headMm = names.some(({ above }) => above) ? rowMm + toNamesMm : 0;
  const footMm = headMm + widestMm;
  const edge = (xMm: Mm) => headMm + (widestMm - narrowestMm) * (xMm / lengthMm);
  // The slot is what is white between the lines.
  const out = thinMm / 2;
  const items: Item[] = [
    polyline([point(0, headMm - out), point(lengthMm, edge(lengthMm) - out)], thin),
    polyline([point(0, footMm + out), point(lengthMm, footMm + out)], thin),
  ];
  for (const [{ size, diameterMm }, { xMm, row, above }] of paired(shot, names)) {
    const markMm = at(diameterMm);
    const upper = point(markMm, edge(markMm));
    const lower = point(markMm, footMm + thinMm);
    const nameTopMm = lower.yMm + toNamesMm + row * rowMm;
    items.push(
      polyline(above ? [lower, upper, point(xMm, rowMm)] : [upper, lower, point(xMm, nameTopMm)], thin),
      text(point(xMm, 0.85 * textMm + (above ? 0 : nameTopMm)), size, textMm, { anchor: "middle" }),
    );
  }
  const rows = 1 + Math.max(...names.map(({ row }) => row));
  return { items, heightMm: footMm + thinMm + toNamesMm + rows * rowMm + 0.1 * textMm };
}

/** Where a name stands: its middle, and its row below the slot, or that it stands above it. */
interface PlacedName {
  readonly xMm: Mm;
  readonly row: number;
  readonly above: boolean;
}

/** Names in one row below the slot; where one would then stand nearer to the mark of another, every second one above it. */
function placeNames(wanted: readonly WantedLabel[], lengthMm: Mm): readonly PlacedName[] {
  const second = (which: 0 | 1) => wanted.filter((_, i) => i % 2 === which);
  const below = inOneRow(wanted, lengthMm)?.map((xMm) => ({ xMm, row: 0, above: false }));
  if (below) return below;
  const [odd, even] = [inOneRow(second(0), lengthMm), inOneRow(second(1), lengthMm)];
  if (!odd || !even) return inRows(wanted);
  return wanted.map((_, i) => ({
    xMm: entry(i % 2 === 0 ? odd : even, Math.floor(i / 2)),
    row: 0,
    above: i % 2 === 1,
  }));
}

/** Middles of names side by side, each nearer to its own mark than to any other that has its name in this row. */
function inOneRow(wanted: readonly WantedLabel[], lengthMm: Mm): readonly Mm[] | undefined {
  const marks = wanted.map(({ atMm }) => atMm);
  const isBesideItsOwn = (xMm: Mm, own: Mm) =>
    marks.every((mark) => Math.abs(xMm - own) <= Math.abs(xMm - mark));
  return [namesApartMm.wished, namesApartMm.least]
    .map((gapMm) => placeInOrder(wanted, 0, lengthMm, gapMm))
    .find((places) => places && paired(places, marks).every(([xMm, own]) => isBesideItsOwn(xMm, own)));
}

/** More names than one row on either side has room for stand below their marks, each in the first row where it has room. */
function inRows(wanted: readonly WantedLabel[]): readonly PlacedName[] {
  const ends: Mm[] = [];
  return wanted.map(({ atMm, sizeMm }) => {
    const free = ends.findIndex((endMm) => endMm + namesApartMm.least <= atMm - sizeMm / 2);
    const row = free < 0 ? ends.length : free;
    ends[row] = atMm + sizeMm / 2;
    return { xMm: atMm, row, above: false };
  });
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
