import type { Guide } from "../model/library.ts";
import type { Hazard, SwimEntry } from "../model/swim.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** What can hurt somebody at a swim, what is done about it and the usual caution, a line each; the last defers to others. */
export function hazardLines(
  { hazards, rules }: Pick<SwimEntry, "hazards" | "rules">,
  guide: Pick<Guide, "rules">,
  { words }: TableKit,
): readonly string[] {
  return [
    ...hazards.map((hazard) =>
      words("swim.hazard-line", {
        hazard: words(`swim.hazard.${keyOf(hazard.kind)}`),
        where: hazard.where,
        measure: hazard.measure,
        caution: cautionOf(hazard, guide, words),
      }),
    ),
    ...rules,
    words("swim.local-rules"),
  ];
}

/** How far off wires is the law's, or whose network it is, to say: the guide has their sentence. */
function cautionOf({ kind }: Hazard, { rules }: Pick<Guide, "rules">, words: TableKit["words"]): string {
  const caution = words(`swim.caution.${keyOf(kind)}`);
  return kind === "overhead wires" && rules.wires ? `${caution} ${rules.wires}` : caution;
}
