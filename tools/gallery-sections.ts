import type { Solved } from "../src/build/stages.ts";
import { variantsOf } from "../src/core/float/moved-float.ts";
import { first } from "../src/core/lists.ts";
import type { Drawing } from "../src/drawing/model.ts";
import type { Theme } from "../src/drawing/palette.ts";
import type { Part } from "../src/drawing/parts/part.ts";
import { parts } from "../src/drawing/parts/parts.ts";
import { drawPictures } from "../src/drawing/pictures.ts";
import { drawRig } from "../src/drawing/rig/rig-drawing.ts";
import { drawScene } from "../src/drawing/scenes/draw-scene.ts";
import { holdOf } from "../src/drawing/scenes/make-up.ts";
import { drawSign } from "../src/drawing/signs/draw-sign.ts";
import { drawingToSvg } from "../src/drawing/svg.ts";
import { mmPerPoint } from "../src/markup/boxes.ts";
import type { PictureReference } from "../src/model/pictures.ts";
import { signPictures } from "../src/model/signs.ts";
import type { SolvedRig } from "../src/model/solved.ts";
import { pictureRoom, sinkDrawing } from "../templates/pages/rig-picture.ts";
import { everyPicture } from "../tests/support/every-picture.ts";

/** A drawing and what stands below it. */
interface Shown {
  readonly drawing: Drawing;
  /** What it is called where it stands, as a fish or a bait is. */
  readonly name?: string;
  readonly caption: string;
}

/** Drawings that belong together on the page. */
export interface Section {
  readonly title: string;
  readonly theme: Extract<Theme, "page" | "print">;
  readonly shown: readonly Shown[];
}

/** Width of a figure: what a phone 360 px wide leaves between its margins, and an A4 column; CSS pixels. */
export const figureWidthPx = { page: 328, print: 330 } as const;
/** Paper is shown as large as it is read: at one and a half times its size on a screen. */
const pxPerPaperMm = (1.5 * 96) / 25.4;
/** Roughly how many signs of a caption stand in one line, and the height of that [px]. */
const caption = { signs: 50, lineHeightPx: 18 };

const card = { widthMm: 48, heightMm: 78 };
const onCard = { labels: "distances", textMm: 9 * mmPerPoint } as const;
/** Columns of a handout: what is read in one, and steps and states, which stand three abreast. */
const onPaper = { widthMm: 80, textMm: 11 * mmPerPoint, apart: true };
const abreast = { ...onPaper, widthMm: 52.8 };
/** What stands below its own name on every page: nothing in the picture says it. */
const isNamed = ({ picture }: PictureReference) => picture === "fish" || picture === "bait";
const isStep = ({ picture }: PictureReference) => picture === "knot" || picture === "float-states";

/** A figure of the gallery and the room that it takes. */
export function figureOf(
  { drawing, name, caption: said }: Shown,
  theme: Section["theme"],
  idPrefix: string,
  isCaptioned: boolean,
) {
  const told = isCaptioned ? said : name;
  const words = told === undefined ? "" : `<figcaption>${told}</figcaption>`;
  const widthPx = theme === "page" ? figureWidthPx.page : drawing.widthMm * pxPerPaperMm;
  const svg = drawingToSvg(drawing, { idPrefix, theme });
  return {
    html: `<figure class="${theme}" style="width:${Math.ceil(widthPx)}px">${theme === "page" ? svg : svg.replace(/ width="[^"]*" height="[^"]*"/, ` width="${Math.ceil(widthPx)}"`)}${words}</figure>`,
    widthPx: Math.ceil(widthPx),
    heightPx:
      (widthPx * drawing.heightMm) / drawing.widthMm +
      (told === undefined ? 0 : Math.ceil(told.length / caption.signs) * caption.lineHeightPx),
  };
}

const withWords = (drawing: Drawing): Shown => ({
  drawing,
  caption: `<b>${drawing.title}.</b> ${drawing.description}`,
});

/** All that is drawn of a guide: on pages, then on paper. */
export function sectionsOf(solved: Solved): Section[] {
  const { rigs, kit, source } = solved;
  const draw = drawPictures(source);
  const kinds = Object.entries(everyPicture(solved));
  const drawn = (list: readonly PictureReference[], room: typeof pictureRoom) =>
    list.flatMap((reference) => {
      const isAll = reference.picture !== "float-states" || reference.show === "all";
      const shown = isAll
        ? draw(reference, isStep(reference) && room !== pictureRoom ? abreast : room, kit)
        : [];
      return shown.map(({ drawing, caption: said }) => ({
        ...(said === undefined ? withWords(drawing) : { drawing, caption: said }),
        ...(isNamed(reference) && { name: drawing.title }),
      }));
    });
  const page = (title: string, drawings: readonly Drawing[]): Section => ({
    title,
    theme: "page",
    shown: drawings.map(withWords),
  });
  const print = (title: string, drawings: readonly Drawing[]): Section => ({
    ...page(title, drawings),
    theme: "print",
  });
  return [
    ...kinds.map(
      ([kind, list]): Section => ({
        title: `${kind} on a page`,
        theme: "page",
        shown: drawn(list, pictureRoom),
      }),
    ),
    page(
      "sinking on a page",
      rigs.flatMap((rig) => sinkDrawing(rig, first(rig.depths), kit) ?? []),
    ),
    page(
      "other make-ups on a page",
      otherHolds(rigs).flatMap((rig) => drawScene("make-up", rig, pictureRoom, kit)),
    ),
    page(
      "signs on a page",
      signPictures.map((sign) => drawSign(sign, sign)),
    ),
    page("parts on a page", Object.entries(parts).map(drawPart)),
    print(
      "rigs on cards",
      rigs.flatMap((rig) =>
        rig.depths.flatMap((depth) =>
          variantsOf(depth, rig.rig.water).map((variant) =>
            drawRig(rig, depth, card, kit, { ...onCard, variant }),
          ),
        ),
      ),
    ),
    ...kinds.map(
      ([kind, list]): Section => ({
        title: `${kind} on paper`,
        theme: "print",
        shown: drawn(list, onPaper),
      }),
    ),
  ];
}

/** A rig with rubbers and one with a stop knot, which are made up in another order. */
function otherHolds(rigs: readonly SolvedRig[]): SolvedRig[] {
  return (["rubbers", "stopKnot"] as const).flatMap((hold) => {
    const found = rigs.find(({ rig }) => holdOf(rig) === hold);
    return found ? [found] : [];
  });
}

function drawPart([name, part]: [string, Part<unknown>]): Drawing {
  return {
    widthMm: part.sampleWidthMm ?? 30,
    heightMm: 20,
    title: name,
    description: name,
    items: part.draw(part.sample),
  };
}
