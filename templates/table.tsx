import { Box, type LayoutStyle } from "../src/markup/boxes.ts";

const hairline = { widthMm: 0.25, ink: "ink" } as const;
const heavy = { widthMm: 0.5, ink: "ink" } as const;

export interface TableProps {
  /** Width of the first column [mm], which names the rows. */
  readonly nameWidth: number;
  readonly head: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    /** One for each column, or one for all of them. */
    readonly cells: readonly string[];
    readonly field: string;
    readonly cellStyle?: LayoutStyle;
  }[];
  readonly nameStyle: LayoutStyle;
  readonly cellStyle: LayoutStyle;
  readonly gap: number;
  readonly field: string;
}

/** A table with a heading row, and a name at the start of each row; the other columns share the width. */
export function Table({ nameWidth, head, rows, nameStyle, cellStyle, gap, field }: TableProps) {
  const columns = head.length - 1;
  const pad = { paddingTop: gap, paddingBottom: gap };
  return (
    <Box tag="Table" field={field}>
      <Box tag="TR" style={{ direction: "row", align: "baseline" }} paint={{ ruleBelow: heavy }}>
        {head.map((text, i) => (
          <Box
            key={String(i)}
            tag="TH"
            style={{
              ...(i === 0 ? { ...nameStyle, width: nameWidth } : { ...cellStyle, grow: 1, paddingLeft: 1 }),
              ...pad,
              face: "bold",
            }}
          >
            {text}
          </Box>
        ))}
      </Box>
      {rows.map(({ name, cells, field: row, cellStyle: own }, r) => (
        <Box
          key={row}
          tag="TR"
          field={row}
          style={{ direction: "row", align: "baseline" }}
          paint={r < rows.length - 1 ? { ruleBelow: hairline } : {}}
        >
          <Box tag="TH" style={{ ...nameStyle, ...pad, width: nameWidth }}>
            {name}
          </Box>
          {cells.map((text, i) => (
            <Box
              key={String(i)}
              tag="TD"
              {...(cells.length < columns && { span: columns })}
              style={{ ...cellStyle, ...own, ...pad, grow: 1, paddingLeft: 1 }}
            >
              {text}
            </Box>
          ))}
        </Box>
      ))}
    </Box>
  );
}
