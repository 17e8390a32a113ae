import { Box } from "../../src/markup/boxes.ts";
import type { CardContent } from "../../src/model/card-content.ts";
import { Table } from "../table.tsx";
import type { CardBackProps, CardFaces } from "./card-faces.ts";
import { CardFront } from "./front.tsx";
import { clearOfPunchMm, punchMark } from "./punch.ts";
import { shotRows } from "./shot-rows.ts";

/** Look of a card in clear or large print: one size of type for everything, drawing labels included. */
interface ReaderLook {
  readonly marginMm: number;
  readonly typePt: number;
  readonly lineHeight: number;
  /** Width of the column that names the rows of the shot table [mm]. */
  readonly nameWidthMm: number;
  readonly names: "long" | "short";
  /** Depths of the table: one below another for want of width, or side by side. */
  readonly depths: "stacked" | "side by side";
  /** Line, hook and shot scale in one paragraph, or in two. */
  readonly tackle: "in one" | "in two";
  /** Between paragraphs [mm]. */
  readonly gapMm: number;
  readonly boxHeightMm: number;
}

type BackProps = CardBackProps & { readonly look: ReaderLook };

export function readerFaces(look: ReaderLook): CardFaces {
  const { marginMm, typePt } = look;
  return {
    front: ({ title }, picture) => CardFront({ title, picture, marginMm, typePt, lineHeight: 1.2, gapMm: 2 }),
    back: (props) => ReaderBack({ ...props, look }),
  };
}

/** The shot table and, as far as there is room, all else that the card says. */
function ReaderBack(props: BackProps) {
  const { card, parts, look } = props;
  const { extras } = parts;
  const type = { sizePt: look.typePt, lineHeight: look.lineHeight };
  const paragraphs = [
    ...tackle(card, look),
    ...(extras.has("set-depth") ? [{ field: "setting the depth", text: card.setDepth }] : []),
    ...(extras.has("record-depth") ? [{ field: "recording the depth", text: card.recordDepth }] : []),
    ...(extras.has("tip-says") ? [{ field: "what the tip says", text: card.tipSays }] : []),
    ...(extras.has("feed") ? [{ field: "feed", text: card.feed }] : []),
  ];
  const cautions = [
    ...(card.leadWarning ? [{ field: "rule on lead", text: card.leadWarning }] : []),
    { field: "caution", text: card.caution },
  ];
  return (
    <Box
      tag="Sect"
      style={{ padding: look.marginMm, gap: look.gapMm, ...type }}
      draw={(widthMm) => punchMark(widthMm, "left")}
    >
      <Box tag="H1" field="title" style={{ face: "bold", paddingLeft: clearOfPunchMm(look.marginMm) }}>
        {card.title}
      </Box>
      {look.depths === "stacked" ? <StackedTables {...props} /> : <ShotTable {...props} gap={0.6} />}
      {paragraphs.map(({ field, text }) => (
        <Box key={text} tag="P" field={field}>
          {text}
        </Box>
      ))}
      {cautions.map(({ field, text }) => (
        <Box key={text} tag="P" field={field} style={{ face: "bold" }}>
          {text}
        </Box>
      ))}
      <Box style={{ grow: 1 }} />
      {extras.has("box") && <Foot {...props} />}
      {extras.has("publisher") && (
        <Box tag="P" field="publisher">
          {card.publisher}
        </Box>
      )}
    </Box>
  );
}

/** What the rig is made of, in two paragraphs or, for want of height, in one. */
function tackle({ mainLine, hookLength, hook, shot }: CardContent, { tackle: paragraphs }: ReaderLook) {
  const line = `${mainLine}. ${hookLength}. ${hook}.`;
  return paragraphs === "in one"
    ? [{ field: "line, hook, shot scale and metal", text: `${line} ${shot}` }]
    : [
        { field: "line and hook", text: line },
        { field: "shot scale and metal", text: shot },
      ];
}

function Foot({ look, words, code }: BackProps) {
  return (
    <Box style={{ direction: "row", gap: 3, align: "end" }}>
      <Box
        tag="P"
        field="box to write in"
        style={{ grow: 1, height: look.boxHeightMm, padding: 1.5 }}
        paint={{ frame: { widthMm: 0.4, ink: "ink" } }}
      >
        {words("card.write-depth")}
      </Box>
      {code && (
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

/** Depths side by side. */
function ShotTable({ card, parts, words, look, gap }: BackProps & { gap: number }) {
  return (
    <Table
      field="shot table"
      nameWidth={look.nameWidthMm}
      gap={gap}
      nameStyle={{}}
      cellStyle={{}}
      {...shotRows(card, parts, words, look.names)}
    />
  );
}

/** A table for each depth, one below another. */
function StackedTables(props: BackProps) {
  const { card, parts, words, look } = props;
  return (
    <Box style={{ gap: 1 }}>
      {parts.depths.map((depth) => (
        <Table
          key={depth.depth}
          field="shot table"
          nameWidth={look.nameWidthMm}
          gap={0.2}
          nameStyle={{}}
          cellStyle={{}}
          {...shotRows(card, { ...parts, depths: [depth] }, words, look.names)}
        />
      ))}
    </Box>
  );
}
