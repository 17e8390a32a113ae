import { Box } from "../../src/markup/boxes.ts";
import { Table } from "../table.tsx";
import type { CardBackProps, CardCode, CardFaces } from "./card-faces.ts";
import { CardFront } from "./front.tsx";
import { clearOfPunchMm, punchMark } from "./punch.ts";
import { shotRows } from "./shot-rows.ts";

/** Margin and type of the pocket card: the guide's own rule for this format. */
interface PocketLook {
  readonly marginMm: number;
  readonly figurePt: number;
  readonly wordPt: number;
}

/** The pocket card: its front is held upright, its back lying. */
export function pocketFaces(look: PocketLook): CardFaces {
  const { marginMm, figurePt: typePt } = look;
  return {
    front: ({ title }, picture) =>
      CardFront({ title, picture, marginMm, typePt, lineHeight: 1.15, gapMm: 1 }),
    back: (props) => PocketBack({ ...props, look }),
  };
}

/** What to put on the line and where to set the float, by depth. */
function PocketBack({ card, parts, words, code, look }: CardBackProps & { look: PocketLook }) {
  const { marginMm } = look;
  const small = { sizePt: look.wordPt, lineHeight: 1.06 };
  const figure = { sizePt: look.figurePt, lineHeight: 1.06 };
  return (
    <Box tag="Sect" style={{ padding: marginMm, justify: "between" }} draw={(widthMm) => punchMark(widthMm)}>
      <Box tag="H1" field="title" style={{ ...figure, face: "bold", paddingRight: clearOfPunchMm(marginMm) }}>
        {card.title}
      </Box>
      <Table
        field="shot table"
        nameWidth={20}
        gap={0.2}
        nameStyle={small}
        cellStyle={figure}
        {...shotRows(card, parts, words, "long")}
      />
      <Box style={{ direction: "row", gap: 2, align: "end" }}>
        <Box style={{ grow: 1, gap: 0.4 }}>
          <Box tag="P" field="line, hook, shot scale and metal" style={figure}>
            {`${card.mainLine}. ${card.hookLength}. ${card.hook}. ${card.shot}`}
          </Box>
          {card.leadWarning && (
            <Box tag="P" field="rule on lead" style={{ ...figure, face: "bold" }}>
              {card.leadWarning}
            </Box>
          )}
          <Box tag="P" field="caution" style={{ ...small, face: "bold", marginTop: 1 }}>
            {card.caution}
          </Box>
          {parts.extras.has("publisher") && (
            <Box tag="P" field="publisher" style={small}>
              {card.publisher}
            </Box>
          )}
        </Box>
        {parts.extras.has("box") &&
          (code ? (
            <Code {...code} />
          ) : (
            <Box
              tag="P"
              field="box to write in"
              style={{ ...small, width: 17, height: 11, padding: 0.8 }}
              paint={{ frame: { widthMm: 0.35, ink: "ink" } }}
            >
              {words("card.write-depth")}
            </Box>
          ))}
      </Box>
    </Box>
  );
}

/** A code whose quiet zone lies in the margin of the card and in the gaps around it. */
function Code({ alt, draw, sizeMm, quietMm }: CardCode) {
  const innerMm = sizeMm - 2 * quietMm;
  return (
    <Box
      tag="Figure"
      alt={alt}
      field="code"
      style={{ width: innerMm, height: innerMm, marginTop: quietMm }}
      draw={() => [{ kind: "group", xMm: -quietMm, yMm: -quietMm, items: draw(sizeMm, sizeMm) }]}
    />
  );
}
