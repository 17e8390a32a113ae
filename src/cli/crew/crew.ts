import { randomUUID } from "node:crypto";
import { BroadcastChannel, Worker } from "node:worker_threads";
import type { BuildSettings } from "../../build/stages.ts";
import type { Source } from "../../content/world.ts";
import type { Store } from "../../model/kept.ts";
import { stageDone } from "../../model/stage-times.ts";
import { UsageError } from "../command.ts";
import { sharedStore } from "./shared-store.ts";

/** What a worker is given. */
export interface Job {
  readonly sources: ReadonlyMap<string, Source>;
  readonly parts: BuildSettings["parts"];
  /** Where all that are at work tell each other what they have made. */
  readonly channel: string;
  readonly party: number;
  readonly parties: number;
}

/** Those who make beside a build what it will ask for. */
interface Crew {
  /** The build's store, with all that the others have made. */
  readonly store: Store;
  /** Sends them home. */
  end(): Promise<void>;
}

/** Twice the usual room for what is young: clearing that up keeps all of a processor's cores from their work. */
const resourceLimits = { maxYoungGenerationSizeMb: 96 };

/** So few rigs are made by the time that a worker has read the content. */
const rigsAlone = 12;

/**
 * How many are to be at work on a build, itself among them: as many as asked for, else one, as each reads the tool and the
 * content anew: on two processors a guide of twenty rigs took a third longer with two.
 *
 * @param asked by the command, or by `DOTDOWN_WORKERS`
 * @throws UsageError where that is no number from 1 to 64
 */
export function workersFor(asked: unknown = process.env.DOTDOWN_WORKERS || undefined): number {
  if (asked === undefined) return 1;
  if (!/^([1-9]|[1-5]\d|6[0-4])$/.test(String(asked)))
    throw new UsageError(`${asked} workers is not understood; write a number from 1 to 64`);
  return Number(asked);
}

/**
 * Starts workers that make the same from other ends. All that they make depends on nothing but what it is made from, so
 * the build is the same, to the byte, whoever made a part of it, and with a worker that fails.
 *
 * @param size how many are at work, the build itself among them
 */
export function startCrew(
  size: number,
  { sources, parts }: Pick<Job, "sources" | "parts">,
  below: Store,
): Crew {
  const alone = { store: below, end: async () => {} };
  const rigs = [...sources.keys()].filter((path) => path.startsWith("rigs/")).length;
  // Run from its sources the tool has no worker at hand.
  const worker = new URL("worker.js", import.meta.url);
  if (size < 2 || rigs <= rigsAlone || !new URL(".", worker).pathname.endsWith("/dist/")) return alone;
  const channel = new BroadcastChannel(randomUUID());
  channel.unref();
  const workers: Worker[] = [];
  for (let party = 1; party < size; party++) {
    const job: Job = { sources, parts, channel: channel.name, party, parties: size };
    const one = new Worker(worker, { workerData: job, resourceLimits });
    // What it has not made the build makes itself, and tells why where that cannot be.
    one.on("error", () => {});
    workers.push(one);
  }
  const store = sharedStore(below, channel);
  return {
    store,
    async end() {
      stageDone("workers", store.taken, "results taken over");
      channel.close();
      await Promise.all(workers.map((one) => one.terminate()));
    },
  };
}
