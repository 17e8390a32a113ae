import type { DrawingKit } from "../../drawing/kit.ts";
import type { Item } from "../../drawing/model.ts";
import { rigMarks } from "../../drawing/rig/rig-drawing.ts";
import type { SharedLabels } from "../../drawing/rig/rig-labels.ts";
import type { Overflow } from "../../layout/overflow.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";

/** A rig's drawing for the box that it is given on a card. */
interface RigPicture {
  draw(widthMm: number, heightMm: number): readonly Item[];
  /** The page with what the drawing lacked in room, once it was drawn. */
  checked(page: LaidOutPage): LaidOutPage;
}

/** Room that any rig can be drawn and told in [mm]. */
const ampleMm = 400;
/** How closely the height that a drawing needs is looked for [mm]. */
const stepMm = 2;

/**
 * The drawing of a rig made up for one depth, with shot and distances only.
 *
 * @param textMm size of its labels [mm]
 * @param shared which shot may share a label
 * @param lack whether to find out how much room is lacking, which takes many tries, or only that some is
 */
export function rigPicture(
  solved: SolvedRig,
  depth: SolvedDepth,
  kit: DrawingKit,
  textMm: number,
  shared: SharedLabels,
  lack: "measured" | "noticed",
): RigPicture {
  const short = { ...kit, figures: kit.figures.compact };
  const drawn = (widthMm: number, heightMm: number) =>
    rigMarks(solved, depth, { widthMm, heightMm }, short, { labels: "distances", textMm, shared });
  const overflows: Overflow[] = [];
  return {
    draw: (widthMm, heightMm) => {
      try {
        return drawn(widthMm, heightMm);
      } catch {
        const overMm =
          lack === "measured"
            ? heightNeeded(heightMm, (height) => drawn(widthMm, height)) - heightMm
            : stepMm;
        overflows.push({ field: "drawing", direction: "down", overMm });
        return [];
      }
    },
    checked: (page) => {
      // Nobody asks what a page lacks besides where it is only noticed.
      if (lack === "noticed" && page.overflows.length > 0) return page;
      const { items } = page;
      return { ...page, items, overflows: [...page.overflows, ...overflows] };
    },
  };
}

/** The height from which there is room for it, to a step; what has room in one height has it in every larger one. */
function heightNeeded(fromMm: number, draw: (heightMm: number) => unknown): number {
  let [tooLow, enough] = [fromMm, ampleMm];
  while (enough - tooLow > stepMm) {
    const heightMm = (tooLow + enough) / 2;
    try {
      draw(heightMm);
      enough = heightMm;
    } catch {
      tooLow = heightMm;
    }
  }
  return enough;
}
