import type { ListItem, PhrasingContent, Root, RootContent, Table } from "mdast";
import type { Drawing } from "../../src/drawing/model.ts";
import { Box, Inline } from "../../src/markup/boxes.ts";
import type { Child, Element } from "../../src/markup/jsx-runtime.ts";
import type { PictureNode } from "../../src/solve/live/pictures.ts";
import { type HandoutFormat, headingScale } from "./format.ts";

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
        <Box style={{ paddingLeft: 5, gap: 2 }}>{node.children.map((child) => blockOf(child, props))}</Box>
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
      return <Pictures pictures={props.pictures(node)} />;
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

/** Shares of the width by the longest cell of each column, none less than a third of the widest. */
function columnShares({ children: rows }: Table): number[] {
  const longest = rows[0]!.children.map((_, i) =>
    Math.max(...rows.map((row) => lengthOf(row.children[i]?.children ?? []))),
  );
  const least = Math.max(...longest) / 3;
  return longest.map((length) => Math.max(1, Math.round(Math.max(length, least))));
}

function lengthOf(nodes: readonly PhrasingContent[]): number {
  return nodes.reduce(
    (sum, node) =>
      sum + ("children" in node ? lengthOf(node.children) : "value" in node ? node.value.length : 1),
    0,
  );
}

/** Pictures in steps stand two abreast; each keeps its caption. */
function Pictures({ pictures }: { pictures: readonly ProsePicture[] }) {
  const abreast = pictures.length > 1 ? 2 : 1;
  const rows = pictures.flatMap((_, i) => (i % abreast === 0 ? [pictures.slice(i, i + abreast)] : []));
  return rows.map((row, r) => (
    <Box key={String(r)} style={{ direction: "row", justify: abreast > 1 ? "between" : "center" }}>
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
