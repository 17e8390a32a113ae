import { last } from "../../core/lists.ts";
import type { GroupItem, Item, PathItem, Role, TextItem } from "../../drawing/model.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type Extent, extentOf } from "../extent.ts";
import { ContentWriter } from "./pdf-content.ts";
import type { Signs } from "./pdf-signs.ts";

/** What a document does for a part besides its content stream: `of` counts the part's elements from 0. */
export type Deed =
  | { readonly do: "element"; readonly role: Role; readonly in?: number; readonly name?: string }
  | { readonly do: "span"; readonly of: number; readonly columns: number }
  | { readonly do: "head"; readonly of: number; readonly scope: Scope; readonly columns?: number }
  | { readonly do: "figure"; readonly of: number; readonly alt: string; readonly box?: Extent }
  | { readonly do: "heading"; readonly level: number; readonly text: string; readonly at: Spot }
  | { readonly do: "link"; readonly of: number; readonly name: string; readonly box: Extent };

type Scope = "Row" | "Column";

interface Spot {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * Marks as a document paints them wherever they lie: pieces of a content stream, and between them what the document does
 * or says there itself. Places are those of the part [mm]. Plain data, so that it can be kept.
 */
export interface PaintedPart {
  readonly stream: ReturnType<ContentWriter<Deed>["end"]>;
  /** What its text is set in. */
  readonly signs: Signs;
}

interface Around {
  readonly element?: number;
  /** From the part's corner. */
  readonly atMm: Spot;
}

/**
 * Paints marks as a part of a document.
 *
 * @param isLink whether the document knows where words of that name lead
 * @throws Error where there is text without a role, or a figure without alternative text: a fault of a template
 */
export function paintPart(
  items: readonly Item[],
  isLink: (name: string) => boolean,
  fonts: Fonts,
): PaintedPart {
  const writer = new ContentWriter<Deed>(fonts);
  const roles: Role[] = [];

  const begin = (role: Role, within: number | undefined, name?: string): number => {
    const inside = within === undefined ? {} : { in: within };
    writer.other({ do: "element", role, ...inside, ...(name !== undefined && { name }) });
    return roles.push(role) - 1;
  };

  const paintItems = (some: readonly Item[], around: Around): void => {
    for (const run of runsOfKind(some, isLink)) {
      if (run[0]!.kind === "group") paintGroup(run[0] as GroupItem, around);
      else if (run[0]!.kind === "text") paintLines(run as TextItem[], around);
      else writer.artifact(() => paintPlain(run));
    }
  };

  const paintLines = (lines: readonly TextItem[], { element, atMm }: Around): void => {
    const [first] = lines;
    if (element === undefined) throw new Error(`text without a role on the page: ${JSON.stringify(first)}`);
    const name = first!.link !== undefined && isLink(first!.link) ? first!.link : undefined;
    const owner = name === undefined ? element : begin("Link", element);
    writer.marked(roles[owner]!, owner, () => paintPlain(lines));
    if (name === undefined) return;
    for (const line of lines) {
      const words = { ...line, text: line.text.trim() };
      const extent = extentOf([words], fonts)!;
      writer.artifact(() => writer.shape(underline(words, extent)));
      writer.other({ do: "link", of: owner, name, box: shifted(extent, atMm) });
    }
  };

  const paintGroup = (group: GroupItem, around: Around): void => {
    const atMm = { xMm: around.atMm.xMm + group.xMm, yMm: around.atMm.yMm + group.yMm };
    const inside: Around = { ...around, atMm };
    writer.moved([1, 0, 0, 1, group.xMm, group.yMm], () => {
      if (group.artifact) {
        writer.artifact(() => paintPlain(group.items));
      } else if (group.role === "Figure") {
        paintFigure(group, inside);
      } else if (group.role) {
        const element = begin(group.role, around.element, group.element);
        if (group.role === "TR") scopeHeaders(group);
        if (group.role === "TD" && group.span) writer.other({ do: "span", of: element, columns: group.span });
        if (group.role === "TH") paintHead(group, element);
        if (/^H[1-6]$/.test(group.role)) writer.other(heading(group, atMm));
        paintItems(group.items, { ...inside, element });
      } else {
        paintItems(group.items, inside);
      }
    });
  };

  const paintHead = (group: GroupItem, of: number): void => {
    const { span: columns } = group;
    writer.other({ do: "head", of, scope: scopes.get(group) ?? "Row", ...(columns && { columns }) });
  };

  const paintFigure = (group: GroupItem, { element, atMm }: Around): void => {
    if (!group.alt) throw new Error("a figure without alternative text");
    const of = begin("Figure", element);
    const extent = extentOf(group.items, fonts);
    const box = extent && shifted(extent, atMm);
    writer.other({ do: "figure", of, alt: group.alt, ...(box && { box }) });
    // A space ends each label, or labels run together when they are copied.
    writer.marked("Figure", of, () => paintPlain(group.items, " "));
  };

  /** Marks without tags of their own. */
  const paintPlain = (some: readonly Item[], after = ""): void => {
    for (const item of some) {
      if (item.kind === "text") {
        writer.line(item, after);
      } else if (item.kind === "group") {
        writer.moved([1, 0, 0, 1, item.xMm, item.yMm], () => paintPlain(item.items, after));
      } else if (item.kind === "image") {
        writer.image(item);
      } else {
        writer.shape(item);
      }
    }
  };

  const scopes = new Map<GroupItem, Scope>();

  /** A row of nothing but headers heads its columns; a header among other cells heads its row. */
  const scopeHeaders = (row: GroupItem): void => {
    const cells = row.items.filter(
      (item): item is GroupItem => item.kind === "group" && item.role !== undefined,
    );
    const scope = cells.every((cell) => cell.role === "TH") ? "Column" : "Row";
    for (const cell of cells) scopes.set(cell, scope);
  };

  const heading = (group: GroupItem, atMm: Spot): Deed => {
    const extent = extentOf(group.items, fonts);
    const { left, top } = extent ? shifted(extent, atMm) : { left: 0, top: 0 };
    return {
      do: "heading",
      level: Number(group.role!.slice(1)),
      text: wordsOf(group.items).trim(),
      at: { xMm: left, yMm: top },
    };
  };

  paintItems(items, { atMm: { xMm: 0, yMm: 0 } });
  return { stream: writer.end(), signs: writer.signs.all };
}

const shifted = ({ left, top, right, bottom }: Extent, { xMm, yMm }: Spot): Extent => ({
  left: left + xMm,
  top: top + yMm,
  right: right + xMm,
  bottom: bottom + yMm,
});

/** The line below the words of a link. */
function underline({ yMm, sizeMm }: TextItem, { left, right }: Extent): PathItem {
  const below = yMm + 0.14 * sizeMm;
  const steps: PathItem["steps"] = [
    ["M", left, below],
    ["L", right, below],
  ];
  return { kind: "path", steps, stroke: { ink: "soft", widthMm: 0.04 * sizeMm } };
}

/** Groups alone; neighbouring lines together unless one is a link, neighbouring shapes together. */
function runsOfKind(items: readonly Item[], isLink: (name: string) => boolean): Item[][] {
  const runs: Item[][] = [];
  let before = "";
  for (const item of items) {
    const link = item.kind === "text" && item.link !== undefined && isLink(item.link) ? item.link : "";
    const kind = item.kind === "circle" ? "path" : item.kind + link;
    if (kind === before && kind !== "group") last(runs).push(item);
    else runs.push([item]);
    before = kind;
  }
  return runs;
}

function wordsOf(items: readonly Item[]): string {
  return items
    .map((item) => (item.kind === "text" ? item.text : item.kind === "group" ? wordsOf(item.items) : ""))
    .join("");
}
