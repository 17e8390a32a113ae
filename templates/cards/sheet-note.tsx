import { Box } from "../../src/markup/boxes.ts";

/** What stands below the check bar of a sheet. */
export function SheetNote({ lines }: { lines: readonly string[] }) {
  return (
    <Box style={{ sizePt: 8, lineHeight: 1.2 }}>
      {lines.map((line) => (
        <Box key={line} tag="P" field="sheet note" style={{ textAlign: "center" }}>
          {line}
        </Box>
      ))}
    </Box>
  );
}
