import { checkMarkdown } from "../checks/markdown-allowed.ts";
import { allTexts } from "../checks/texts.ts";
import { readLibrary } from "../content/read-library.ts";
import type { Source } from "../content/world.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Staged } from "../model/message.ts";
import { stageDone } from "../model/stage-times.ts";
import { kitOf } from "./kit-of.ts";
import type { Read } from "./stages.ts";

/**
 * Sources → library, every file held against its schema and every name looked up. The value is missing where there is too
 * little to go on with; where it is not, what comes after has more to tell beside the errors of Markdown.
 */
export function checkSources(
  sources: ReadonlyMap<string, Source>,
  keep: Keep = makeAnew,
): Staged<Read | undefined> {
  const { value: library, messages } = readLibrary(sources, keep);
  stageDone("check", sources.size, "files");
  if (!library) return { value: undefined, messages };
  const lent = new Set(library.lent.values());
  const markdown = allTexts(library).flatMap((text) => (lent.has(text.path) ? [] : checkMarkdown(text)));
  const all = [...messages, ...markdown];
  const kit = kitOf(library.guide, library.words);
  return { value: { library, kit }, messages: all };
}
