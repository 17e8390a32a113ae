import { NoRoomError } from "../drawing/no-room.ts";
import { message } from "../model/message.ts";
import { ContentError } from "./content-error.ts";
import type { Solved } from "./stages.ts";

/** A drawing without room as an error at what it is of, for those who wrote that; any other error stays as it is. */
export function withPlace(error: unknown, { library }: Solved): unknown {
  if (!(error instanceof NoRoomError)) return error;
  const { drawn, message: reason } = error;
  const entry = drawn && library[drawn.folder].find(({ id }) => id === drawn.id);
  const place = entry?.placeOf(["title"]) ?? { file: "guide.yaml" };
  return new ContentError([message("no-room", place, { reason })]);
}
