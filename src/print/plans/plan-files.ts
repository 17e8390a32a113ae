import { columnHeightMm } from "../../../templates/handouts/format.ts";
import { first } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { printPaths } from "../../model/addresses.ts";
import { madeInOrder } from "../../model/in-order.ts";
import type { LessonPlan, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { imposeBooklet, pageAt } from "../handout/booklet.ts";
import { handoutFormats } from "../handout/handout-formats.ts";
import { signNotes } from "../handout/sign-notes.ts";
import { named, type TextPages, textPages, textProblems } from "../handout/text-handout.ts";
import { painted, paintedOnce } from "../painted.ts";
import { paperSides } from "../papers/paper-text.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";

/** What coaches' plans are made from besides the press. */
interface PlanInput {
  readonly plans: readonly LessonPlan[];
  readonly drawings: Drawings;
  /** A text with its live figures put in. */
  readonly liveBody: (prose: Prose) => Prose["body"];
}

/** A sheet that is folded once has as many pages. */
const pagesMax = 4;

/** Each plan on pages of half a sheet. */
export function layOutPlans({ plans, drawings, liveBody }: PlanInput, press: Press): readonly TextPages[] {
  const { half } = handoutFormats[press.guide.paper];
  return madeInOrder(press.inOrder, plans, (plan) => {
    const title = press.kit.words("plan.title", { lesson: plan.title });
    return textPages(named({ ...plan, title }, liveBody(plan)), half, drawings, press);
  });
}

/** What is wider than its page, and plans that are longer than a sheet. */
export function planProblems(laid: readonly TextPages[]): DoesNotFit[] {
  return laid.flatMap(({ text, format, overflows, length }) => {
    const overMm = (length - pagesMax) * columnHeightMm(format);
    const long = overMm > 0 ? [{ field: "plan", direction: "down", overMm } as const] : [];
    return textProblems({ text, format, overflows: [...overflows, ...long] }, "plan");
  });
}

/** Each plan that fits as one sheet to be folded in the middle. */
export async function* planFiles(laid: readonly TextPages[], press: Press): AsyncIterable<PaintedFile> {
  for (const pages of laid) {
    if (planProblems([pages]).length > 0) continue;
    const { text, from } = pages;
    const about = {
      path: printPaths.plan(text.id),
      printable: { kind: "plan", title: text.title },
    } as const;
    const paint = () => {
      const sides = onOneSheet(sidesOf(pages, press));
      const facts = { ...press.facts(text.title), duplex: "short edge" } as const;
      return painted(sides, first(sides), facts, press);
    };
    yield paintedOnce(about, "plan as PDF", from, paint, press);
  }
}

/** A plan two pages to a side, in the order in which they are read. */
export function planSpreads(plan: TextPages, press: Press): PaperSide[] {
  const pages = sidesOf(plan, press);
  return pages.flatMap((_, i) => (i % 2 === 0 ? sideBySide(pages.slice(i, i + 2)) : []));
}

/** Two pages stand side by side on one side of the sheet, more on both, to be folded. */
function onOneSheet(pages: readonly PaperSide[]): PaperSide[] {
  return pages.length > 2 ? imposeBooklet(pages) : [sideBySide(pages)];
}

function sideBySide(pages: readonly PaperSide[]): PaperSide {
  const { widthMm, heightMm } = first(pages);
  const parts = pages.flatMap((_, i) => pageAt(pages, i, i * widthMm));
  return { widthMm: 2 * widthMm, heightMm, viewTurn: 0, parts };
}

const sidesOf = (plan: TextPages, press: Press) => paperSides(plan, press.guide.title, press, signNotes);
