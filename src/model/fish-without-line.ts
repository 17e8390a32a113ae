import type { LineTable } from "./line-table.ts";
import { type Message, message, type Place } from "./message.ts";

/** That a table has no row for a fish. Apart from the table, which pages load without the messages. */
export const fishWithoutLine = ({ rows }: LineTable, fish: string, place: Place): Message =>
  message("fish-without-line", place, { fish, allowed: rows.map((one) => one.fish) });
