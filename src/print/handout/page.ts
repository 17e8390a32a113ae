import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import type { GroupItem, Item, TextItem } from "../../drawing/model.ts";
import { asPaper, type PaperSide } from "../../layout/paper.ts";
import { mmPerPoint } from "../../markup/boxes.ts";

/** What stands above and below the column of a page. */
export interface PageEdges {
  readonly header: string;
  readonly footer: string;
}

const edgePt = 9;

/** A page of a handout: its column, and header and footer, which readers skip. */
export function handoutPage(column: readonly Item[], format: HandoutFormat, edges: PageEdges): PaperSide {
  const { widthMm, heightMm, sideMm, topMm, bottomMm } = format;
  const inColumn: GroupItem = { kind: "group", xMm: sideMm, yMm: topMm, items: column };
  const items = [
    edge(edges.header, sideMm, topMm - 7, "start"),
    inColumn,
    edge(edges.footer, widthMm / 2, heightMm - bottomMm + 9, "middle"),
  ];
  return asPaper({ widthMm, heightMm, items });
}

function edge(text: string, xMm: number, yMm: number, anchor: TextItem["anchor"]): GroupItem {
  const line: TextItem = {
    kind: "text",
    xMm,
    yMm,
    text,
    sizeMm: edgePt * mmPerPoint,
    face: "regular",
    ink: "soft",
    anchor,
  };
  return { kind: "group", xMm: 0, yMm: 0, artifact: true, items: [line] };
}
