import { sitePaths } from "../model/addresses.ts";
import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";
import { linkedPages, liveAttributes } from "./texts.ts";

/** Rigs that no lesson leads to or shows; in a guide that borrows its course this is not asked. */
export const untaughtRigs: ContentCheck = ({ library }) => {
  if (library.lent.size > 0) return [];
  const taught = new Set(
    library.lessons.flatMap((lesson) => [
      ...linkedPages(lesson),
      ...[...liveAttributes(lesson, "rig")].map(sitePaths.rig),
    ]),
  );
  return library.rigs.flatMap(({ id, title, placeOf }) =>
    taught.has(sitePaths.rig(id)) ? [] : [message("rig-not-taught", placeOf(["title"]), { title })],
  );
};
