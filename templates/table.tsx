import { Box, type LayoutStyle } from "../src/markup/boxes.ts";

const hairline = { widthMm: 0.25, ink: "soft" } as const;
const heavy = { widthMm: 0.5, ink: "ink" } as const;

export interface TableProps {
  /** Width of the first column [mm], which names the rows. */
  readonly nameWidth: number;
  readonly head: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    readonly cells: readonly string[];
    readonly field: string;
  }[];
  readonly nameStyle: LayoutStyle;
  readonly cellStyle: LayoutStyle;
  readonly gap: number;
  readonly field: string;
}

/** One cell for all columns where they all say the same. */
function merged(cells: readonly string[]): { text: string; span: number }[] {
  const [first] = cells;
  if (first !== undefined && cells.every((text) => text === first))
    return [{ text: first, span: cells.length }];
  return cells.map((text) => ({ text, span: 1 }));
}

/** A table with a heading row, and a name at the start of each row; the other columns share the width. */
export function Table({ nameWidth, head, rows, nameStyle, cellStyle, gap, field }: TableProps) {
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
      {rows.map(({ name, cells, field: row }, r) => (
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
          {merged(cells).map(({ text, span }, i) => (
            <Box
              key={String(i)}
              tag="TD"
              {...(span > 1 && { span })}
              style={{ ...cellStyle, ...pad, grow: span, paddingLeft: 1 }}
            >
              {text}
            </Box>
          ))}
        </Box>
      ))}
    </Box>
  );
}
