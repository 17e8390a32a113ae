import { namedFiles } from "../model/named-files.ts";
import { siteAddress } from "./site-address.ts";

/** Addresses of all that this browser keeps of the site, without what stands behind a question mark. */
export async function keptAddresses(): Promise<ReadonlySet<string>> {
  const kept = new Set<string>();
  for (const name of await caches.keys()) {
    for (const { url } of await (await caches.open(name)).keys()) kept.add(withoutQuery(url));
  }
  return kept;
}

/**
 * Fetches pages, and what goes with each: the worker of the guide keeps what passes through it.
 *
 * @param told called with how many are done
 */
export async function keepPages(
  addresses: readonly string[],
  told: (done: number) => void = () => {},
): Promise<void> {
  for (const [at, address] of addresses.entries()) {
    const answer = await fetch(address);
    for (const name of namedFiles(await answer.text())) await fetch(new URL(name, siteAddress));
    told(at + 1);
  }
}

export const withoutQuery = (address: string) => address.replace(/[?#].*/, "");
