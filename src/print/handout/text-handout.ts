import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { LessonColumn } from "../../../templates/handouts/prose.tsx";
import { first, last } from "../../core/lists.ts";
import type { Item } from "../../drawing/model.ts";
import type { CaptionedDrawing, Drawings } from "../../drawing/pictures.ts";
import type { FileFonts } from "../../layout/font-file.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { Overflow } from "../../layout/overflow.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { HandoutSize } from "../../model/addresses.ts";
import { digestOf, digestOnce } from "../../model/digest.ts";
import { knotFilmName } from "../../model/films.ts";
import { linesToFindUs } from "../../model/find-us.ts";
import { once } from "../../model/kept.ts";
import type { Prose } from "../../model/library.ts";
import { linksStartIn } from "../../model/links.ts";
import { startOf } from "../../model/message.ts";
import type { PictureNode, PictureReference } from "../../model/pictures.ts";
import { picturesIn } from "../../model/pictures-in.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { extentOf } from "../extent.ts";
import type { Press } from "../press.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import { linkNamesOf, linksOf, linksWithin, withLinkNames, withPageMarks } from "./links.ts";
import { type PageRows, paginate } from "./paginate.ts";

/** A text as documents know it. */
interface NamedText {
  readonly text: Prose;
  /** Its text with live figures. */
  readonly live: Prose["body"];
  /** The same with its links under the names that documents know them by, made once somebody asks for it. */
  readonly body: () => Prose["body"];
  /** Stands for all that the body is made from. */
  readonly bodyFrom: string;
}

/** A lesson, or a single page such as safety, with where it stands on the site and what its handouts are called. */
export interface HandoutText extends NamedText {
  /** Path of its page below the output folder. */
  readonly page: string;
  readonly path: (size: HandoutSize) => string;
}

export function named(text: Prose, live: Prose["body"]): NamedText {
  const body = once(() => withLinkNames(text, live));
  return { text, live, body, bodyFrom: digestOf(linksStartIn(text.path), digestOnce(live)) };
}

/** A text that says behind each link to these pages on which page of the document that is; itself where it has no such links. */
export function withPagesOf(handout: HandoutText, pages: ReadonlySet<string>, { kit }: Press): HandoutText {
  const { text, live, body, bodyFrom } = handout;
  const marked = linksWithin(linkNamesOf(text, live), pages);
  if (marked.length === 0) return handout;
  return {
    ...handout,
    body: once(() => withPageMarks(body(), pages, kit.words)),
    bodyFrom: digestOf(bodyFrom, "with page marks", marked),
  };
}

/** A text cut into pages: the marks of each page's column, from its top left corner. */
export interface TextPages extends NamedText {
  readonly format: HandoutFormat;
  readonly columns: readonly (readonly Item[])[];
  readonly overflows: readonly Overflow[];
  /** How many columns there are; they themselves are made once somebody asks for them. */
  readonly length: number;
  /** Names of its links. */
  readonly links: readonly string[];
  /** Stands for all that it is made from, and for what stands around it on paper. */
  readonly from: string;
}

export type HandoutPages = HandoutText & TextPages;

/** What of a text is larger than its page, each where it stands in its file, as far as that is known. */
export function textProblems(
  { text, format, overflows }: Pick<TextPages, "text" | "format" | "overflows">,
  side: string,
): DoesNotFit[] {
  return overflows.map((overflow) => ({
    ...overflow,
    of: text.id,
    format: format.name,
    side,
    place: { ...startOf(text.path), ...overflow.at },
  }));
}

/** Share of half a sheet's column that a picture of each kind is wide; steps and states stand two abreast there. */
const pictureShare: Readonly<Record<PictureReference["picture"], number>> = {
  "rig-drawing": 0.64,
  "float-drawing": 1,
  "float-chart": 1,
  "float-states": 0.48,
  "pattern-chart": 1,
  "hang-plot": 0.64,
  film: 0.64,
  bed: 1,
  "spot-rig": 0.64,
  "swim-days": 1,
  knot: 0.48,
  fish: 0.64,
  bait: 0.64,
  scene: 0.75,
  image: 1,
};

/** Width of a half sheet's column in ems of its type: pictures in other columns are as large for their words. */
const halfColumnEm = 28.35;

function pictureWidthMm(reference: PictureReference, format: HandoutFormat): number {
  // A knot that is tied takes as much room as one that is shown.
  const isKnot = reference.picture === "film" && reference.film === knotFilmName;
  const share = pictureShare[isKnot ? "knot" : reference.picture];
  const abreast = reference.picture === "float-states";
  const roomMm = columnWidthMm(format) * (format.columns === 1 || abreast ? share : 1);
  return Math.min(roomMm, share * halfColumnEm * format.bodyPt * mmPerPoint);
}

/** Two floats with their headings and what is said of them stand on a page. */
const floatHeightMm = 62;

/** A text in pages. Where it was laid out before, what does not fit is known at once, its pages once somebody asks for them. */
export function textPages<Text extends NamedText>(
  handout: Text,
  format: HandoutFormat,
  drawings: Drawings,
  press: Press,
): Text & TextPages {
  const { keep, marks, textsFrom } = press;
  const { id, title, summary } = handout.text;
  const from = digestOf(
    textsFrom,
    format,
    [id, title, summary],
    handout.bodyFrom,
    picturesIn(handout.live).map(drawings.from),
  );
  const layOut = () =>
    layOutText(handout, format, drawings, { ...press, closing: linesToFindUs(press.guide) });
  const columns = (laid = layOut) => marks("marks of handout", from, () => laid().columns);
  const told = keep("handout", from, () => {
    const laid = layOut();
    columns(() => laid);
    return { overflows: laid.overflows, length: laid.columns.length, links: linksOf(handout.body()) };
  });
  return {
    ...handout,
    format,
    ...told,
    from: digestOf(press.from, from),
    get columns() {
      return columns();
    },
  };
}

/** All of the press that columns of texts are laid out with. */
interface TextPress extends Pick<Press, "textsFrom" | "kit" | "fonts" | "logo" | "pictures"> {
  /** Where the guide's makers are found. */
  readonly closing: readonly string[];
}

function layOutText(
  handout: NamedText,
  format: HandoutFormat,
  drawings: Drawings,
  { textsFrom, kit, fonts, logo, closing, ...press }: TextPress,
): Pick<TextPages, "columns" | "overflows"> {
  const widthMm = columnWidthMm(format);
  const { id, title, summary } = handout.text;
  const pictures = ({ reference }: PictureNode) => {
    const room = {
      widthMm: pictureWidthMm(reference, format),
      textMm: format.bodyPt * mmPerPoint,
      apart: true,
      floatHeightMm,
    };
    // Drawings abreast stay as high as each other.
    const isAbreast = room.widthMm < widthMm / 2;
    return press.pictures(
      "picture on paper",
      digestOf(textsFrom, drawings.from(reference), room, isAbreast),
      () => {
        const found = drawings(reference, room, kit);
        return isAbreast ? found : found.map((one) => trimmed(one, fonts));
      },
    );
  };
  const props = {
    title,
    summary,
    body: handout.body(),
    format,
    pictures,
    closing,
    logo,
  };
  let [column, pages] = inPages(LessonColumn({ ...props, gapMm: format.gapsMm.usual }), format, fonts);
  if (scant(pages, format)) {
    const closer = inPages(LessonColumn({ ...props, gapMm: format.gapsMm.close }), format, fonts);
    if (closer[1].length < pages.length) [column, pages] = closer;
  }
  return {
    columns: composePages(pages, `text/${id}`),
    overflows: [...column.overflows, ...tooTall(pages, columnHeightMm(format))],
  };
}

/** A drawing without the empty room above and below its marks. */
function trimmed({ drawing, ...rest }: CaptionedDrawing, fonts: FileFonts): CaptionedDrawing {
  const extent = extentOf(drawing.items, fonts);
  if (!extent) return { drawing, ...rest };
  const { top, bottom } = extent;
  const items: Item[] = [{ kind: "group", xMm: 0, yMm: -top, items: drawing.items }];
  return { drawing: { ...drawing, heightMm: bottom - top, items }, ...rest };
}

/** A last page with less than this share of its room in use is hardly worth its paper. */
const scantShare = 0.4;
/** In a text of more columns one page more or less is little, and laying it out once more takes long. */
const fewColumns = 16;

function inPages(
  tree: ReturnType<typeof LessonColumn>,
  format: HandoutFormat,
  fonts: FileFonts,
): [LaidOutPage, PageRows[]] {
  const column = layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  return [column, paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format))];
}

/** Whether the last page, of one column or of two, has little on it. */
function scant(columns: readonly PageRows[], format: HandoutFormat): boolean {
  if (columns.length > fewColumns) return false;
  const onLast = columns.slice(-(columns.length % format.columns || format.columns));
  const usedMm = onLast.reduce((sum, { rows }) => sum + last(rows).bottomMm - first(rows).topMm, 0);
  return usedMm < scantShare * format.columns * columnHeightMm(format);
}

function tooTall(pages: readonly PageRows[], heightMm: number): Overflow[] {
  return pages.flatMap(({ rows }, i) => {
    const overMm = last(rows).bottomMm - first(rows).topMm - heightMm;
    return overMm > 0.03 ? [{ field: `page ${i + 1}`, direction: "down" as const, overMm }] : [];
  });
}
