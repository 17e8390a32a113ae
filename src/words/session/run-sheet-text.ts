import type { RootContent } from "mdast";
import { last, withId } from "../../core/lists.ts";
import type { RunBlock } from "../../core/session/run-sheet.ts";
import type { LessonPlan } from "../../model/library.ts";
import { hazardLines } from "../swim-hazards.ts";
import { bullets, heading, paragraph, strongParagraph, tableNode } from "../text-nodes.ts";
import { clockText, type SessionContext, sessionLine, swimsIn } from "./session-context.ts";

/** A text that a sentence ends with, which has a full stop of its own. */
const withoutStop = (text: string) => text.replace(/\.\s*$/, "");

/** The session by the clock, where it is held, and what there is to mind there. */
export function runBody(context: SessionContext): readonly RootContent[] {
  const { solved, words } = context;
  const { sheet } = solved;
  const rows = sheet.blocks.flatMap((block) => blockRows(block, context));
  return [
    paragraph(sessionLine(context)),
    ...swimsIn(context).map(({ title, access }) =>
      paragraph(
        words(access.way === undefined ? "session.run.meet" : "session.run.meet-way", {
          swim: title,
          road: withoutStop(access.road),
          way: withoutStop(access.way ?? ""),
        }),
      ),
    ),
    ...(sheet.overMin > 0 ? [strongParagraph(tooLong(context))] : []),
    tableNode({
      head: [
        words("session.run.from"),
        words("session.run.what"),
        words("session.run.in-hand"),
        words("session.run.led-by"),
      ],
      rows,
    }),
    paragraph(words("session.run.end", { time: clockText(last(sheet.blocks).toMin) })),
    heading(words("session.run.where")),
    whereTable(context),
    ...swimsIn(context).flatMap((swim) => [
      heading(words("session.run.mind", { swim: swim.title }), 3),
      bullets(hazardLines(swim, context.guide, context)),
    ]),
  ];
}

function tooLong({ solved: { sheet, plans }, words }: SessionContext): string {
  const over = words("session.run.over", { over: sheet.overMin });
  if (sheet.leaveOut.length === 0) return `${over} ${words("session.run.none-to-leave")}`;
  const lessons = sheet.leaveOut.map((id) => withId(plans, id).title).join(", ");
  return `${over} ${words("session.run.leave-out", { lessons })}`;
}

function blockRows(block: RunBlock, context: SessionContext): readonly (readonly string[])[] {
  const { solved, words } = context;
  const row = (what: string, inHand: string) => [
    clockText(block.fromMin),
    what,
    inHand,
    words("session.risk.to-write"),
  ];
  switch (block.what) {
    case "set up":
      return [row(words("session.run.set-up"), words("session.run.hand.set-up"))];
    case "lesson":
      return lessonRows(withId(solved.plans, block.id ?? ""), block, context);
    case "fishing":
      return [
        row(words("session.run.fishing"), words("session.run.hand.fishing")),
        ...fishingRows(context, block),
      ];
    case "pack up":
      return [row(words("session.run.pack-up"), words("session.run.hand.pack-up"))];
  }
}

/** A lesson, and below it its parts with the minute at which each begins. */
function lessonRows(
  { title, parts, learners: most }: LessonPlan,
  block: RunBlock,
  context: SessionContext,
): readonly (readonly string[])[] {
  const { solved, words } = context;
  let atMin = block.fromMin;
  const begins = parts.map(({ part, minutes }) => {
    const told = words("plan.part", { part: words(`plan.section.${part}`), time: clockText(atMin) });
    atMin += minutes;
    return told;
  });
  const groups = Math.ceil(solved.session.learners.count / most);
  const lesson = groups > 1 ? words("session.run.groups", { lesson: title, groups }) : title;
  return [
    [
      clockText(block.fromMin),
      words("session.run.lesson", { lesson, parts: begins.join(", ") }),
      words("session.run.hand.lesson"),
      words("session.risk.to-write"),
    ],
  ];
}

/** What each spot fishes, one rig after the other. */
function fishingRows(
  { solved: { spots }, words }: SessionContext,
  block: RunBlock,
): readonly (readonly string[])[] {
  return spots.map(({ spot, rigs, learners }) => {
    const told = rigs.flatMap(({ entry, spans }) =>
      spans
        .filter(({ fromMin }) => fromMin >= block.fromMin)
        .map(({ fromMin }) => words("session.run.rig-from", { rig: entry.title, from: clockText(fromMin) })),
    );
    const where = words("session.run.at-spot", { spot: spot.title, learners });
    return [
      "",
      `${where} ${told.join("; ")}`,
      words("session.run.hand.cards"),
      words("session.risk.to-write"),
    ];
  });
}

/** Spots by their titles, with their swims' where there are several. */
function whereTable(context: SessionContext) {
  const { solved, words, figures } = context;
  const { spots } = solved;
  const isOneSwim = swimsIn(context).length === 1;
  return tableNode({
    head: [
      words("session.run.spot"),
      words("table.depth"),
      words("session.run.learners"),
      words("page.menu.rigs"),
    ],
    rows: spots.map(({ swim, spot, depthMm, learners, rigs }) => [
      isOneSwim ? spot.title : words("session.run.spot-of", { swim: swim.title, spot: spot.title }),
      figures.depth(depthMm),
      String(learners),
      rigs.map(({ entry }) => entry.title).join("; "),
    ]),
  });
}
