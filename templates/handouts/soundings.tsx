import { Box } from "../../src/markup/boxes.ts";
import { heavy } from "../rules.ts";
import { lineToWriteMm } from "./prose-table.tsx";

/** To write on. */
const line = { widthMm: 0.35, ink: "soft" } as const;

interface BlankTable {
  readonly head: readonly string[];
  readonly rows: number;
}

interface SoundingsSheetProps {
  readonly title: string;
  /** What to mind, and how to go about it. */
  readonly lines: readonly string[];
  /** What is filled in once. */
  readonly fields: readonly string[];
  readonly tables: readonly BlankTable[];
  readonly marginMm: number;
  readonly bodyPt: number;
}

/** A page to fill in by the water, in the order of the form that makes a swim's file. */
export function SoundingsSheet({ title, lines, fields, tables, marginMm, bodyPt }: SoundingsSheetProps) {
  return (
    <Box style={{ padding: marginMm, sizePt: bodyPt, lineHeight: 1.2, gap: 1.6 }} field={title}>
      <Box tag="H1" style={{ sizePt: 1.4 * bodyPt, face: "bold" }}>
        {title}
      </Box>
      {lines.map((text) => (
        <Box key={text} tag="P">
          {text}
        </Box>
      ))}
      {fields.map((text) => (
        <Box
          key={text}
          tag="P"
          style={{ height: lineToWriteMm - 1.2, justify: "end" }}
          paint={{ ruleBelow: line }}
        >
          {text}
        </Box>
      ))}
      {tables.map((table, i) => (
        <Table key={String(i)} {...table} />
      ))}
    </Box>
  );
}

function Table({ head, rows }: BlankTable) {
  return (
    <Box tag="Table" style={{ marginTop: 1.5 }}>
      <Box tag="TR" style={{ direction: "row", align: "end" }} paint={{ ruleBelow: heavy }}>
        {head.map((text) => (
          <Box key={text} tag="TH" style={{ grow: 1, width: 20, face: "bold" }}>
            {text}
          </Box>
        ))}
      </Box>
      {Array.from({ length: rows }, (_, i) => (
        <Box
          key={String(i)}
          tag="TR"
          style={{ direction: "row", height: lineToWriteMm }}
          paint={{ ruleBelow: line }}
        >
          {head.map((text) => (
            <Box key={text} tag="TD" style={{ grow: 1, width: 20 }}>
              {" "}
            </Box>
          ))}
        </Box>
      ))}
    </Box>
  );
}
