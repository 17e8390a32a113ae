import { Box } from "../../src/markup/boxes.ts";
import type { CardContent } from "../../src/model/card-content.ts";
import { unbroken } from "../../src/words/shot-text.ts";
import type { Ruler } from "../../src/words/unit-systems.ts";
import type { FrontLook, Picture, SizedPicture } from "./card-look.ts";
import { clearOfPunchMm, edgeTab, punchMark, ruler, rulerInMm, tabFromMm, tabInMm } from "./card-marks.ts";

interface CardFrontProps {
  readonly card: CardContent;
  readonly look: FrontLook;
  /** Of the card [mm]. */
  readonly heightMm: number;
  readonly scale: Ruler;
  readonly picture: Picture;
  /** The tip as it should show, where there is room for it. */
  readonly tip?: SizedPicture;
  /** Whether it says how the depth is found, which the back has no room for. */
  readonly setDepth: boolean;
}

/** Inside the frame around the one figure to remember, which parts it from the ruler's: the 5 of one before `74 cm` reads `574 cm` [mm]. */
const besideFrameMm = 1.2;

/** What to make up, and how far the float is set: a ruler along one edge, the hole's corner kept clear. */
export function CardFront({ card, look, heightMm, scale, picture, tip, setDepth }: CardFrontProps) {
  const { marginMm, lineHeight } = look;
  const words = { sizePt: look.wordPt, lineHeight, loneWord: "joined" } as const;
  const besideTabMm = card.level === undefined ? 0 : Math.max(0, tabInMm(look) - marginMm);
  const leftMm = Math.max(marginMm, rulerInMm(look));
  return (
    <Box
      tag="Sect"
      style={{ padding: marginMm, paddingLeft: leftMm, ...words }}
      draw={(widthMm) => [
        ...punchMark(widthMm, "right", look),
        ...ruler(heightMm, look, scale),
        ...(card.level === undefined
          ? []
          : edgeTab(widthMm, tabFromMm(look), { water: card.water, bars: card.level }, look)),
      ]}
    >
      <Box style={{ grow: 1 }}>
        <Box
          tag="H1"
          field="title"
          style={{
            sizePt: look.figurePt,
            face: "bold",
            paddingRight: clearOfPunchMm(marginMm, "right", look),
          }}
        >
          {card.title}
        </Box>
        <Box style={{ grow: 1, marginTop: 1, direction: "row" }}>
          <Box tag="Figure" alt={picture.alt} field="drawing" style={{ grow: 1 }} draw={picture.draw} />
          <Box style={{ width: besideTabMm }} />
        </Box>
      </Box>
      {setDepth && (
        <Box tag="P" field="setting the depth" style={{ marginTop: 0.5 }}>
          {card.setDepth}
        </Box>
      )}
      <Box style={{ direction: "row", gap: 1.5, align: "end", marginTop: 1 }}>
        <Box style={{ grow: 1 }}>
          <Box style={{ direction: "row", marginBottom: 0.4 }}>
            <Box
              tag="P"
              field="float setting"
              style={{
                sizePt: look.settingPt,
                lineHeight: 1.05,
                face: "bold",
                paddingLeft: besideFrameMm,
                paddingRight: besideFrameMm,
              }}
              paint={{ frame: { widthMm: 0.35, ink: "ink" } }}
            >
              {unbroken(card.drawn.setAt)}
            </Box>
          </Box>
          <Box tag="P" field="setting">
            {card.settingFor}
          </Box>
          <Box tag="P" field="float" style={{ face: "bold", marginTop: 0.5 }}>
            {card.float}
          </Box>
          {look.tackleOn === "front" && (
            <Box tag="P" field="tackle">
              {`${card.tackle} ${card.metal}`}
            </Box>
          )}
        </Box>
        {tip && (
          <Box
            tag="Figure"
            alt={tip.alt}
            field="true tip"
            style={{ width: tip.widthMm, height: tip.heightMm }}
            draw={tip.draw}
          />
        )}
      </Box>
    </Box>
  );
}
