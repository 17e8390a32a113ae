import type { ListItem, PhrasingContent, Root, RootContent, Table } from "mdast";
import type { Drawing } from "../../src/drawing/model.ts";
import { Box, Inline } from "../../src/markup/boxes.ts";
import type { Child, Element } from "../../src/markup/jsx-runtime.ts";
import type { PictureNode } from "../../src/solve/live/pictures.ts";
import { columnWidthMm, type HandoutFormat, headingScale } from "./format.ts";

/** A drawing in a text and what stands below it. */
export interface ProsePicture {
  readonly drawing: Drawing;
  readonly caption?: string;
}

export interface ProseProps {
  readonly title: string;
  readonly summary: string;
  readonly body: Root;
  readonly format: HandoutFormat;
  readonly pictures: (node: PictureNode) => readonly ProsePicture[];
}

/** Between pictures that stand side by side [mm]. */
const leastGapMm = 3;

const hairline = { widthMm: 0.25, ink: "soft" } as const;
const heavy = { widthMm: 0.5, ink: "ink" } as const;

/** A lesson as one column, as long as it is; it is cut into pages afterwards. */
export function LessonColumn(props: ProseProps) {
  const { title, summary, body, format } = props;
  return (
    <Box style={{ sizePt: format.bodyPt, lineHeight: 1.35, gap: 2.4 }} field={title}>
      <Heading level={1} format={format}>
        {title}
      </Heading>
      <Box tag="P" style={{ face: "italic" }}>
        {summary}
      </Box>
      {body.children.map((node) => blockOf(node, props))}
    </Box>
  );
}

function Heading({ level, format, children }: { level: 1 | 2 | 3; format: HandoutFormat; children: Child }) {
  const sizePt = format.bodyPt * headingScale[level];
  return (
    <Box
      tag={`H${level}`}
      style={{ sizePt, lineHeight: 1.2, face: "bold", marginTop: level === 1 ? 0 : 0.12 * sizePt }}
    >
      {children}
    </Box>
  );
}

function blockOf(node: RootContent, props: ProseProps): Child {
  switch (node.type) {
    case "heading":
      return (
        <Heading level={node.depth === 2 ? 2 : 3} format={props.format}>
          {inline(node.children)}
        </Heading>
      );
    case "paragraph":
      return <Box tag="P">{inline(node.children)}</Box>;
    case "blockquote":
      return (
        <Box tag="BlockQuote" style={{ paddingLeft: 5, gap: 2 }}>
          {node.children.map((child) => blockOf(child, props))}
        </Box>
      );
    case "list":
      return (
        <Box tag="L" style={{ gap: 1 }}>
          {node.children.map((item, i) => (
            <Item
              key={String(i)}
              item={item}
              label={node.ordered ? `${(node.start ?? 1) + i}.` : "•"}
              props={props}
            />
          ))}
        </Box>
      );
    case "table":
      return <ProseTable table={node} />;
    case "picture":
      return <Pictures pictures={props.pictures(node)} format={props.format} />;
    default:
      throw new Error(`no way to print a "${node.type}"`);
  }
}

function Item({ item, label, props }: { item: ListItem; label: string; props: ProseProps }) {
  const [first, ...others] = item.children;
  const single = first?.type === "paragraph" && others.length === 0;
  return (
    <Box tag="LI" style={{ direction: "row" }}>
      <Box tag="Lbl" style={{ width: 0.55 * props.format.bodyPt }}>
        {label}
      </Box>
      {single ? (
        <Box tag="LBody" style={{ grow: 1 }}>
          {inline(first.children)}
        </Box>
      ) : (
        <Box tag="LBody" style={{ grow: 1, gap: 1 }}>
          {item.children.map((child) => blockOf(child, props))}
        </Box>
      )}
    </Box>
  );
}

function ProseTable({ table }: { table: Table }) {
  const [head, ...rows] = table.children;
  const widths = columnShares(table);
  const cell = (i: number) => ({ grow: widths[i]!, paddingTop: 0.7, paddingBottom: 0.7, paddingRight: 2 });
  return (
    <Box tag="Table">
      <Box tag="TR" style={{ direction: "row", align: "end" }} paint={{ ruleBelow: heavy }}>
        {head!.children.map(({ children }, i) => (
          <Box key={String(i)} tag="TH" style={{ ...cell(i), face: "bold" }}>
            {inline(children)}
          </Box>
        ))}
      </Box>
      {rows.map((row, r) => (
        <Box key={String(r)} tag="TR" style={{ direction: "row" }} paint={{ ruleBelow: hairline }}>
          {row.children.map(({ children }, i) => (
            <Box key={String(i)} tag={i === 0 ? "TH" : "TD"} style={cell(i)}>
              {inline(children)}
            </Box>
          ))}
        </Box>
      ))}
    </Box>
  );
}

/** Signs of body type that a column of either page takes, at the least. */
const signsAcross = 50;

/** Shares of the width: each column has room for its longest word, and what is left goes by the longest cell. */
function columnShares({ children: rows }: Table): number[] {
  const texts = rows[0]!.children.map((_, i) => rows.map((row) => textOf(row.children[i]?.children ?? [])));
  const words = texts.map((column) => 3 + longest(column.flatMap((text) => text.split(/[\s-]/))));
  const cells = texts.map((column) => Math.max(1, longest(column)));
  const free = Math.max(0, signsAcross - sum(words));
  return words.map((word, i) => Math.round(10 * (word + (free * cells[i]!) / sum(cells))));
}

function longest(texts: readonly string[]): number {
  return Math.max(...texts.map((text) => text.length));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}

function textOf(nodes: readonly PhrasingContent[]): string {
  return nodes
    .map((node) => ("children" in node ? textOf(node.children) : "value" in node ? node.value : " "))
    .join("");
}

/** Pictures as many abreast as the column is wide; each keeps its caption. */
function Pictures({ pictures, format }: { pictures: readonly ProsePicture[]; format: HandoutFormat }) {
  const rows: ProsePicture[][] = [];
  let freeMm = 0;
  for (const picture of pictures) {
    if (picture.drawing.widthMm > freeMm) {
      rows.push([]);
      freeMm = columnWidthMm(format);
    }
    rows[rows.length - 1]!.push(picture);
    freeMm -= picture.drawing.widthMm + leastGapMm;
  }
  return rows.map((row, r) => (
    <Box key={String(r)} style={{ direction: "row", justify: rows[0]!.length > 1 ? "between" : "center" }}>
      {row.map(({ drawing, caption }, i) => (
        <Box key={String(i)} tag="Sect" style={{ width: drawing.widthMm, gap: 1 }}>
          <Box
            tag="Figure"
            alt={drawing.description}
            style={{ height: drawing.heightMm }}
            draw={() => drawing.items}
          />
          {caption !== undefined && <Box tag="P">{caption}</Box>}
        </Box>
      ))}
    </Box>
  ));
}

function inline(nodes: readonly PhrasingContent[]): Child {
  return nodes.map((node): Element | string => {
    switch (node.type) {
      case "text":
      case "inlineCode":
        return node.value.replace(/\s+/g, " ");
      case "strong":
        return <Inline face="bold">{inline(node.children)}</Inline>;
      case "emphasis":
        return <Inline face="italic">{inline(node.children)}</Inline>;
      case "link":
      case "delete":
        return <Inline>{inline(node.children)}</Inline>;
      case "break":
        return " ";
      default:
        throw new Error(`no way to print a "${node.type}" in a line`);
    }
  });
}
