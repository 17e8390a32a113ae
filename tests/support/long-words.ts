import { parse, stringify } from "yaml";
import { contentWith } from "./smallest-content.ts";

/** The words of drawings six times as long as they are. */
export function longWords(): Record<string, string> {
  const tree = parse(contentWith()["words/en.yaml"]!);
  const longer = (group: object): object =>
    Object.fromEntries(
      Object.entries(group).map(([key, said]) => [
        key,
        typeof said === "string" ? said + " and so on and on".repeat(said.length / 4) : longer(said),
      ]),
    );
  return { "words/en.yaml": stringify({ ...tree, drawing: longer(tree.drawing) }) };
}
