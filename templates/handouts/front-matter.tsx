import { Box, Inline } from "../../src/markup/boxes.ts";
import type { RasterImage } from "../../src/model/own-image.ts";
import { placedLogo } from "../logo.ts";
import { type HandoutFormat, headingScale } from "./format.ts";

interface TitlePageProps {
  readonly format: HandoutFormat;
  readonly title: string;
  readonly publisher: string;
  readonly lines: readonly string[];
  readonly logo: RasterImage | undefined;
}

const logoHeightMm = 22;

/** First page of the booklet, without a column's edges. */
export function TitlePage({ format, title, publisher, lines, logo }: TitlePageProps) {
  return (
    <Box style={{ sizePt: format.bodyPt, lineHeight: 1.35, gap: 4, justify: "center" }} field="title page">
      {logo && (
        <Box
          artifact
          style={{ height: logoHeightMm }}
          draw={(widthMm) => placedLogo(logo, { widthMm, heightMm: logoHeightMm }).draw()}
        />
      )}
      <Box tag="H1" style={{ sizePt: format.bodyPt * 2.2, lineHeight: 1.15, face: "bold" }}>
        {title}
      </Box>
      <Box tag="P" style={{ sizePt: format.bodyPt * headingScale[2] }}>
        {publisher}
      </Box>
      {lines.map((line) => (
        <Box key={line} tag="P">
          {line}
        </Box>
      ))}
    </Box>
  );
}

interface ContentsEntry {
  readonly title: string;
  readonly page: number;
  readonly link: string;
}

/** The lessons with the pages they begin on, as a list of contents, so that both are read together. */
export function ContentsColumn({
  format,
  title,
  head,
  entries,
}: {
  format: HandoutFormat;
  title: string;
  head: readonly [string, string];
  entries: readonly ContentsEntry[];
}) {
  const numberWidth = format.bodyPt * 1.2;
  return (
    <Box style={{ sizePt: format.bodyPt, lineHeight: 1.25, gap: 2.4 }} field="contents">
      <Box tag="H1" style={{ sizePt: format.bodyPt * headingScale[1], lineHeight: 1.2, face: "bold" }}>
        {title}
      </Box>
      <Box style={{ direction: "row" }}>
        <Box tag="P" style={{ grow: 1, face: "bold" }}>
          {head[0]}
        </Box>
        <Box tag="P" style={{ width: numberWidth, textAlign: "right", face: "bold" }}>
          {head[1]}
        </Box>
      </Box>
      <Box tag="TOC">
        {entries.map((entry) => (
          <Box key={entry.title} tag="TOCI" style={{ direction: "row", align: "end" }}>
            <Box tag="P" style={{ grow: 1, paddingRight: 3 }}>
              <Inline link={entry.link}>{entry.title}</Inline>
            </Box>
            <Box tag="P" style={{ width: numberWidth, textAlign: "right" }}>
              {String(entry.page)}
            </Box>
          </Box>
        ))}
      </Box>
    </Box>
  );
}
