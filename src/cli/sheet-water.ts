import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { feedText, type TextPart, waterText } from "../words/water-text.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, paragraph, section } from "./sheet-layout.ts";

/**
 * How the rig sinks, how its bite feels, how it hangs in its paces and where its feed goes in; nothing where that was
 * not reckoned.
 */
export function waterPart(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const text = waterText(solved, depth, kit);
  if (!text) return "";
  const { sink, lift, flow } = text;
  return [sink, ...(lift ? [lift] : []), ...flow, ...feedText(solved, kit)].map(asText).join("\n\n");
}

const asText = ({ caption, table, notes }: TextPart): string =>
  section(caption, columns(table), ...notes.map(paragraph));
