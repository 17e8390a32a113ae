import { first } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import { printPaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import { madeInOrder } from "../../model/in-order.ts";
import { startOf } from "../../model/message.ts";
import type { SolvedPack, SolvedShelf } from "../../model/shelf.ts";
import { shelfText } from "../../words/shelf-text.ts";
import { type DoesNotFit, notFitting } from "../does-not-fit.ts";
import { type TextPages, textProblems } from "../handout/text-handout.ts";
import { keptPage } from "../kept-page.ts";
import { painted, paintedOnce } from "../painted.ts";
import { paperSides, paperText } from "../papers/paper-text.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";
import { type LabelSheet, labelSheets } from "./label-sheets.ts";
import { labelSide, layOutLabel } from "./pack-labels.ts";

interface LaidLabel {
  readonly pack: SolvedPack;
  readonly sheet: LabelSheet;
  readonly label: ReturnType<typeof layOutLabel>;
  readonly from: string;
}

/** A shop's shelf: its list, and the labels of its packs on each sheet of the guide's paper. */
interface LaidShelf {
  readonly id: string;
  readonly list: TextPages;
  readonly labels: readonly LaidLabel[];
}

export function layOutShelves(
  shelves: readonly SolvedShelf[],
  drawings: Drawings,
  press: Press,
): readonly LaidShelf[] {
  return madeInOrder(press.inOrder, shelves, (solved) => {
    const { shelf, packs } = solved;
    const text = {
      id: shelf.id,
      path: shelf.path,
      title: shelf.title,
      summary: press.kit.words("shelf.summary"),
      body: shelfText(solved, press.kit),
    };
    const sheets = labelSheets.filter(({ paper }) => paper === press.guide.paper);
    const labels = packs.flatMap((pack) =>
      sheets.map((sheet): LaidLabel => {
        const from = digestOf(press.from, "label", sheet, pack.solved.rig, pack.needs);
        const label = keptPage(press.keep, "label", from, () => layOutLabel(pack, sheet, press));
        return { pack, sheet, label, from };
      }),
    );
    return { id: shelf.id, list: paperText(text, drawings, press), labels };
  });
}

/** What is larger than its sheet or its label. */
export function shelfProblems(shelves: readonly LaidShelf[]): DoesNotFit[] {
  return shelves.flatMap(({ list, labels }) => [
    ...textProblems(list, "shelf"),
    ...labels.flatMap(({ pack, sheet, label }) =>
      notFitting(label.overflows, {
        of: pack.solved.rig.id,
        format: sheet.id,
        side: "label",
        place: startOf(list.text.path),
      }),
    ),
  ]);
}

/** The list of each shelf that fits, and its labels. */
export async function* shelfFiles(shelves: readonly LaidShelf[], press: Press): AsyncIterable<PaintedFile> {
  for (const { id, list, labels } of shelves) {
    const { text, from } = list;
    const paintList = () => {
      const sides = paperSides(list, press.guide.title, press);
      return painted(sides, first(sides), press.facts(text.title), press);
    };
    yield paintedOnce({ path: printPaths.shelf(id) }, "shelf as PDF", from, paintList, press);
    for (const { pack, sheet, label, from: of } of labels) {
      const path = printPaths.labels(id, pack.solved.rig.id, sheet.id);
      const paintLabels = () => {
        const side = labelSide(label, sheet);
        const title = press.kit.words("label.document", { rig: pack.solved.rig.title });
        return painted([side], side, press.facts(title), press);
      };
      yield paintedOnce({ path }, "labels as PDF", of, paintLabels, press);
    }
  }
}
