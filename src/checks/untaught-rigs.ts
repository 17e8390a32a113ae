import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";
import { linkedFiles, liveAttributes } from "./texts.ts";

/** Rigs that no lesson leads to or shows. */
export const untaughtRigs: ContentCheck = ({ library }) => {
  const taught = new Set(
    library.lessons.flatMap((lesson) => [
      ...linkedFiles(lesson),
      ...[...liveAttributes(lesson, "rig")].map((id) => `rigs/${id}`),
    ]),
  );
  return library.rigs.flatMap(({ id, title, placeOf }) =>
    taught.has(`rigs/${id}`) ? [] : [message("rig-not-taught", placeOf(["title"]), { title })],
  );
};
