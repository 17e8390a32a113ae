import { BroadcastChannel } from "node:worker_threads";
import { makeAhead } from "../../build/ahead.ts";
import type { Solved } from "../../build/stages.ts";
import { orderOf } from "../../model/in-order.ts";
import { keeping, noStore } from "../../model/kept.ts";
import { buildSettings } from "../build-settings.ts";
import { storeOnDisk } from "../kept-on-disk.ts";
import { isLarge } from "../large-guide.ts";
import { withReady } from "../ready-library.ts";
import type { Job } from "./crew.ts";
import { sharedStore, storeInMemory } from "./shared-store.ts";

/** The work of a thread beside a build: makes the same from another end, and tells what it has made. */
export async function workBeside({ sources, parts, channel, party, parties }: Job): Promise<void> {
  const told = new BroadcastChannel(channel);
  told.unref();
  const disk = isLarge(sources.size) ? storeOnDisk() : noStore;
  const keep = keeping(sharedStore(withReady(storeInMemory({ disk })), told, { disk }));
  const settingsOf = (solved: Solved) => ({ ...buildSettings(solved), parts });
  await makeAhead(sources, settingsOf, keep, orderOf(party, parties));
}
