import { NoRoomError } from "../drawing/no-room.ts";
import type { Drawings } from "../drawing/pictures.ts";
import { type Message, message } from "../model/message.ts";
import { ContentError } from "./content-error.ts";
import type { BuildSettings, Solved } from "./stages.ts";

/** A drawing without room as an error at what it is of, for those who wrote that; any other error stays as it is. */
export function withPlace(error: unknown, solved: Solved): unknown {
  return error instanceof NoRoomError ? new ContentError([placed(error, solved)]) : error;
}

function placed({ drawn, message: reason }: NoRoomError, { library }: Solved): Message {
  const entry = drawn && library[drawn.folder].find(({ id }) => id === drawn.id);
  const place = entry?.placeOf(["title"]) ?? { file: "guide.yaml" };
  return message("no-room", place, { reason });
}

/**
 * Draws; where a build keeps going, what has no room is told, once, and something stands in for it.
 *
 * @param lacks is called each time that something stands in
 */
export function mayLackRoom(
  solved: Solved,
  { keepGoing, tell }: BuildSettings,
  lacks: () => void = () => {},
): <T>(draw: () => T, without: T) => T {
  const told = new Set<string>();
  return (draw, without) => {
    try {
      return draw();
    } catch (error) {
      if (!keepGoing || !(error instanceof NoRoomError)) throw error;
      const found = placed(error, solved);
      const key = JSON.stringify(found);
      if (!told.has(key)) tell?.([found]);
      told.add(key);
      lacks();
      return without;
    }
  };
}

/** The drawings, without those that have no room. */
export function drawingsWithRoom(drawings: Drawings, solved: Solved, settings: BuildSettings): Drawings {
  const mayLack = mayLackRoom(solved, settings);
  const withRoom = (...asked: Parameters<Drawings>) => mayLack(() => drawings(...asked), []);
  return Object.assign(withRoom, { from: drawings.from });
}
