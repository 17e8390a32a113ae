import type { RootContent } from "mdast";
import { paragraph, tableNode } from "../text-nodes.ts";
import { keyOf } from "../words.ts";
import { type SessionContext, swimsIn } from "./session-context.ts";

/** Hazards of every session by the water. */
const usual = [
  "hooks",
  "casting",
  "water",
  "wires",
  "shot",
  "germs",
  "slips",
  "weather",
  "fish",
  "people",
] as const;

/** Room to write on. */
const empty = "\u00a0";

/** What can hurt somebody, whom, what is done about it, and who looks to it: to complete and to sign. */
export function riskBody(context: SessionContext): readonly RootContent[] {
  const { words } = context;
  const swims = swimsIn(context);
  const toWrite = words("session.risk.to-write");
  const ofSwims = swims.flatMap(({ title, hazards }) =>
    hazards.map(({ kind, where, measure }) => [
      words(swims.length > 1 ? "session.risk.at-swim" : "session.risk.here", {
        hazard: words(`swim.hazard.${keyOf(kind)}`),
        where,
        swim: title,
      }),
      words("session.risk.everybody"),
      measure,
      toWrite,
    ]),
  );
  const everywhere = usual.map((hazard) => [
    words(`session.risk.${hazard}.what`),
    words(`session.risk.${hazard}.who`),
    words(`session.risk.${hazard}.do`),
    toWrite,
  ]);
  const blanks = Array.from({ length: 3 }, () => [empty, empty, empty, empty]);
  return [
    paragraph(words("session.risk.how")),
    // On the front, however long the table is.
    paragraph(words("session.risk.signed")),
    paragraph(words("session.risk.read-by")),
    tableNode({
      head: [
        words("session.risk.hazard"),
        words("session.risk.whom"),
        words("session.risk.we-do"),
        words("session.risk.checks"),
      ],
      rows: [...ofSwims, ...everywhere, ...blanks],
    }),
  ];
}
