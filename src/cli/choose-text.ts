import { first } from "../core/lists.ts";
import type { Choice, Conditions } from "../model/choosing.ts";
import type { Guide } from "../model/library.ts";
import type { Spot, SwimEntry } from "../model/swim.ts";
import { conditionsText, ruledOutText, spokenForText } from "../words/choosing-text.ts";
import { surenessText } from "../words/spot-text.ts";
import { hazardLines } from "../words/swim-hazards.ts";
import type { TableKit } from "../words/table-kit.ts";
import { labelled, paragraph, section } from "./sheet-layout.ts";

/** Which rigs suit each place that was asked about. */
interface ChosenFor {
  readonly swim: SwimEntry;
  readonly guide: Guide;
  readonly places: readonly {
    readonly spot: Spot;
    readonly conditions: Conditions;
    readonly choice: Choice;
  }[];
}

/** For a person at a terminal: first what can hurt there, then place by place the rigs, the best first, and the others. */
export function choiceText({ swim, guide, places }: ChosenFor, kit: TableKit): string {
  const head = `${swim.title}\n${conditionsText(first(places).conditions, kit)}`;
  const parts = places.map((place) => placeText(place, kit));
  return `${[head, hazardText(swim, guide, kit), ...parts].join("\n\n").replaceAll("\u00a0", " ")}\n`;
}

/** What can hurt at a swim, for a terminal. */
export function hazardText(swim: SwimEntry, guide: Guide, kit: TableKit): string {
  const lines = hazardLines(swim, guide, kit).map((line) => paragraph(line.replaceAll("\u00a0", " ")));
  return section(kit.words("swim.hazards"), ...lines);
}

function placeText({ spot, conditions, choice }: ChosenFor["places"][number], kit: TableKit): string {
  const { words, figures } = kit;
  const title = words("choosing.place", {
    spot: spot.title,
    distance: figures.depth(spot.fromBankMm),
    depth: figures.depth(conditions.depthMm),
  });
  const offered = choice.offered.map(({ entry, points, because }, at) =>
    section(
      `  ${words("choosing.offered", { rank: at + 1, rig: entry.title, points })}`,
      paragraph(`  ${because.map((by) => spokenForText(by, kit)).join("; ")}`),
    ),
  );
  const out = choice.ruledOut.map(
    ({ entry, because }) => [entry.title, because.map((by) => ruledOutText(by, kit)).join(" ")] as const,
  );
  return [
    section(title, paragraph(surenessText(spot, kit))),
    ...(offered.length > 0 ? offered : [words("choosing.nothing")]),
    section(words("choosing.ruled-out"), labelled(out)),
  ].join("\n");
}

/** The same as data. */
export function choiceData({ swim, places }: ChosenFor): string {
  const data = places.map(({ spot, conditions, choice }) => ({
    spot: spot.title,
    conditions,
    offered: choice.offered.map(({ entry, points, because, made }) => {
      const { floatToHookMm, massG } = first(made.depths);
      return { rig: entry.id, points, because, floatToHookMm, massG };
    }),
    ruledOut: choice.ruledOut.map(({ entry, because }) => ({ rig: entry.id, because })),
  }));
  return `${JSON.stringify({ swim: swim.id, places: data }, null, 2)}\n`;
}
