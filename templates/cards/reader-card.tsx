import { Box } from "../../src/markup/boxes.ts";
import type { CardContent, CardDepth } from "../../src/model/card-content.ts";
import type { WordKeyIn, Words } from "../../src/words/words.ts";
import { Table } from "../table.tsx";
import { CardFront, type Picture } from "./front.tsx";
import { clearOfPunchMm, punchMark } from "./punch.ts";

/** A card in clear or large print: one size of type for everything, drawing labels included. */
export interface ReaderFormat {
  readonly name: "A7" | "A6" | "A5";
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
  readonly typePt: number;
  /** Width of the column that names the rows of the shot table [mm]. */
  readonly nameWidthMm: number;
  /** Whether depths stand one below another, for want of width. */
  readonly stacked: boolean;
  /** Whether rows of the table have their short names. */
  readonly shortNames: boolean;
  readonly boxHeightMm: number;
}

/** What of a rig stands on the back of a card; what is missing was left to the next larger format. */
export interface ReaderBackParts {
  readonly depths: readonly CardDepth[];
  readonly line: boolean;
  readonly box: boolean;
  readonly setDepth: boolean;
  readonly recordDepth: boolean;
  readonly tipSays: boolean;
  readonly feed: boolean;
  readonly publisher: boolean;
}

/** Front: the name and the drawing. */
export function ReaderFront({
  card,
  format,
  picture,
}: {
  card: CardContent;
  format: ReaderFormat;
  picture: Picture;
}) {
  const { marginMm, typePt } = format;
  return CardFront({ title: card.title, picture, marginMm, typePt, lineHeight: 1.2, gapMm: 2 });
}

interface ReaderBackProps {
  readonly card: CardContent;
  readonly format: ReaderFormat;
  readonly parts: ReaderBackParts;
  readonly words: Words;
  readonly code?: Picture & { readonly sizeMm: number };
}

/** Back: the shot table and, as far as there is room, all else that the card says. */
export function ReaderBack({ card, format, parts, words, code }: ReaderBackProps) {
  const type = { sizePt: format.typePt, lineHeight: 1.15 };
  const paragraphs = [
    ...(parts.line
      ? [{ field: "line and hook", text: `${card.mainLine}. ${card.hookLength}. ${card.hook}.` }]
      : []),
    { field: "shot scale and metal", text: card.shot },
    ...(parts.setDepth ? [{ field: "setting the depth", text: card.setDepth }] : []),
    ...(parts.recordDepth ? [{ field: "recording the depth", text: card.recordDepth }] : []),
    ...(parts.tipSays ? [{ field: "what the tip says", text: card.tipSays }] : []),
    ...(parts.feed ? [{ field: "feed", text: card.feed }] : []),
  ];
  return (
    <Box
      tag="Sect"
      style={{ padding: format.marginMm, gap: 1.5, ...type }}
      draw={(widthMm) => punchMark(widthMm, "left")}
    >
      <Box tag="H1" field="title" style={{ face: "bold", paddingLeft: clearOfPunchMm(format.marginMm) }}>
        {card.title}
      </Box>
      {format.stacked ? (
        <StackedTable depths={parts.depths} format={format} words={words} />
      ) : (
        <WideTable depths={parts.depths} format={format} words={words} />
      )}
      {paragraphs.map(({ field, text }) => (
        <Box key={text} tag="P" field={field}>
          {text}
        </Box>
      ))}
      <Box tag="P" field="caution" style={{ face: "bold" }}>
        {card.caution}
      </Box>
      <Box style={{ grow: 1 }} />
      {parts.box && <Foot format={format} words={words} code={code} />}
      {parts.publisher && (
        <Box tag="P" field="publisher">
          {card.publisher}
        </Box>
      )}
    </Box>
  );
}

function Foot({ format, words, code }: Pick<ReaderBackProps, "format" | "words" | "code">) {
  return (
    <Box style={{ direction: "row", gap: 3, align: "end" }}>
      <Box
        tag="P"
        field="box to write in"
        style={{ grow: 1, height: format.boxHeightMm, padding: 1.5 }}
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

interface TableProps {
  readonly depths: readonly CardDepth[];
  readonly format: ReaderFormat;
  readonly words: Words;
}

/** Depths side by side. */
function WideTable({ depths, format, words }: TableProps) {
  return (
    <Table
      field="shot table"
      nameWidth={format.nameWidthMm}
      gap={0.6}
      nameStyle={{}}
      cellStyle={{}}
      head={[words("card.depth"), ...depths.map((d) => d.depth)]}
      rows={rowsOf(words, format, depths)}
    />
  );
}

/** A table for each depth, one below another. */
function StackedTable({ depths, format, words }: TableProps) {
  return (
    <Box style={{ gap: 1 }}>
      {depths.map((depth) => (
        <Table
          key={depth.depth}
          field="shot table"
          nameWidth={format.nameWidthMm}
          gap={0.2}
          nameStyle={{}}
          cellStyle={{}}
          head={[words("card.depth"), depth.depth]}
          rows={rowsOf(words, format, [depth])}
        />
      ))}
    </Box>
  );
}

function rowsOf(words: Words, { shortNames }: ReaderFormat, depths: readonly CardDepth[]) {
  const row = (name: WordKeyIn<"card.short">, field: string, pick: (depth: CardDepth) => string) => ({
    name: words(shortNames ? `card.short.${name}` : `card.${name}`),
    field,
    cells: depths.map(pick),
  });
  const locked = depths.some((depth) => depth.lock !== undefined);
  return [
    row("set-float-at", "float setting", (d) => d.setFloatAt),
    ...(locked ? [row("lock", "locking shot", (d) => d.lock ?? "")] : []),
    row("on-line", "shot on the line", (d) => d.onLine),
    row("tip", "tip showing", (d) => d.tip),
  ];
}
