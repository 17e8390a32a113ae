import { Box } from "../../src/markup/boxes.ts";
import type { CardChoice, CardContent, CardPart } from "../../src/model/card-content.ts";
import type { Words } from "../../src/words/words.ts";
import { Table } from "../table.tsx";
import type { CardLook, Picture } from "./card-look.ts";
import { clearOfPunchMm, punchMark } from "./card-marks.ts";
import { shotRows } from "./shot-rows.ts";

/** A code that opens the rig's page; its size has its quiet zone in it. */
export interface CardCode extends Picture {
  readonly sizeMm: number;
  /** Where it leads, in words. */
  readonly address: string;
}

interface CardBackProps {
  readonly card: CardContent;
  readonly choice: CardChoice;
  readonly words: Words;
  readonly look: CardLook;
  /** Where the card says where its page is. */
  readonly code?: CardCode;
}

/** Setting and shot by depth and, as far as there is room, all else that the card says. */
export function CardBack(props: CardBackProps) {
  const { card, choice, words, look } = props;
  const { marginMm, backPunch } = look;
  const clearMm = clearOfPunchMm(marginMm, look);
  const type = { sizePt: look.wordPt, lineHeight: look.lineHeight };
  return (
    <Box
      tag="Sect"
      style={{ padding: marginMm, gap: look.gapMm, ...type }}
      draw={(widthMm) => punchMark(widthMm, backPunch, look)}
    >
      <Box
        tag="H1"
        field="title"
        style={{
          sizePt: look.figurePt,
          face: "bold",
          ...(backPunch === "left" ? { paddingLeft: clearMm } : { paddingRight: clearMm }),
        }}
      >
        {card.title}
      </Box>
      <Table
        field="shot table"
        nameWidth={look.nameWidthMm}
        gap={0.15}
        nameStyle={type}
        cellStyle={{ sizePt: look.figurePt, lineHeight: look.lineHeight }}
        {...shotRows(card, choice, words, { sizePt: look.rowSettingPt, lineHeight: 1, face: "bold" })}
      />
      {paragraphs(card, choice.parts, look).map(({ field, text, bold }) => (
        <Box key={field} tag="P" field={field} style={bold ? { face: "bold" } : {}}>
          {text}
        </Box>
      ))}
      <Box style={{ grow: 1 }} />
      <Foot {...props} />
      {choice.parts.has("publisher") && (
        <Box tag="P" field="publisher">
          {card.publisher}
        </Box>
      )}
    </Box>
  );
}

interface Paragraph {
  readonly field: string;
  readonly text: string;
  readonly bold?: boolean;
}

/** What stands below the table, in the order in which it is needed at the water. */
function paragraphs(card: CardContent, parts: ReadonlySet<CardPart>, { tackleOn }: CardLook): Paragraph[] {
  const extra = (name: CardPart, field: string, text: string | undefined): Paragraph[] =>
    parts.has(name) && text ? [{ field, text }] : [];
  return [
    ...(tackleOn === "back" ? [{ field: "tackle", text: card.tackle }] : []),
    {
      field: "metal",
      text: [...(parts.has("other-depth") ? [card.otherDepth] : []), card.metal].join(" "),
    },
    ...extra("float-says", "what the float says", card.floatSays.join(" ")),
    ...extra("change-first", "change first", card.changeFirst),
    ...extra("tip-says", "what the tip says", card.tipSays),
    ...extra("set-depth", "setting the depth", card.setDepth),
    ...extra("record-depth", "recording the depth", card.recordDepth),
    ...extra("feed", "feed", card.feed),
    ...(card.leadWarning ? [{ field: "rule on lead", text: card.leadWarning, bold: true }] : []),
    { field: "caution", text: card.caution, bold: true },
  ];
}

/** What is written in by hand, and the code that opens the rig's page. */
function Foot({ look, choice: { parts }, words, code }: CardBackProps) {
  const line = { widthMm: 0.35, ink: "ink" } as const;
  return (
    <Box style={{ direction: "row", gap: 2, align: "end" }}>
      <Box style={{ grow: 1, gap: 1 }}>
        {parts.has("name-line") && (
          <Box
            tag="P"
            field="name line"
            style={{ height: look.boxHeightMm * 0.7 }}
            paint={{ ruleBelow: line }}
          >
            {words("card.name-line")}
          </Box>
        )}
        {parts.has("box") && (
          <Box
            tag="P"
            field="box to write in"
            style={{ height: look.boxHeightMm, padding: 0.8 }}
            paint={{ frame: line }}
          >
            {words("card.write-depth")}
          </Box>
        )}
        {parts.has("code") && code && (
          <Box tag="P" field="address">
            {code.address}
          </Box>
        )}
      </Box>
      {parts.has("code") && code && (
        <Box
          tag="Figure"
          alt={code.alt}
          field="code"
          style={{ width: code.sizeMm, height: code.sizeMm }}
          draw={code.draw}
        />
      )}
    </Box>
  );
}
