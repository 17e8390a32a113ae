import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { LessonColumn, type ProsePicture } from "../../../templates/handouts/prose.tsx";
import type { Lesson } from "../../content/library.ts";
import { floatPictures } from "../../drawing/float-poses.ts";
import { drawFloatState } from "../../drawing/float-states.ts";
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
  "float-states": 0.48,
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
  const pictures = (node: PictureNode) => prosePictures(node, format, source, kit);
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

function prosePictures(
  { reference }: PictureNode,
  format: HandoutFormat,
  source: PictureSource,
  kit: DrawingKit,
): ProsePicture[] {
  const room = {
    widthMm: columnWidthMm(format) * pictureShare[reference.picture],
    textMm: format.bodyPt * mmPerPoint,
  };
  // Each state is a picture of its own, so that a page can end between them.
  if (reference.picture === "float-states") {
    const rig = source.solved.get(reference.rig)!;
    return floatPictures.flatMap((picture) => {
      const drawing = drawFloatState(picture, rig, rig.depths[0]!, room.widthMm, kit, room);
      return drawing ? [{ drawing }] : [];
    });
  }
  const steps =
    reference.picture === "knot"
      ? source.library.knots.find(({ id }) => id === reference.knot)?.steps
      : undefined;
  const drawings = drawPicture(reference, source, room, kit);
  const told = reference.picture === "scene" && drawings.length > 1;
  return drawings.map((drawing, at) => {
    const caption = steps?.[at]?.caption ?? (told ? drawing.description : undefined);
    return { drawing, ...(caption !== undefined && { caption }) };
  });
}

function tooTall(pages: readonly PageRows[], heightMm: number): Overflow[] {
  return pages.flatMap(({ rows }, i) => {
    const overMm = rows[rows.length - 1]!.bottomMm - rows[0]!.topMm - heightMm;
    return overMm > 0.03 ? [{ field: `page ${i + 1}`, direction: "down" as const, overMm }] : [];
  });
}
