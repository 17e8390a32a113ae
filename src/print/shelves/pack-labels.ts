import { type LabelMakers, PackLabel } from "../../../templates/labels/pack-label.tsx";
import { first } from "../../core/lists.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { linesToFindUs } from "../../model/find-us.ts";
import type { SolvedPack } from "../../model/shelf.ts";
import { labelText } from "../../words/label-text.ts";
import type { Press } from "../press.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import type { LabelSheet } from "./label-sheets.ts";

/** Sizes of type that a label is set in, the first that all of it fits in. */
const bodySizesPt = [10, 9, 8, 7, 6.5, 6] as const;

/** What is in a pack is not set smaller than this for the sake of who made it up. */
const leastWithMakersPt = 7;

const noMakers: LabelMakers = { lines: [], logo: undefined };

/**
 * The label of a pack, in the largest type in which all of it fits; in the smallest where it fits in none. Where it has room it
 * says where its makers are found, beside their mark.
 */
export function layOutLabel(
  pack: SolvedPack,
  { widthMm, heightMm }: Pick<LabelSheet, "widthMm" | "heightMm">,
  { guide, kit, fonts, logo }: Press,
): LaidOutPage {
  const label = labelText(pack, guide, kit);
  const makers = { lines: linesToFindUs(guide), logo };
  const withMakers =
    makers.lines.length > 0 || logo ? bodySizesPt.filter((pt) => pt >= leastWithMakersPt) : [];
  const looks = [
    ...withMakers.map((bodyPt) => ({ bodyPt, makers })),
    ...bodySizesPt.map((bodyPt) => ({ bodyPt, makers: noMakers })),
  ];
  const pages = looks.map(
    (look) => () => layOut(PackLabel({ label, widthMm, heightMm, ...look }), { widthMm, heightMm }, fonts),
  );
  let page = first(pages)();
  for (const make of pages.slice(1)) {
    if (page.overflows.length === 0) break;
    page = make();
  }
  return page;
}

/** A sheet full of one label, each where the sheet has its own. */
export function labelSide(label: LaidOutPage, sheet: LabelSheet): PaperSide {
  const { columns, rows, leftMm, topMm, acrossMm, downMm } = sheet;
  const parts = Array.from({ length: rows * columns }, (_, at) => ({
    ...label,
    xMm: leftMm + (at % columns) * acrossMm,
    yMm: topMm + Math.floor(at / columns) * downMm,
    turn: 0 as const,
  }));
  return { ...paperSizes[sheet.paper], viewTurn: 0, parts };
}
