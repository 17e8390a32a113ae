import type { RigEntry } from "../model/library.ts";
import type { Place } from "../model/message.ts";
import { blocksOf } from "./blocks.ts";

/** Words in a row, and where each of them stands. */
interface OwnText {
  readonly text: string;
  placeAt(offset: number): Place;
}

/** What a rig's file says of the rig as it is set: title, purpose, note on feed, and notes. */
export function ownTexts({ title, summary, rig, body, path, placeOf }: RigEntry): readonly OwnText[] {
  return [
    { text: title, placeAt: () => placeOf(["title"]) },
    { text: summary, placeAt: () => placeOf(["purpose"]) },
    { text: rig.feed.note ?? "", placeAt: () => placeOf(["feed", "note"]) },
    ...blocksOf(body, path),
  ];
}
