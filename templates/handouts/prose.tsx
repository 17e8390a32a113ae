import type { Code, ListItem, Paragraph, Root, RootContent } from "mdast";
import { last } from "../../src/core/lists.ts";
import type { CaptionedDrawing } from "../../src/drawing/pictures.ts";
import { Box, mmPerPoint, type TextPlace } from "../../src/markup/boxes.ts";
import type { Child } from "../../src/markup/jsx-runtime.ts";
import type { RasterImage } from "../../src/model/own-image.ts";
import type { PictureNode } from "../../src/model/pictures.ts";
import { placedLogo } from "../logo.ts";
import { hairline } from "../rules.ts";
import { columnWidthMm, type HandoutFormat, headingScale } from "./format.ts";
import { boundText, inline, linesOf } from "./prose-inline.tsx";
import { ProseTable } from "./prose-table.tsx";

interface ProseProps {
  readonly title: string;
  readonly summary: string;
  readonly body: Root;
  readonly format: HandoutFormat;
  /** Between paragraphs. */
  readonly gapMm: number;
  readonly pictures: (node: PictureNode) => readonly CaptionedDrawing[];
  /** Where the guide's makers are found, below the text. */
  readonly closing: readonly string[];
  /** The mark of the guide's makers, beside that. */
  readonly logo?: RasterImage | undefined;
}

/** Between pictures that stand side by side [mm]. */
const leastGapMm = 3;

/** A lesson as one column, as long as it is; it is cut into pages afterwards. */
export function LessonColumn(props: ProseProps) {
  const { title, summary, body, format, gapMm } = props;
  return (
    <Box style={{ sizePt: format.bodyPt, lineHeight: format.lineHeight, gap: gapMm }} field={title}>
      <Heading level={1} format={format}>
        {title}
      </Heading>
      <Box tag="P" style={{ face: "italic" }}>
        {boundText(summary)}
      </Box>
      {body.children.map((node) => blockOf(node, props))}
      <Makers {...props} />
    </Box>
  );
}

const logoMm = { widthMm: 30, heightMm: 12 } as const;

/** Below a rule, where the guide's makers are found, beside their mark. */
function Makers({ closing, logo }: ProseProps) {
  if (closing.length === 0 && !logo) return null;
  const mark = logo && placedLogo(logo, logoMm);
  return (
    <Box
      {...(closing.length > 0 ? { tag: "Sect" } : { artifact: true })}
      style={{ direction: "row", gap: leastGapMm, align: "center", paddingTop: 1.5 }}
      paint={{ ruleAbove: hairline }}
    >
      {mark && <Box artifact style={{ width: mark.widthMm, height: mark.heightMm }} draw={mark.draw} />}
      {closing.length > 0 && (
        <Box tag="P" style={{ grow: 1 }}>
          {closing.map((line, i) => (
            <Box key={String(i)}>{line}</Box>
          ))}
        </Box>
      )}
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
        <Heading level={node.depth === firstDepth(props.body) ? 2 : 3} format={props.format}>
          {inline(node.children)}
        </Heading>
      );
    case "paragraph":
      return (
        <Box tag="P" at={placeOf(node)}>
          {broken(node)}
        </Box>
      );
    case "blockquote":
      return (
        <Box tag="BlockQuote" at={placeOf(node)} style={{ paddingLeft: 5, gap: 2 }}>
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
      return <ProseTable table={node} format={props.format} />;
    case "picture":
      return <Pictures pictures={props.pictures(node)} format={props.format} />;
    case "code":
      return <CodeLines code={node} sizePt={props.format.bodyPt} />;
    case "thematicBreak":
      return <Box artifact style={{ height: 1 }} paint={{ ruleBelow: hairline }} />;
    case "html":
    case "definition":
      return null;
    default:
      throw new Error(`no way to print a "${node.type}"`);
  }
}

/** Where a part of a text stands in its file; what a live figure made stands nowhere. */
function placeOf({ position }: RootContent): TextPlace | undefined {
  return position && { line: position.start.line, column: position.start.column };
}

/** Depth of the highest heading, which the check of the content makes the first. */
function firstDepth({ children }: Root): number | undefined {
  for (const node of children) if (node.type === "heading") return node.depth;
  return undefined;
}

/** The words of a paragraph, each line that its author broke off in a box of its own. */
function broken({ children }: Paragraph): Child {
  const lines = linesOf(children);
  if (lines.length === 1) return inline(children);
  return lines.map((line, i) => <Box key={String(i)}>{inline(line)}</Box>);
}

/** Lines as they were typed; how far they stand in is all that is kept of their spaces. */
function CodeLines({ code, sizePt }: { code: Code; sizePt: number }) {
  const emMm = sizePt * mmPerPoint;
  return (
    <Box tag="P" at={placeOf(code)} style={{ paddingLeft: 5 }}>
      {code.value.split("\n").map((line, i) => (
        <Box key={String(i)} style={{ paddingLeft: 0.5 * emMm * line.search(/\S|$/), minHeight: emMm }}>
          {line.trim()}
        </Box>
      ))}
    </Box>
  );
}

function Item({ item, label, props }: { item: ListItem; label: string; props: ProseProps }) {
  const [first, ...others] = item.children;
  const single = first?.type === "paragraph" && others.length === 0;
  return (
    <Box tag="LI" at={placeOf(item)} style={{ direction: "row" }}>
      <Box tag="Lbl" style={{ width: 0.55 * props.format.bodyPt }}>
        {label}
      </Box>
      {single ? (
        <Box tag="LBody" style={{ grow: 1 }}>
          {broken(first)}
        </Box>
      ) : (
        <Box tag="LBody" style={{ grow: 1, gap: 1 }}>
          {item.children.map((child) => blockOf(child, props))}
        </Box>
      )}
    </Box>
  );
}

/** Pictures as many abreast as the column is wide; each keeps its caption. */
function Pictures({ pictures, format }: { pictures: readonly CaptionedDrawing[]; format: HandoutFormat }) {
  const rows: CaptionedDrawing[][] = [];
  let freeMm = 0;
  for (const picture of pictures) {
    if (picture.drawing.widthMm > freeMm) {
      rows.push([]);
      freeMm = columnWidthMm(format);
    }
    last(rows).push(picture);
    freeMm -= picture.drawing.widthMm + leastGapMm;
  }
  return rows.map((row, r) => (
    <Box key={String(r)} style={{ direction: "row", justify: rows[0]!.length > 1 ? "between" : "center" }}>
      {row.map((picture, i) => (
        <Captioned
          key={String(i)}
          picture={picture}
          freeMm={row.length > 1 ? 0 : freeBeside(picture, format)}
        />
      ))}
    </Box>
  ));
}

/** Room for words beside a picture that is alone in its row [mm]. */
function freeBeside({ drawing }: CaptionedDrawing, format: HandoutFormat): number {
  return columnWidthMm(format) - drawing.widthMm - leastGapMm;
}

/** A caption beside a picture has at least this much room. */
const leastBesideMm = 28;

/** A picture with its caption: below it, or beside it in a column that has the room. */
function Captioned({ picture: { drawing, caption }, freeMm }: { picture: CaptionedDrawing; freeMm: number }) {
  const beside = caption !== undefined && freeMm >= leastBesideMm && freeMm < drawing.widthMm;
  const width = drawing.widthMm + (beside ? freeMm + leastGapMm : 0);
  return (
    <Box
      tag="Sect"
      style={{
        width,
        gap: beside ? leastGapMm : 1,
        direction: beside ? "row" : "column",
        align: beside ? "center" : "stretch",
      }}
    >
      <Box
        tag="Figure"
        alt={drawing.description}
        style={{ width: drawing.widthMm, height: drawing.heightMm }}
        draw={() => drawing.items}
      />
      {caption !== undefined && (
        <Box tag="P" style={beside ? { width: freeMm } : {}}>
          {boundText(caption)}
        </Box>
      )}
    </Box>
  );
}
