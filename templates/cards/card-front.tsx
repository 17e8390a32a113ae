import type { Item } from "../../src/drawing/model.ts";
import { Box } from "../../src/markup/boxes.ts";
import type { CardContent } from "../../src/model/card-content.ts";
import { unbroken } from "../../src/words/shot-text.ts";
import type { Ruler } from "../../src/words/unit-systems.ts";
import type { FrontLook, Picture, SizedPicture } from "./card-look.ts";
import {
  clearOfPunchMm,
  edgeTab,
  punchMark,
  rulerFigures,
  rulerInMm,
  rulerTicks,
  tabFromMm,
  tabInMm,
} from "./card-marks.ts";

interface CardFrontProps {
  readonly card: CardContent;
  readonly look: FrontLook;
  /** Of the card [mm]. */
  readonly heightMm: number;
  readonly scale: Ruler;
  readonly picture: Picture;
  /** The tip as it should show, where there is room for it. */
  readonly tip?: SizedPicture;
}

/** What to make up, and how far the float is set: a ruler along one edge, the hole's corner kept clear. */
export function CardFront({ card, look, heightMm, scale, picture, tip }: CardFrontProps) {
  const { marginMm, lineHeight } = look;
  const words = { sizePt: look.wordPt, lineHeight, loneWord: "joined" } as const;
  const besideTabMm = card.level === undefined ? 0 : Math.max(0, tabInMm(look) - marginMm);
  const leftMm = Math.max(marginMm, rulerInMm(look));
  /** The ruler's figures beside a part of the front that begins so far from its head. */
  const figuresBeside = (fromMm: number, highMm: number): Item[] => [
    {
      kind: "group",
      xMm: -leftMm,
      yMm: -fromMm,
      items: rulerFigures(heightMm, look, scale, { fromMm, toMm: fromMm + highMm }),
    },
  ];
  return (
    <Box
      tag="Sect"
      style={{ padding: marginMm, paddingLeft: leftMm, ...words }}
      draw={(widthMm) => [
        ...punchMark(widthMm, "right", look),
        ...rulerTicks(heightMm, look, scale),
        ...(card.level === undefined
          ? []
          : edgeTab(widthMm, tabFromMm(look), { water: card.water, bars: card.level }, look)),
      ]}
    >
      <Box style={{ grow: 1 }} draw={(_, highMm) => figuresBeside(marginMm, highMm)}>
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
      <Box style={{ direction: "row", gap: 1.5, align: "end", marginTop: 1 }}>
        <Box style={{ grow: 1 }}>
          <Box
            tag="P"
            field="float setting"
            style={{ sizePt: look.settingPt, lineHeight: 1.05, face: "bold" }}
          >
            {unbroken(card.drawn.setAt)}
          </Box>
          <Box draw={(_, highMm) => figuresBeside(heightMm - marginMm - highMm, highMm)}>
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
