import type { Item } from "../../src/drawing/model.ts";
import { Box, type Draw } from "../../src/markup/boxes.ts";
import { hairline, heavy } from "../rules.ts";

interface TrueSizePageProps {
  readonly title: string;
  readonly lines: readonly string[];
  readonly bodyPt: number;
  readonly marginMm: number;
  /** What the bar at the foot is, and the bar. */
  readonly check: { readonly text: string; readonly heightMm: number; readonly draw: Draw };
  readonly children: ReturnType<typeof Box> | readonly ReturnType<typeof Box>[];
}

/** A page whose pictures are as large as what they show, with a bar to check that the printer kept them so. */
export function TrueSizePage({ title, lines, bodyPt, marginMm, check, children }: TrueSizePageProps) {
  return (
    <Box style={{ padding: marginMm, sizePt: bodyPt, lineHeight: 1.25, gap: 1.5 }} field={title}>
      <Box tag="H1" style={{ sizePt: 1.4 * bodyPt, face: "bold" }}>
        {title}
      </Box>
      {lines.map((line) => (
        <Box key={line} tag="P">
          {line}
        </Box>
      ))}
      {children}
      <Box style={{ grow: 1 }} />
      <Box artifact style={{ height: check.heightMm }} draw={check.draw} />
      <Box tag="P" style={{ textAlign: "center" }}>
        {check.text}
      </Box>
    </Box>
  );
}

interface SlotFigureProps {
  readonly title: string;
  readonly alt: string;
  readonly heightMm: number;
  /** From the margin. */
  readonly inMm: number;
  readonly items: readonly Item[];
}

/** A slot with the metal that it is for. */
export function SlotFigure({ title, alt, heightMm, inMm, items }: SlotFigureProps) {
  return (
    <Box>
      <Box tag="P" style={{ face: "bold" }}>
        {title}
      </Box>
      <Box
        tag="Figure"
        alt={alt}
        style={{ height: heightMm + 1 }}
        draw={() => [{ kind: "group", xMm: inMm, yMm: 1, items }]}
      />
    </Box>
  );
}

interface GaugeRow {
  readonly size: string;
  readonly mass: string;
  readonly metal: string;
  readonly across: string;
  readonly diameterMm: number;
  readonly alt: string;
}

/** Every shot of the tub as a disc of its true size. */
export function GaugeTable({ head, rows }: { head: readonly string[]; rows: readonly GaugeRow[] }) {
  const cell = { grow: 1, paddingTop: 0.4, paddingBottom: 0.4 };
  return (
    <Box tag="Table">
      <Box tag="TR" style={{ direction: "row", align: "end" }} paint={{ ruleBelow: heavy }}>
        {head.map((text) => (
          <Box key={text} tag="TH" style={{ ...cell, face: "bold" }}>
            {text}
          </Box>
        ))}
      </Box>
      {rows.map((row) => (
        <Box
          key={row.size}
          tag="TR"
          style={{ direction: "row", align: "center" }}
          paint={{ ruleBelow: hairline }}
        >
          <Box tag="TH" style={cell}>
            {row.size}
          </Box>
          {[row.mass, row.metal, row.across].map((text, i) => (
            <Box key={String(i)} tag="TD" style={cell}>
              {text}
            </Box>
          ))}
          <Box tag="TD" style={cell}>
            <Box
              tag="Figure"
              alt={row.alt}
              style={{ height: Math.max(row.diameterMm, 5) + 0.6 }}
              draw={(_, heightMm) => disc(row.diameterMm, heightMm)}
            />
          </Box>
        </Box>
      ))}
    </Box>
  );
}

function disc(diameterMm: number, heightMm: number): Item[] {
  const radiusMm = diameterMm / 2;
  return [{ kind: "circle", cxMm: 5, cyMm: heightMm / 2, radiusMm, fill: "ink" }];
}
