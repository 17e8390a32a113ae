import { Box, type LayoutStyle } from "../src/markup/boxes.ts";
import { heavy } from "./rules.ts";

/** Black, as cards are copied. */
const hairline = { widthMm: 0.25, ink: "ink" } as const;

/** Before the text of each column but the first [mm]. */
export const cellGapMm = 0.8;

/** What hangs below the letters of the heading stays off its rule [mm]. */
const descentMm = 0.15;

interface Cell {
  readonly lines: readonly string[];
  readonly style?: LayoutStyle;
}

export interface TableProps {
  /** Widths of the first columns [mm], that of the names first; the others share what is left. */
  readonly widths: readonly number[];
  /** Headings of the columns, the names' first; where they are fewer, the last spans what is left. */
  readonly head: readonly string[];
  readonly columns: number;
  readonly rows: readonly {
    readonly name: string;
    readonly nameStyle?: LayoutStyle;
    readonly nameWidth?: number;
    /** One for each column, or one for all of them. */
    readonly cells: readonly Cell[];
    readonly field: string;
  }[];
  readonly nameStyle: LayoutStyle;
  readonly cellStyle: LayoutStyle;
  readonly gap: number;
  readonly field: string;
}

/** A table with a heading row, and a name at the start of each row. */
export function Table(props: TableProps) {
  const { head, columns, rows, nameStyle, cellStyle, gap, field } = props;
  const spans = (i: number) => i === head.length - 1 && head.length < columns;
  return (
    <Box tag="Table" field={field}>
      <Box tag="TR" style={{ direction: "row", align: "baseline" }} paint={{ ruleBelow: heavy }}>
        {head.map((text, i) => (
          <Box
            key={String(i)}
            tag="TH"
            {...(spans(i) && { span: columns - i })}
            style={{
              ...(i === 0 ? nameStyle : cellStyle),
              ...(spans(i) ? across : roomOf(i, props)),
              paddingTop: gap,
              paddingBottom: gap + descentMm,
              face: "bold",
            }}
          >
            {text}
          </Box>
        ))}
      </Box>
      {rows.map((row, r) => (
        <TableRow key={row.field} {...props} row={row} last={r === rows.length - 1} />
      ))}
    </Box>
  );
}

function TableRow(props: TableProps & { row: TableProps["rows"][number]; last: boolean }) {
  const { columns, nameStyle, cellStyle, gap, row, last } = props;
  const { name, nameStyle: ownName, nameWidth, cells, field } = row;
  const pad = { paddingTop: gap, paddingBottom: gap };
  const spans = cells.length < columns - 1;
  const nameRoom = nameWidth === undefined ? roomOf(0, props) : { width: nameWidth };
  return (
    <Box
      tag="TR"
      field={field}
      style={{ direction: "row", align: "baseline" }}
      paint={last ? {} : { ruleBelow: hairline }}
    >
      <Box tag="TH" style={{ ...nameStyle, ...ownName, ...pad, ...nameRoom }}>
        {name}
      </Box>
      {cells.map(({ lines, style }, i) => (
        <Box
          key={String(i)}
          tag="TD"
          {...(spans && { span: columns - 1 })}
          style={{ ...cellStyle, ...style, ...pad, ...(spans ? across : roomOf(i + 1, props)) }}
        >
          {lines.length === 1 ? lines : lines.map((line) => <Box key={line}>{line}</Box>)}
        </Box>
      ))}
    </Box>
  );
}

/** What is left of the width. */
const across: LayoutStyle = { grow: 1, paddingLeft: cellGapMm };

/** Room of a column, the names' first. */
function roomOf(column: number, { widths }: Pick<TableProps, "widths">): LayoutStyle {
  const width = widths[column];
  return {
    ...(width === undefined ? { grow: 1 } : { width }),
    ...(column > 0 && { paddingLeft: cellGapMm }),
  };
}
