import type { BackLook } from "../../../templates/cards/card-look.ts";
import { cellGapMm, type TableProps } from "../../../templates/table.tsx";
import { first } from "../../core/lists.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import { type LayoutStyle, mmPerPoint } from "../../markup/boxes.ts";
import type { CardContent, CardDepth } from "../../model/card-content.ts";
import { keyOf } from "../../words/words.ts";
import { keptTogether } from "./kept-together.ts";

type ShotTable = Pick<TableProps, "widths" | "head" | "columns" | "rows">;

/**
 * Setting and shot of a card: a column a depth with the shot across below, or a row a depth where each has its lock, which
 * with the places takes two lines, and where there is no room for so many columns.
 */
export function shotTable(
  card: CardContent,
  depths: readonly CardDepth[],
  look: BackLook,
  widthMm: number,
  kit: DrawingKit,
): ShotTable {
  const differ = new Set(depths.map(({ lock, places }) => `${lock}; ${places}`)).size > 1;
  const settings = depths.map(({ setAt }) => setAt);
  const names = depths.map(({ depth }) => depth);
  const columnMm = Math.max(
    widest(settings, look.figurePt, kit) + settingGapMm,
    widest(names, look.figurePt, kit) + cellGapMm,
  );
  const insideMm = widthMm - 2 * look.marginMm;
  const spareMm = insideMm - columnMm * depths.length;
  return spareMm >= look.nameWidthMm && !(differ && first(depths).lock !== undefined)
    ? columnADepth(card, depths, { ...look, spareMm, insideMm }, kit)
    : rowADepth(card, depths, { ...look, insideMm }, kit);
}

/** The look of a back, and its width without its margins [mm]. */
type Inside = BackLook & { readonly insideMm: number };

/** Lock and places of a depth as they stand in a cell: each shot with its place on one line, as far as there is room. */
function inCell(
  { lock, places }: CardDepth,
  { insideMm, figurePt }: Inside,
  besideMm: number,
  { measure }: DrawingKit,
): Pick<CardDepth, "lock" | "places"> {
  const widthMm = insideMm - besideMm - cellGapMm;
  const width = (text: string) => measure(text, figurePt * mmPerPoint, "regular");
  return {
    ...(lock !== undefined && { lock: keptTogether(lock, ",", widthMm, width) }),
    places: keptTogether(places, ";", widthMm, width),
  };
}

const settingStyle = ({ settingPt }: Pick<BackLook, "settingPt">): LayoutStyle => ({
  sizePt: settingPt,
  lineHeight: 1,
  face: "bold",
});

/** Between a column's widest text and the next column [mm]. */
const columnGapMm = 0.4;

/** Width of a column with room for the widest of these [mm]. */
function widest(texts: readonly string[], sizePt: number, { measure }: DrawingKit): number {
  return Math.max(...texts.map((text) => measure(text, sizePt * mmPerPoint, "bold"))) + columnGapMm;
}

/** White that parts the settings of two columns, so that they are not read as one figure [mm]. */
const settingGapMm = 2;

/** Steps in which a size of type is looked for [pt]. */
const stepPt = 0.5;

/** The largest size of its settings at which they stand apart in columns so wide, up to the size that is wished for. */
function settingPtIn(columnMm: number, settings: readonly string[], look: BackLook, kit: DrawingKit): number {
  let { settingPt } = look;
  while (settingPt > look.figurePt && widest(settings, settingPt, kit) + settingGapMm > columnMm)
    settingPt -= stepPt;
  return settingPt;
}

function columnADepth(
  { moved, tipShowing }: CardContent,
  depths: readonly CardDepth[],
  look: Inside & { readonly spareMm: number },
  kit: DrawingKit,
): ShotTable {
  const { words } = kit;
  const settings = depths.map(({ setAt }) => setAt);
  const name = words(`told.measured-from.${keyOf(moved)}`);
  const nameMm = kit.measure(name, look.wordPt * mmPerPoint, "regular") + 2 * cellGapMm;
  // A name goes into two lines rather than take the room of figures.
  const nameWidthMm = nameMm <= look.spareMm ? Math.max(nameMm, look.nameWidthMm) : look.nameWidthMm;
  const columnMm = (look.insideMm - nameWidthMm) / depths.length;
  const style = settingStyle({ settingPt: settingPtIn(columnMm, settings, look, kit) });
  const { lock } = inCell(first(depths), look, nameWidthMm, kit);
  const setting = {
    name,
    field: "float setting",
    cells: depths.map(({ setAt }) => ({ lines: [setAt], style })),
  };
  const tip = {
    name: words("card.row.tip"),
    field: "tip showing",
    cells: depths.map((depth) => ({ lines: [depth.tip] })),
  };
  return {
    widths: [nameWidthMm],
    head: [words("card.depth"), ...depths.map(({ depth }) => depth)],
    columns: 1 + depths.length,
    rows: [
      setting,
      ...(tipShowing === undefined ? [tip] : []),
      ...(lock === undefined ? [] : [across(words("card.row.lock"), "locking shot", lock)]),
      ...placesRows(depths, { ...look, nameWidthMm }, kit),
    ],
  };
}

const across = (name: string, field: string, text: string) => ({ name, field, cells: [{ lines: [text] }] });

/** Places of shot across the table: one row for all depths, or one for each. */
function placesRows(depths: readonly CardDepth[], look: Inside, kit: DrawingKit): ShotTable["rows"] {
  const { places } = first(depths);
  const field = "shot on the line";
  if (depths.every((depth) => depth.places === places))
    return [
      across(kit.words("card.row.on-line"), field, inCell(first(depths), look, look.nameWidthMm, kit).places),
    ];
  const nameWidth = widest(
    depths.map(({ depth }) => depth),
    look.wordPt,
    kit,
  );
  return depths.map((depth) => ({
    ...across(depth.depth, `${field}, ${depth.depth}`, inCell(depth, look, nameWidth, kit).places),
    nameStyle: { face: "bold" },
    nameWidth,
  }));
}

/** Before the shot of a row, which its setting is not to run into [em]. */
const beforeShot = 0.3;

function rowADepth(
  { moved, tipShowing }: CardContent,
  depths: readonly CardDepth[],
  look: Inside,
  kit: DrawingKit,
): ShotTable {
  const { words } = kit;
  const names = depths.map(({ depth }) => depth);
  const settings = depths.map(({ setAt }) => setAt);
  const { wordPt, figurePt, settingPt } = look;
  const toHook = words(`card.row.to-hook.${keyOf(moved)}`);
  const widths = [
    widest([...names, words("card.depth")], wordPt, kit),
    cellGapMm +
      beforeShot * wordPt * mmPerPoint +
      Math.max(widest(settings, settingPt, kit), widest([toHook], figurePt, kit)),
  ] as const;
  const told = depths.map((depth) => ({ ...depth, ...inCell(depth, look, widths[0] + widths[1], kit) }));
  return {
    widths,
    head: [
      words("card.depth"),
      toHook,
      words(`card.row.${first(depths).lock === undefined ? "on-line" : "lock-and-line"}`),
    ],
    columns: 3,
    rows: told.map((depth) => ({
      name: depth.depth,
      field: `setting and shot, ${depth.depth}`,
      nameStyle: { face: "bold" },
      cells: [
        { lines: [depth.setAt], style: settingStyle(look) },
        {
          lines: [
            ...(tipShowing ? [] : [words("card.tip-showing", { tip: depth.tip })]),
            ...(depth.lock === undefined ? [] : [depth.lock]),
            depth.places,
          ],
        },
      ],
    })),
  };
}
