import type { RootContent } from "mdast";
import { first } from "../../core/lists.ts";
import type { Min } from "../../core/units.ts";
import { bullets, heading, paragraph, tableNode } from "../text-nodes.ts";
import { clockText, type SessionContext, swimsIn } from "./session-context.ts";

/** Before the first learner comes, to walk round and put everything out [min]. Common practice, no source. */
const beforeMin = 30;
/** Groundbait is mixed so long before the first ball: it stands ten minutes in between [min]. Common practice, no source. */
const mixBeforeMin = 20;

/** Sheets of a pack, in the order in which they lie in it. */
const sheets = ["run", "emergency", "risk", "kit", "feed", "register", "catch", "plans", "cards"] as const;

/** What is made ready the evening before and on the bank, and who has which sheet. */
export function readyBody(context: SessionContext): readonly RootContent[] {
  const { solved, words } = context;
  const { session } = solved;
  const time = clockText(Math.max(0, session.fromMin - beforeMin));
  return [
    heading(words("session.ready.evening")),
    rigsTable(context),
    bullets([...linesToMake(context), ...inBags(context), words("session.ready.always")]),
    heading(words("session.ready.morning", { time })),
    bullets([
      words("session.ready.walk"),
      ...swimsIn(context).map(({ title, sounded, levelMark }) =>
        words(levelMark === undefined ? "session.ready.plumb" : "session.ready.level", {
          swim: title,
          date: context.figures.date(sounded),
          mark: levelMark ?? "",
        }),
      ),
      ...groundbaitAt(context),
    ]),
    heading(words("session.ready.sheets")),
    tableNode({
      head: [words("session.ready.sheet"), words("session.ready.who")],
      rows: sheets.map((sheet) => [
        words(sheet === "plans" || sheet === "cards" ? `session.ready.${sheet}` : `session.${sheet}.title`),
        words(`session.ready.has.${sheet}`),
      ]),
    }),
    heading(words("session.club.title")),
    paragraph(words("session.club.says")),
  ];
}

/** Rigs to make up, as their cards have them. */
function rigsTable({ solved: { spots, lessonRigs }, words, figures }: SessionContext) {
  const fished = spots.flatMap(({ learners, depthMm, spot, rigs }) =>
    rigs.map(({ entry, solved }) => ({ entry, solved, count: learners, where: spot.title, depthMm })),
  );
  const taught = lessonRigs.map(({ entry, solved, count, spot }) => ({
    entry,
    solved,
    count,
    where: words("session.ready.for-lessons"),
    depthMm: spot?.depthMm ?? first(solved.depths).depthMm,
  }));
  return tableNode({
    head: [
      words("session.ready.make-up"),
      words("session.ready.count"),
      words("session.run.spot"),
      words("table.depth"),
      words("told.measured-from.float"),
    ],
    rows: [...fished, ...taught]
      .filter(({ count }) => count > 0)
      .map(({ entry, solved, count, where, depthMm }) => [
        entry.title,
        figures.number(count, 0),
        where,
        figures.depth(depthMm),
        figures.gap(figures.settingMm(first(solved.depths))),
      ]),
  });
}

/** Reels to fill, lines of whips and hook lengths to tie. */
function linesToMake({ solved: { ready }, words, figures }: SessionContext): readonly string[] {
  return [
    ...ready.reels.map(({ strengthG, count, lineMm }) =>
      words("session.ready.reels", {
        count,
        strength: figures.strength(strengthG),
        length: figures.shortDepth(lineMm),
      }),
    ),
    ...ready.whipLines.map(({ strengthG, count, lineMm }) =>
      words("session.ready.whip-lines", {
        count,
        strength: figures.strength(strengthG),
        length: figures.depth(lineMm),
      }),
    ),
    ...ready.hookLengths.map(({ hook, strengthG, count }) =>
      words("session.ready.hook-lengths", { count, hook, strength: figures.strength(strengthG) }),
    ),
  ];
}

/** A rod has one rig on it at a time. */
function inBags({ solved: { spots }, words }: SessionContext): readonly string[] {
  const rodRigs = spots.map(({ rigs }) => rigs.filter(({ solved: { rig } }) => rig.outfit !== "whip").length);
  return Math.max(...rodRigs) > 1 ? [words("session.ready.in-bags")] : [];
}

/** When groundbait is mixed, where there are balls. */
function groundbaitAt({ solved: { feedPlan }, words }: SessionContext): readonly string[] {
  const balls: readonly Min[] = feedPlan.rows.filter(({ asBalls }) => asBalls).map(({ fromMin }) => fromMin);
  if (balls.length === 0) return [];
  return [words("session.ready.mix", { time: clockText(Math.min(...balls) - mixBeforeMin) })];
}
