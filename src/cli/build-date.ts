import type { Solved } from "../build/build.ts";
import { UsageError } from "./command.ts";

/**
 * The day that the files are dated: `SOURCE_DATE_EPOCH` (seconds since 1970, reproducible-builds.org) where it is set,
 * else the guide's edition, so that two builds of the same content are the same to the byte.
 */
export function buildDate({ library }: Solved): string {
  const epoch = process.env.SOURCE_DATE_EPOCH;
  if (epoch === undefined || epoch === "") return library.guide.edition;
  const date = new Date(Number(epoch) * 1000);
  if (!/^\d+$/.test(epoch) || Number.isNaN(date.getTime())) {
    throw new UsageError(`SOURCE_DATE_EPOCH is ${epoch}; it counts whole seconds since 1970`);
  }
  return date.toISOString().slice(0, 10);
}
