import { Box } from "../../src/markup/boxes.ts";
import type { RasterImage } from "../../src/model/own-image.ts";
import type { LabelText } from "../../src/words/label-text.ts";
import { placedLogo } from "../logo.ts";

/** Who made a pack up, as customers find them again. */
export interface LabelMakers {
  /** Where they are, and when they are open. */
  readonly lines: readonly string[];
  readonly logo: RasterImage | undefined;
}

interface PackLabelProps {
  readonly label: LabelText;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly bodyPt: number;
  readonly makers: LabelMakers;
}

/** From the edge of a label, which the printer may miss by as much [mm]. */
const marginMm = 3;

const logoMm = { widthMm: 18, heightMm: 9 } as const;

/** What stands on the label of a made-up pack. */
export function PackLabel({ label, widthMm, heightMm, bodyPt, makers }: PackLabelProps) {
  const mark = makers.logo && placedLogo(makers.logo, logoMm);
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
      <Box style={{ direction: "row", gap: 2, align: "end" }}>
        <Box style={{ grow: 1 }}>
          {[label.foot, ...makers.lines].map((line, i) => (
            <Box key={String(i)} tag="P">
              {line}
            </Box>
          ))}
        </Box>
        {mark && <Box artifact style={{ width: mark.widthMm, height: mark.heightMm }} draw={mark.draw} />}
      </Box>
    </Box>
  );
}
