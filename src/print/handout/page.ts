import { columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import type { GroupItem, Item, TextItem } from "../../drawing/model.ts";
import { asPaper, type PaperSide } from "../../layout/paper.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import { digestOf } from "../../model/digest.ts";
import { once } from "../../model/kept.ts";
import { withItems } from "../kept-page.ts";
import { unprintableMm } from "../sheets/paper-sizes.ts";

/** What stands above and below the column of a page. */
interface PageEdges {
  readonly header: string | GroupItem;
  readonly footer: string;
  /** What the signs in the column mean. */
  readonly notes: string;
}

const edgePt = 9;

/** A page of a handout: its columns, and header and footer, which readers skip. */
export function handoutPage(
  columns: readonly (readonly Item[])[],
  format: HandoutFormat,
  edges: PageEdges,
): PaperSide {
  const { widthMm, heightMm, sideMm, topMm, bottomMm } = format;
  const below = heightMm - bottomMm;
  const stepMm = columnWidthMm(format) + format.gutterMm;
  const inColumns = columns.map((items, i): GroupItem => {
    return { kind: "group", xMm: sideMm + i * stepMm, yMm: topMm, items };
  });
  const items = [
    typeof edges.header === "string" ? edge(edges.header, sideMm, topMm - 7, "start") : edges.header,
    ...inColumns,
    ...(edges.notes === "" ? [] : [notesAt(edges.notes, sideMm, below + 5)]),
    edge(edges.footer, widthMm / 2, below + 9, "middle"),
  ];
  return asPaper({ widthMm, heightMm, items });
}

/**
 * A page of a handout that is made once somebody asks for its marks.
 *
 * @param from stands for all that it is made from
 */
export function laterPage(
  { widthMm, heightMm }: HandoutFormat,
  from: string,
  make: () => PaperSide,
): PaperSide {
  const items = once(() => make().parts.flatMap((part) => part.items));
  return asPaper(withItems({ widthMm, heightMm, from }, items));
}

/** A side of paper that is not a page of text, with its number in the corner above. */
export function numbered(side: PaperSide, page: number): PaperSide {
  const { widthMm, heightMm } = side;
  const items = [edge(String(page), widthMm - unprintableMm - 2, unprintableMm + 2.5, "end")];
  const from = digestOf(items);
  return { ...side, parts: [...side.parts, { widthMm, heightMm, xMm: 0, yMm: 0, turn: 0, items, from }] };
}

function edge(text: string, xMm: number, yMm: number, anchor: TextItem["anchor"]): GroupItem {
  return { kind: "group", xMm: 0, yMm: 0, artifact: true, items: [edgeLine(text, xMm, yMm, anchor)] };
}

/** Unlike header and footer these are read, once for each page. */
function notesAt(text: string, xMm: number, yMm: number): GroupItem {
  return { kind: "group", xMm: 0, yMm: 0, role: "P", items: [edgeLine(text, xMm, yMm, "start")] };
}

function edgeLine(text: string, xMm: number, yMm: number, anchor: TextItem["anchor"]): TextItem {
  const sizeMm = edgePt * mmPerPoint;
  return { kind: "text", xMm, yMm, text, sizeMm, face: "regular", ink: "soft", anchor };
}
