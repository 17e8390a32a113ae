import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { LessonColumn } from "../../../templates/handouts/prose.tsx";
import type { Lesson } from "../../content/library.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Item } from "../../drawing/model.ts";
import { drawPicture, type PictureSource } from "../../drawing/pictures.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type LaidOutPage, layOut } from "../../layout/lay-out.ts";
import type { Overflow } from "../../layout/overflow.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { PictureNode, PictureReference } from "../../solve/live/pictures.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import { withLinkNames } from "./links.ts";
import { type PageRows, paginate } from "./paginate.ts";

/** A lesson cut into pages: the marks of each page's column, from its top left corner. */
export interface LessonPages {
  readonly lesson: Lesson;
  readonly columns: readonly (readonly Item[])[];
  readonly overflows: readonly Overflow[];
}

/** Share of the column that a picture of each kind is wide; steps and states stand two abreast. */
const pictureShare: Readonly<Record<PictureReference["picture"], number>> = {
  "rig-drawing": 0.72,
  "float-drawing": 0.6,
  "float-chart": 1,
  "float-states": 0.48,
  "pattern-chart": 1,
  "hang-plot": 0.72,
  knot: 0.48,
  scene: 1,
};

export async function lessonPages(
  lesson: Lesson,
  body: Lesson["body"],
  format: HandoutFormat,
  source: PictureSource,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<LessonPages> {
  const widthMm = columnWidthMm(format);
  const { title, summary } = lesson;
  const pictures = ({ reference }: PictureNode) => {
    const room = {
      widthMm: widthMm * pictureShare[reference.picture],
      textMm: format.bodyPt * mmPerPoint,
      apart: true,
    };
    return drawPicture(reference, source, room, kit);
  };
  const column: LaidOutPage = await layOut(
    LessonColumn({ title, summary, body: withLinkNames(body, lesson.id), format, pictures }),
    { widthMm },
    fonts,
  );
  const pages = paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format));
  return {
    lesson,
    columns: composePages(pages, `lesson/${lesson.id}`),
    overflows: [...column.overflows, ...tooTall(pages, columnHeightMm(format))],
  };
}

function tooTall(pages: readonly PageRows[], heightMm: number): Overflow[] {
  return pages.flatMap(({ rows }, i) => {
    const overMm = rows[rows.length - 1]!.bottomMm - rows[0]!.topMm - heightMm;
    return overMm > 0.03 ? [{ field: `page ${i + 1}`, direction: "down" as const, overMm }] : [];
  });
}
