import { first, last } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { printPaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import { madeInOrder } from "../../model/in-order.ts";
import { startOf } from "../../model/message.ts";
import type { SolvedSession } from "../../model/solved-session.ts";
import { sessionTexts } from "../../words/session/session-texts.ts";
import { cardProblems } from "../cards/kept-cards.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { type TextPages, textProblems } from "../handout/text-handout.ts";
import { painted, paintedOnce } from "../painted.ts";
import { paperSides, paperText } from "../papers/paper-text.ts";
import { planSpreads } from "../plans/plan-files.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";
import { bySwim, layOutSpotCards, type SpotCards, swimCardSides } from "./session-cards.ts";

/** A session's pack: its sheets, the plans of its lessons, and the cards for its spots. */
interface LaidSession {
  readonly solved: SolvedSession;
  /** One sheet after the other, each with what stands on its back. */
  readonly sheets: readonly (readonly TextPages[])[];
  readonly plans: readonly TextPages[];
  readonly cards: readonly SpotCards[];
}

/** What packs are made from besides the press. */
interface SessionInput {
  readonly sessions: readonly SolvedSession[];
  readonly drawings: Drawings;
  /** Coaches' plans as they are laid out; a lesson that the guide leaves out has none. */
  readonly plans: readonly TextPages[];
  /** What is written on floats, by their ids. */
  readonly markings: ReadonlyMap<string, string>;
}

export function layOutSessions(
  { sessions, drawings, plans, markings }: SessionInput,
  press: Press,
): readonly LaidSession[] {
  const byId = new Map(plans.map((plan) => [plan.text.id, plan]));
  return madeInOrder(press.inOrder, sessions, (solved) => {
    const { session } = solved;
    const sheets: TextPages[][] = [];
    for (const { id, isOnBack, ...text } of sessionTexts({ ...press.kit, solved, guide: press.guide })) {
      const named = { ...text, id: `${session.id}-${id}`, path: session.path };
      const pages = paperText(named, drawings, press);
      if (isOnBack) last(sheets).push(pages);
      else sheets.push([pages]);
    }
    return {
      solved,
      sheets,
      plans: solved.plans.flatMap(({ id }) => byId.get(id) ?? []),
      cards: layOutSpotCards(solved, markings, press),
    };
  });
}

/** What of a pack is larger than its sheet or its card. */
export function sessionProblems({ solved, sheets, cards }: LaidSession): DoesNotFit[] {
  const place = startOf(solved.session.path);
  return [
    ...sheets.flat().flatMap((text) => textProblems(text, "session")),
    ...cards.flatMap((at) => at.cards).flatMap(({ laid }) => cardProblems(laid, place)),
  ];
}

/** The pack of each session that fits, as one file. */
export async function* sessionFiles(
  sessions: readonly LaidSession[],
  press: Press,
): AsyncIterable<PaintedFile> {
  for (const laid of sessions) {
    if (sessionProblems(laid).length > 0) continue;
    const { session } = laid.solved;
    const { words, figures } = press.kit;
    const title = words("session.document", { session: session.title });
    const header = words("session.head", { session: session.title, date: figures.date(session.date) });
    const paint = () => {
      const sides = [
        ...laid.sheets.flatMap((texts) => onSheets(texts.flatMap((text) => paperSides(text, header, press)))),
        ...laid.plans.flatMap((plan) => planSpreads(plan, press).flatMap((side) => onSheets([side]))),
        ...bySwim(laid.cards).flatMap((spots) => swimCardSides(spots, press)),
      ];
      const facts = { ...press.facts(title), duplex: "long edge" } as const;
      return painted(sides, first(sides), facts, press);
    };
    const about = {
      path: printPaths.session(session.id),
      ...(session.isPublic && { printable: { kind: "session" as const, title: session.title } }),
    };
    yield paintedOnce(about, "session as PDF", fromOf(laid), paint, press);
  }
}

/** Sides printed on both sides of sheets of their own: the last has a blank back where there is none for it. */
function onSheets(sides: readonly PaperSide[]): readonly PaperSide[] {
  return sides.length % 2 === 1 ? [...sides, { ...last(sides), parts: [] }] : sides;
}

/** Stands for all that a pack is made from. */
function fromOf({ solved, sheets, plans, cards }: LaidSession): string {
  const { title, date } = solved.session;
  return digestOf(
    [title, date],
    [...sheets.flat(), ...plans].map(({ from }) => from),
    cards.map(({ spot: { swim, spot }, cards: of }) => [
      [swim.title, swim.hazards, swim.rules, spot.title],
      of.map(({ laid, copies }) => [laid.from, copies]),
    ]),
  );
}
