import { Box, mmPerPoint } from "../../src/markup/boxes.ts";
import type { CardContent } from "../../src/model/card-content.ts";
import type { Words } from "../../src/words/words.ts";
import { Table } from "../table.tsx";
import { CardFront, type Picture } from "./front.tsx";
import { clearOfPunchMm, punchMark } from "./punch.ts";

/** The pocket card. Size: ISO/IEC 7810:2019, ID-1. Type and depths: the guide's own rule for this format. */
export const id1 = {
  widthMm: 85.6,
  heightMm: 53.98,
  marginMm: 2.6,
  figurePt: 9,
  wordPt: 8,
} as const;

/** Front, held upright. */
export function Id1Front({ card, picture }: { card: CardContent; picture: Picture }) {
  const { marginMm, figurePt: typePt } = id1;
  return CardFront({ title: card.title, picture, marginMm, typePt, lineHeight: 1.15, gapMm: 1 });
}

interface Id1BackProps {
  readonly card: CardContent;
  readonly words: Words;
  /** Drawn where the card says where its page is; without it there is a box to write in. */
  readonly code?: Picture & { readonly sizeMm: number; readonly quietMm: number };
}

const small = { sizePt: id1.wordPt, lineHeight: 1.06 };
const figure = { sizePt: id1.figurePt, lineHeight: 1.06 };

/** Back, held lying: what to put on the line and where to set the float, by depth. */
export function Id1Back({ card, words, code }: Id1BackProps) {
  const { depths } = card;
  const cells = (pick: (depth: CardContent["depths"][number]) => string) => depths.map(pick);
  return (
    <Box
      tag="Sect"
      style={{ padding: id1.marginMm, justify: "between" }}
      draw={(widthMm) => punchMark(widthMm)}
    >
      <Box
        tag="H1"
        field="title"
        style={{ ...figure, face: "bold", paddingRight: clearOfPunchMm(id1.marginMm) }}
      >
        {card.title}
      </Box>
      <Table
        field="shot table"
        nameWidth={20}
        gap={0.2}
        nameStyle={small}
        cellStyle={figure}
        head={[words("card.depth"), ...cells((d) => d.depth)]}
        rows={[
          { name: words("card.set-float-at"), cells: cells((d) => d.setFloatAt), field: "float setting" },
          ...(depths[0]?.lock === undefined
            ? []
            : [{ name: words("card.lock"), cells: cells((d) => d.lock ?? ""), field: "locking shot" }]),
          { name: words("card.on-line"), cells: cells((d) => d.onLine), field: "shot on the line" },
          { name: words("card.tip"), cells: cells((d) => d.tip), field: "tip showing" },
        ]}
      />
      <Box style={{ direction: "row", gap: 2, align: "end" }}>
        <Box style={{ grow: 1, gap: 0.4 }}>
          <Box tag="P" field="line, hook, shot scale and metal" style={figure}>
            {`${card.mainLine}. ${card.hookLength}. ${card.hook}. ${card.shot}`}
          </Box>
          <Box tag="P" field="caution" style={{ ...small, face: "bold", marginTop: 1 }}>
            {card.caution}
          </Box>
          <Box tag="P" field="publisher" style={small}>
            {card.publisher}
          </Box>
        </Box>
        {code ? (
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
        )}
      </Box>
    </Box>
  );
}

/** A code whose quiet zone lies in the margin of the card and in the gaps around it. */
function Code({ alt, draw, sizeMm, quietMm }: NonNullable<Id1BackProps["code"]>) {
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

/** Size of a line of the figures' type [mm], for drawings. */
export const id1FigureMm = id1.figurePt * mmPerPoint;
