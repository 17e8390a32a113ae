import { Box, type Draw } from "../../src/markup/boxes.ts";
import { clearOfPunchMm, punchMark } from "./punch.ts";

/** A picture with the text that stands for it. */
export interface Picture {
  readonly alt: string;
  readonly draw: Draw;
}

interface CardFrontProps {
  readonly title: string;
  readonly picture: Picture;
  readonly marginMm: number;
  readonly typePt: number;
  readonly lineHeight: number;
  /** Between the name and the drawing. */
  readonly gapMm: number;
}

/** Front of a card of any format: nothing but the name and the drawing, the punch mark's corner kept clear. */
export function CardFront({ title, picture, marginMm, typePt, lineHeight, gapMm }: CardFrontProps) {
  return (
    <Box
      tag="Sect"
      style={{ padding: marginMm, sizePt: typePt, lineHeight }}
      draw={(widthMm) => punchMark(widthMm)}
    >
      <Box tag="H1" field="title" style={{ face: "bold", paddingRight: clearOfPunchMm(marginMm) }}>
        {title}
      </Box>
      <Box
        tag="Figure"
        alt={picture.alt}
        field="drawing"
        style={{ grow: 1, marginTop: gapMm }}
        draw={picture.draw}
      />
    </Box>
  );
}
