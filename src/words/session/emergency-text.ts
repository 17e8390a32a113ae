import type { RootContent } from "mdast";
import { bullets, heading, strongParagraph, tableNode } from "../text-nodes.ts";
import { type SessionContext, swimsIn } from "./session-context.ts";

const firstSteps = ["stop", "reach", "call", "meet", "stay"] as const;
const weather = ["lightning", "wind", "cold", "heat", "rain", "water", "light", "ice"] as const;

/**
 * Whom to ring, where help comes to, and what to do first. The way in is each swim's own: that of the guide may lead to another
 * water.
 */
export function emergencyBody(context: SessionContext): readonly RootContent[] {
  const { guide, words } = context;
  const toWrite = words("session.emergency.to-write");
  return [
    strongParagraph(words("session.emergency.hang-up")),
    heading(words("session.emergency.where")),
    tableNode({
      head: [
        words("session.emergency.swim"),
        words("session.emergency.grid"),
        words("session.emergency.road"),
        words("session.emergency.way"),
      ],
      rows: swimsIn(context).map(({ title, access }) => [
        title,
        access.gridReference ?? toWrite,
        access.road,
        access.way ?? words("table.blank"),
      ]),
    }),
    heading(words("table.who")),
    tableNode({
      head: [words("table.when"), words("table.who"), words("session.emergency.number")],
      rows: [
        ...guide.contacts.map(({ when, who, number }) => [when, who, number ?? toWrite]),
        [words("table.club-number"), words("table.club-number-who"), guide.clubNumber ?? toWrite],
        [words("session.emergency.today"), words("session.emergency.leader"), toWrite],
      ],
    }),
    heading(words("session.emergency.first")),
    bullets(firstSteps.map((step) => words(`session.emergency.step.${step}`))),
  ];
}

/** The weather in which everybody goes. */
export function weatherBody({ words }: SessionContext): readonly RootContent[] {
  return [
    strongParagraph(words("session.weather.how")),
    bullets(weather.map((rule) => words(`session.weather.rule.${rule}`))),
  ];
}
