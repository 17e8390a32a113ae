import { sitePaths } from "../model/addresses.ts";
import { message, startOf } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";
import { allTexts, linkedPages } from "./texts.ts";

/**
 * Lessons that no other text leads to. The first is where the course starts. A lesson added to a borrowed course is
 * not asked for this: it cannot change the others.
 */
export const unlinkedLessons: ContentCheck = ({ library }) => {
  if (library.lent.size > 0) return [];
  const links = allTexts(library).map((text) => ({ path: text.path, pages: linkedPages(text) }));
  return library.lessons
    .slice(1)
    .flatMap(({ id, path, title }) =>
      links.some((link) => link.path !== path && link.pages.has(sitePaths.lesson(id)))
        ? []
        : [message("lesson-not-linked", startOf(path), { title })],
    );
};
