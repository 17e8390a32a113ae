import type { View } from "../../templates/pages/view.ts";
import type { SiteInput } from "./input.ts";
import { markdownToHast } from "./markdown.ts";
import { publicAddress, relativeHref } from "./paths.ts";
import { fromHast } from "./to-hast.ts";

/** What templates are given, for the page at this path. */
export function viewOf(path: string, input: SiteInput): View {
  const { library, solved, kit, printables, expandDirectives } = input;
  const say: View["say"] = (key, values) => kit.words(`page.${key}`, values);
  const href = (target: string) => relativeHref(path, target);
  return {
    library,
    solved,
    printables,
    path,
    address: library.guide.siteAddress && publicAddress(path, library.guide.siteAddress),
    href,
    say,
    words: kit.words,
    figures: kit.figures,
    drawRig: () => "",
    markdown: (prose, { level = 2, idPrefix = "" } = {}) =>
      markdownToHast(expandDirectives?.(prose) ?? prose.body, {
        contentPath: prose.path,
        level,
        idPrefix,
        tableName: (number) => say("table", { number }),
        href,
      }).map(fromHast),
  };
}
