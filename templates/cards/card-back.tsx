import { Box, Inline } from "../../src/markup/boxes.ts";
import type { CardChoice, CardContent, CardPart } from "../../src/model/card-content.ts";
import type { Words } from "../../src/words/words.ts";
import type { PlacedLogo } from "../logo.ts";
import { Table, type TableProps } from "../table.tsx";
import type { BackLook, Picture, SizedPicture } from "./card-look.ts";
import { clearOfPunchMm, punchMark } from "./card-marks.ts";

/** A code that opens the rig's page; its size has its quiet zone in it. */
export interface CardCode extends Picture {
  readonly sizeMm: number;
  /** Where it leads, in words. */
  readonly address: string;
}

interface SaidProps {
  readonly card: CardContent;
  readonly choice: Pick<CardChoice, "parts">;
  readonly look: BackLook;
  /** Whether hook, bait and line found no room on the front. */
  readonly tackle: boolean;
}

interface CardBackProps extends SaidProps {
  readonly choice: CardChoice;
  readonly words: Words;
  /** Setting and shot by depth. */
  readonly table: Pick<TableProps, "widths" | "head" | "columns" | "rows">;
  /** Where the card says where its page is. */
  readonly code: CardCode | undefined;
  /** A gauge for the rig's shot, where there is room. */
  readonly gauge: SizedPicture | undefined;
  /** The mark of the guide's makers, where there is one and a format has it. */
  readonly mark: PlacedLogo | undefined;
}

/** Setting and shot by depth and, as far as there is room, all else that the card says. */
export function CardBack(props: CardBackProps) {
  const { card, look, table } = props;
  const { marginMm, punch } = look;
  const clearMm = clearOfPunchMm(marginMm, punch, look);
  const type = typeOf(look);
  return (
    <Box
      tag="Sect"
      style={{ padding: marginMm, gap: look.gapMm, ...type }}
      draw={(widthMm) => punchMark(widthMm, punch, look)}
    >
      <Box
        tag="H1"
        field="title"
        style={{
          sizePt: look.figurePt,
          face: "bold",
          ...(punch === "left" ? { paddingLeft: clearMm } : { paddingRight: clearMm }),
        }}
      >
        {card.title}
      </Box>
      <Table
        field="shot table"
        gap={look.rowGapMm}
        nameStyle={type}
        cellStyle={{ sizePt: look.figurePt, lineHeight: look.lineHeight }}
        {...table}
      />
      {saidBelow(props)}
      <Box style={{ grow: 1 }} />
      {props.gauge && <Gauge {...props} gauge={props.gauge} />}
      <Foot {...props} />
      <Makers {...props} />
    </Box>
  );
}

const typeOf = ({ wordPt, lineHeight }: BackLook) =>
  ({ sizePt: wordPt, lineHeight, loneWord: "joined" }) as const;

const saidBelow = (props: SaidProps) =>
  props.look.said === "apart" ? said(props).map(inLinesOfItsOwn) : <RunOn said={said(props)} />;

/** What stands below the table alone, to learn how high it is. */
export function SaidAlone(props: SaidProps) {
  return <Box style={{ gap: props.look.gapMm, ...typeOf(props.look) }}>{saidBelow(props)}</Box>;
}

/** Something that the card says below the table: sentences that belong together. */
interface Said {
  readonly field: string;
  readonly sentences: readonly string[];
  /** What of it is bold: all, or what its sentences begin with, as far as their colon. */
  readonly bold?: "all" | "lead";
}

/** What stands below the table, in the order in which it is needed at the water. */
function said({ card, choice: { parts }, tackle }: SaidProps): Said[] {
  const part = (name: CardPart, field: string, sentences: readonly string[], bold?: Said["bold"]): Said[] =>
    parts.has(name) && sentences.length > 0 ? [{ field, sentences, ...(bold && { bold }) }] : [];
  const one = (sentence: string | undefined) => (sentence === undefined ? [] : [sentence]);
  const tip = card.tipInSays && parts.has("float-says") ? [] : one(card.tipShowing);
  return [
    ...(tackle ? [{ field: "tackle", sentences: [card.tackle, card.metal] }] : []),
    {
      field: "places",
      sentences: [
        ...tip,
        card.placesFrom,
        ...(parts.has("made-up") ? card.madeUp : []),
        ...(parts.has("ruler") ? [card.ruler] : []),
        ...(parts.has("other-depth") ? one(card.otherDepth) : []),
        ...(parts.has("depth-between") ? one(card.depthBetween) : []),
      ],
    },
    ...part("float-says", "what the float says", card.floatSays, "lead"),
    ...part("change-first", "change first", one(card.changeFirst), "lead"),
    ...part("tip-says", "what the tip says", [card.tipSays]),
    ...part("set-depth", "setting the depth", [card.setDepth]),
    ...part("record-depth", "recording the depth", [card.recordDepth]),
    ...part("signs", "signs", card.signs),
    ...part("feed", "feed", [card.feed]),
    ...part("findings", "findings", card.findings, "all"),
    ...(card.leadWarning
      ? [{ field: "rule on lead", sentences: [card.leadWarning], bold: "all" } as const]
      : []),
    { field: "caution", sentences: [card.caution], bold: "all" },
  ];
}

function inLinesOfItsOwn(one: Said) {
  return (
    <Box key={one.field} tag="P" field={one.field}>
      {sentences(one)}
    </Box>
  );
}

/** All of it as one paragraph, which takes the least room. */
function RunOn({ said }: { said: readonly Said[] }) {
  return (
    <Box tag="P" field="what stands below the table">
      {said.flatMap((one, i) => [...(i > 0 ? [" "] : []), ...sentences(one)])}
    </Box>
  );
}

function sentences({ sentences, bold }: Said) {
  return sentences.flatMap((sentence, i) => {
    const [, lead, rest] =
      bold === "lead" ? divided(sentence) : ["", bold ? sentence : "", bold ? "" : sentence];
    return [...(i > 0 ? [" "] : []), ...(lead ? [<Inline face="bold">{lead}</Inline>] : []), rest];
  });
}

const divided = (sentence: string) => /^((?:[^:.]|\.(?! ))*:)(.*)$/s.exec(sentence) ?? ["", "", sentence];

function Gauge({ gauge: { alt, heightMm, draw }, words }: CardBackProps & { gauge: SizedPicture }) {
  return (
    <Box>
      <Box tag="P" field="how to use the gauge">
        {words("card.gauge")}
      </Box>
      <Box
        tag="Figure"
        alt={alt}
        field="shot gauge"
        style={{ height: heightMm, marginTop: 1.8 }}
        draw={draw}
      />
    </Box>
  );
}

/** Who made the card, their mark, and where they are found. */
function Makers({ card, choice: { parts }, mark }: CardBackProps) {
  const lines = [
    ...(parts.has("publisher") ? [{ field: "publisher", text: card.publisher }] : []),
    ...(parts.has("find-us") && card.findUs !== undefined
      ? [{ field: "address of the makers", text: card.findUs }]
      : []),
  ];
  const shown = parts.has("logo") ? mark : undefined;
  if (lines.length === 0 && !shown) return null;
  return (
    <Box style={{ direction: "row", gap: 2, align: "center" }}>
      {shown && <Box artifact style={{ width: shown.widthMm, height: shown.heightMm }} draw={shown.draw} />}
      <Box style={{ grow: 1 }}>
        {lines.map(({ field, text }) => (
          <Box key={field} tag="P" field={field}>
            {text}
          </Box>
        ))}
      </Box>
    </Box>
  );
}

/** What is written in by hand, and the code that opens the rig's page. */
function Foot({ look, choice: { parts }, words, code }: CardBackProps) {
  const toWriteOn = { ruleBelow: { widthMm: 0.35, ink: "ink" } } as const;
  return (
    <Box style={{ direction: "row", gap: 2, align: "end" }}>
      <Box style={{ grow: 1, gap: 1 }}>
        {parts.has("write-in") && (
          <Box style={{ direction: "row", gap: 2, height: look.writeInMm, align: "stretch" }}>
            <Box tag="P" field="name line" style={{ grow: 1.6 }} paint={toWriteOn}>
              {words("card.name-line")}
            </Box>
            <Box tag="P" field="today’s depth" style={{ grow: 1 }} paint={toWriteOn}>
              {words("card.write-depth")}
            </Box>
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
