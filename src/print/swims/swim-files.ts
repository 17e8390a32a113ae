import { first } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { printPaths } from "../../model/addresses.ts";
import { madeInOrder } from "../../model/in-order.ts";
import type { SwimEntry, SwimText } from "../../model/swim.ts";
import { keyOf } from "../../words/words.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { handoutFormats } from "../handout/handout-formats.ts";
import { type TextPages, textProblems } from "../handout/text-handout.ts";
import { painted, paintedOnce } from "../painted.ts";
import { paperSides, paperText } from "../papers/paper-text.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";

interface LaidOutSwim {
  readonly swim: SwimEntry;
  readonly pages: TextPages;
}

/** Each swim on whole pages in one column, as its pictures and tables are wide. */
export function layOutSwims(
  swims: readonly SwimText[],
  drawings: Drawings,
  press: Press,
): readonly LaidOutSwim[] {
  const { wide } = handoutFormats[press.guide.paper];
  return madeInOrder(press.inOrder, swims, ({ swim, onSheet: body }) => {
    const { id, path, title, summary } = swim;
    return { swim, pages: paperText({ id, path, title, summary, body }, drawings, press, wide) };
  });
}

/** What is wider, or higher, than its page. */
export function swimProblems(laid: readonly LaidOutSwim[]): DoesNotFit[] {
  return laid.flatMap(({ pages }) => textProblems(pages, "swim"));
}

/** The sheet of each swim; what can hurt somebody there is named on every page. */
export async function* swimFiles(laid: readonly LaidOutSwim[], press: Press): AsyncIterable<PaintedFile> {
  for (const one of laid) {
    if (swimProblems([one]).length > 0) continue;
    const { text, from } = one.pages;
    const title = press.kit.words("swim.sheet", { swim: text.title });
    const paint = () => {
      const sides = sidesOf(one, press);
      return painted(sides, first(sides), press.facts(title), press);
    };
    const about = { path: printPaths.swim(text.id), printable: { kind: "swim", title } } as const;
    yield paintedOnce(about, "swim as PDF", from, paint, press);
  }
}

function sidesOf({ swim, pages }: LaidOutSwim, press: Press): PaperSide[] {
  const { words } = press.kit;
  const named = [...new Set(swim.hazards.map(({ kind }) => words(`swim.hazard.${keyOf(kind)}`)))];
  const notes = named.length > 0 ? words("swim.mind", { hazards: named.join(", ") }) : "";
  return paperSides(pages, press.guide.title, press, () => notes);
}
