import { Box } from "../../src/markup/boxes.ts";
import type { LabelText } from "../../src/words/label-text.ts";

interface PackLabelProps {
  readonly label: LabelText;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly bodyPt: number;
}

/** From the edge of a label, which the printer may miss by as much [mm]. */
const marginMm = 3;

/** What stands on the label of a made-up pack. */
export function PackLabel({ label, widthMm, heightMm, bodyPt }: PackLabelProps) {
  return (
    <Box
      style={{ width: widthMm, height: heightMm, padding: marginMm, sizePt: bodyPt, lineHeight: 1.15 }}
      field="label"
    >
      <Box tag="P" style={{ sizePt: 1.25 * bodyPt, face: "bold", lineHeight: 1.1 }}>
        {label.title}
      </Box>
      {label.lines.map((line, i) => (
        <Box key={String(i)} tag="P">
          {line}
        </Box>
      ))}
      <Box style={{ grow: 1 }} />
      <Box tag="P" style={{ face: "bold" }}>
        {label.caution}
      </Box>
      <Box tag="P">{label.foot}</Box>
    </Box>
  );
}
