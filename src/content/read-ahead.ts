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
    const { path, text, file, fromLibrary } = source;
    if (tooMuchToParse(source) || notText(source)) continue;
    // It is asked for, or nothing would be parsed; of the library a guide may leave out most texts.
    if (path.endsWith(".md")) {
      const { messages, body } = readMarkdown(text, file, keep);
      if (messages.length === 0 && !fromLibrary) void body.children;
    }
    if (path.endsWith(".yaml")) void readYaml(text, file, 0, keep).messages;
  }
}
