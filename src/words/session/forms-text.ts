import type { RootContent } from "mdast";
import { heading, paragraph, tableNode } from "../text-nodes.ts";
import type { SessionContext } from "./session-context.ts";

/** Room to write on. */
const empty = "\u00a0";
const blankRows = (rows: number, columns: number) =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => empty));

/** More learners may come than were told of. */
const spareRows = 2;
const catchRows = 20;

const clubLines = ["ratio", "checks", "officer", "photos", "records"] as const;

/** Who is there; every name is written by hand. */
export function registerBody({ solved: { session }, words }: SessionContext): readonly RootContent[] {
  const heads = session.learners.count + spareRows;
  return [
    tableNode({
      head: (["name", "age", "medical", "fetched-by", "place", "in", "out"] as const).map((key) =>
        words(`session.register.${key}`),
      ),
      rows: blankRows(heads, 7),
    }),
    heading(words("session.register.adults")),
    tableNode({
      head: (["adult", "task", "number", "in", "out"] as const).map((key) =>
        words(`session.register.${key}`),
      ),
      rows: blankRows(session.adults + 1, 5),
    }),
    heading(words("session.club.title")),
    paragraph(words("session.club.says")),
    tableNode({
      head: [words("session.club.what"), words("session.club.ours")],
      rows: clubLines.map((line) => [words(`session.club.${line}`), empty]),
    }),
  ];
}

/** What was caught, and what the water was like. */
export function catchBody({ words }: SessionContext): readonly RootContent[] {
  return [
    paragraph(words("session.catch.water")),
    tableNode({
      head: [
        words("session.run.clock"),
        words("session.run.spot"),
        words("session.catch.rig"),
        words("table.bait"),
        words("table.depth"),
        words("table.fish"),
        words("session.catch.back"),
      ],
      rows: blankRows(catchRows, 7),
    }),
    paragraph(words("session.catch.kept")),
    ...Array.from({ length: 3 }, () => paragraph(words("session.catch.line"))),
  ];
}
