import { type BigIntStats, lstatSync } from "node:fs";
import type { Fingerprint } from "../../model/fingerprint.ts";
import { fingerprintOnDisk } from "./fingerprint.ts";

/** What a file held, and what of it on the disk would be another had anything been written to it since. */
interface Sight {
  readonly bytes: bigint;
  readonly modifiedNs: bigint;
  /** When the system last changed what it keeps of the file; unlike the time above, nobody can set it. */
  readonly changedNs: bigint;
  readonly fingerprint: Fingerprint;
}

/** Files that were read, by their place on the disk, which a file keeps when it gets another name. */
export type Sights = ReadonlyMap<string, Sight>;

/** What files hold, of which each is read once as long as nobody writes to it. */
export interface Seen {
  /** What a file holds now. */
  fingerprint(file: string): Fingerprint;
  /** To be told of a file that got a name more or less: for the system a change, though nothing was written to it. */
  named(file: string): void;
  /**
   * What is known of these files, for a later build; undefined where it has not changed since it was handed in.
   *
   * @param areNamed they got a name more or less, as above
   */
  news(files: Iterable<string>, areNamed?: boolean): Sights | undefined;
}

/**
 * @param nowNs a time that has passed by the disk's own clock. A file that was changed then or later may be changed again
 *   without its times showing it, as these have steps of up to two seconds; it is read each time.
 * @param before what an earlier build has seen
 */
export function seenFiles(nowNs: () => bigint, before: Sights = new Map()): Seen {
  const sights = new Map(before);
  let isNew = false;
  const remember = (found: BigIntStats, fingerprint: Fingerprint) => {
    sights.set(placeOf(found), {
      bytes: found.size,
      modifiedNs: found.mtimeNs,
      changedNs: found.ctimeNs,
      fingerprint,
    });
    isNew = true;
  };
  const noteName = (found: BigIntStats) => {
    const sight = sights.get(placeOf(found));
    if (sight && sight.changedNs !== found.ctimeNs && isAsWritten(sight, found))
      remember(found, sight.fingerprint);
  };
  const look = (file: string) => lstatSync(file, { bigint: true, throwIfNoEntry: false });
  return {
    fingerprint(file) {
      const found = lstatSync(file, { bigint: true });
      const sight = sights.get(placeOf(found));
      if (sight && isAsWritten(sight, found) && sight.changedNs === found.ctimeNs) return sight.fingerprint;
      const fingerprint = fingerprintOnDisk(file);
      const now = nowNs();
      if (found.mtimeNs < now && found.ctimeNs < now) remember(found, fingerprint);
      return fingerprint;
    },
    named(file) {
      const found = look(file);
      if (found) noteName(found);
    },
    news(files, areNamed = false) {
      if (!isNew && !areNamed) return undefined;
      const all: [string, Sight][] = [];
      for (const file of files) {
        const found = look(file);
        if (found && areNamed) noteName(found);
        const sight = found && sights.get(placeOf(found));
        if (found && sight) all.push([placeOf(found), sight]);
      }
      return isNew ? new Map(all) : undefined;
    },
  };
}

const placeOf = ({ dev, ino }: BigIntStats) => `${dev}:${ino}`;

const isAsWritten = ({ bytes, modifiedNs }: Sight, found: BigIntStats) =>
  bytes === found.size && modifiedNs === found.mtimeNs;
