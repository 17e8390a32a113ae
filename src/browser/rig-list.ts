import { type OtherRig, type RigList, rigListName } from "../model/guide-data.ts";
import { loadScript } from "./load-script.ts";
import { dataOf, partById } from "./page-parts.ts";
import { siteAddress } from "./site-address.ts";

/** Set by the list's script. */
declare const dotdownRigs: RigList;

/** The guide's rigs, on a page that loads their list by a name that holds its hash. */
export const listedRigs = (): readonly OtherRig[] => dotdownRigs.rigs;

/**
 * The guide's rigs, on the page of one. The name of their list is the same in all editions, or each rig's page would change with every
 * other rig: so it is taken only where it names all that this page was made with, whose own edition it then is as well.
 */
export async function rigsOfThisEdition(): Promise<readonly OtherRig[]> {
  const fit = partById("fit");
  const own = [...dataOf(fit, "scripts").split(" "), dataOf(fit, "worker")];
  try {
    // No list that the browser has of an earlier day; what a phone keeps is found without the number.
    await loadScript(new URL(`assets/${rigListName}?${Date.now()}`, siteAddress).href);
  } catch {
    return [];
  }
  const { scripts, rigs } = dotdownRigs;
  const named = new Set(
    [...scripts, ...rigs.map(({ data }) => data)].map((path) => new URL(path, siteAddress).href),
  );
  return own.every((address) => named.has(new URL(address, location.href).href)) ? rigs : [];
}
