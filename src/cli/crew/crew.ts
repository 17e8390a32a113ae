import { randomUUID } from "node:crypto";
import { availableParallelism } from "node:os";
import { BroadcastChannel, Worker } from "node:worker_threads";
import type { BuildSettings } from "../../build/stages.ts";
import type { Source } from "../../content/world.ts";
import type { Store } from "../../model/kept.ts";
import { stageDone } from "../../model/stage-times.ts";
import { UsageError } from "../command.ts";
import { isLarge } from "../large-guide.ts";
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
  /** The build's store, with all that the others have made and told. */
  readonly store: Store;
  /** Sends them home. */
  end(): Promise<void>;
}

/** Twice the usual room for what is young, where memory is no concern: clearing that up keeps all of a processor's cores from their work. */
const limitsFor = (files: number) => ({ maxYoungGenerationSizeMb: isLarge(files) ? 48 : 96 });

/** So few rigs are made by the time that a worker has read the content. */
const rigsAlone = 12;

/**
 * How many are to be at work on a build, itself among them, as the command or `DOTDOWN_WORKERS` asks; nothing where neither does.
 *
 * @throws UsageError where that is no number from 1 to 64
 */
export function workersFor(asked: unknown = process.env.DOTDOWN_WORKERS || undefined): number | undefined {
  if (asked === undefined) return undefined;
  if (!/^([1-9]|[1-5]\d|6[0-4])$/.test(String(asked)))
    throw new UsageError(`${asked} workers is not understood; write a number from 1 to 64`);
  return Number(asked);
}

/** More were not measured. */
const usualMost = 2;

/** Each that is beside a build takes some hundreds of megabytes, the more the larger the guide is. */
const filesMost = 1250;

/** How many are at work on a guide where nobody asks. */
export const usualWorkers = (files: number, processors = availableParallelism()): number =>
  files > filesMost ? 1 : Math.min(usualMost, processors);

/**
 * Starts workers that make the same from other ends. All that they make depends on nothing but what it is made from, so
 * the build is the same, to the byte, whoever made a part of it, and with a worker that fails.
 *
 * @param shelf what is kept of the guide, on the disk
 * @param size how many are at work, the build itself among them; as is usual where nothing is said
 */
export function startCrew(
  { sources, parts }: Pick<Job, "sources" | "parts">,
  { shelf, disk }: { readonly shelf: Store; readonly disk: Store },
  size = usualWorkers(sources.size),
): Crew {
  const alone = { store: shelf, end: async () => {} };
  const rigs = [...sources.keys()].filter((path) => path.startsWith("rigs/")).length;
  // Run from its sources the tool has no worker at hand.
  const worker = new URL("worker.js", import.meta.url);
  if (size < 2 || rigs <= rigsAlone || !new URL(".", worker).pathname.endsWith("/dist/")) return alone;
  const channel = new BroadcastChannel(randomUUID());
  channel.unref();
  const workers: Worker[] = [];
  for (let party = 1; party < size; party++) {
    const job: Job = { sources, parts, channel: channel.name, party, parties: size };
    const one = new Worker(worker, { workerData: job, resourceLimits: limitsFor(sources.size) });
    // What it has not made the build makes itself, and tells why where that cannot be.
    one.on("error", () => {});
    workers.push(one);
  }
  // By the disk takes longer: only where memory is a concern.
  const store = sharedStore(shelf, channel, isLarge(sources.size) ? { disk } : {});
  return {
    store,
    async end() {
      stageDone("workers", store.taken, "results taken over");
      await Promise.all(workers.map((one) => one.terminate()));
      store.end();
      channel.close();
    },
  };
}
