import type { InOrder } from "../model/in-order.ts";
import type { Keep } from "../model/kept.ts";
import { readMarkdown } from "./markdown-source.ts";
import { notText, tooMuchToParse } from "./text-limits.ts";
import type { Source } from "./world.ts";
import { readYaml } from "./yaml-source.ts";

/** Parses files for what is kept of them alone, in an order of its own. What is wrong with them is told where the guide is read. */
export function readAhead(sources: ReadonlyMap<string, Source>, keep: Keep, inOrder: InOrder): void {
  const isWords = ({ path }: Source) => path.startsWith("words/");
  // Words are read first.
  const files = [...sources.values()].sort((a, b) => Number(isWords(b)) - Number(isWords(a)));
  for (const source of inOrder(files)) {
    const { path, text, file } = source;
    if (tooMuchToParse(source) || notText(source)) continue;
    // It is asked for, or nothing would be parsed.
    if (path.endsWith(".md")) void readMarkdown(text, file, keep).messages;
    if (path.endsWith(".yaml")) void readYaml(text, file, 0, keep).messages;
  }
}
