import type { Finding } from "../core/finding.ts";
import { metalIn, parseBox } from "../core/tackle/box-notation.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { OtherRig } from "../model/guide-data.ts";
import type { Rig } from "../model/rig.ts";
import type { Beside } from "./beside.ts";
import { loadedRig, scaleOf } from "./fit-data.ts";
import { loadScript } from "./load-script.ts";
import { rigsOfThisEdition } from "./rig-list.ts";
import { siteAddress } from "./site-address.ts";

const boxOf = (rig: Rig, text: string): Tub | undefined => {
  const box = parseBox(text, scaleOf(rig), metalIn(rig.tub));
  return box.ok ? box.value : undefined;
};

/** Where a box cannot make a rig: the size worth buying, and a rig that it can make, with the way to it. */
export function insteadOf(
  rig: Rig,
  text: string,
  reason: (finding: Finding) => string,
  shownIn: HTMLElement,
  sums: Beside,
): void {
  const list = document.createElement("ul");
  list.className = "findings";
  shownIn.replaceChildren(list);
  const add = (node: Node) => {
    const item = document.createElement("li");
    item.append(node);
    list.append(item);
  };
  const tryNext = async ([other, ...others]: readonly OtherRig[]): Promise<void> => {
    const data = other && (await dataOfRig(other));
    // Meanwhile another water may have been asked for.
    if (!other || !list.isConnected) return;
    if (!data) return tryNext(others);
    const box = boxOf(data, text);
    const asked = { rig: { ...data, depthsMm: rig.depthsMm }, ...(box && { box }) };
    sums.ask("canBeMade", asked, (finding, { isLast }) => {
      if (!isLast) return;
      if (!finding) {
        void tryNext(others);
        return;
      }
      const link = document.createElement("a");
      link.href = `${new URL(other.page, siteAddress).href}?${new URLSearchParams(location.search)}`;
      link.textContent = reason(finding);
      add(link);
    });
  };
  const box = boxOf(rig, text);
  sums.ask("worthBuying", { rig, ...(box && { box }) }, (found, { isLast }) => {
    if (!isLast) return;
    for (const finding of found) add(document.createTextNode(reason(finding)));
    void rigsOfThisEdition().then((rigs) => tryNext(nearestFirst(rig, rigs)));
  });
}

async function dataOfRig({ data }: OtherRig): Promise<Rig | undefined> {
  try {
    await loadScript(new URL(data, siteAddress).href);
    return loadedRig();
  } catch {
    return undefined;
  }
}

/** The rigs for such water, those whose own depths are nearest first. */
function nearestFirst(rig: Rig, rigs: readonly OtherRig[]): readonly OtherRig[] {
  const depthMm = rig.depthsMm[0] ?? 0;
  const outsideMm = ({ depthsMm }: OtherRig) =>
    Math.max(0, Math.min(...depthsMm) - depthMm, depthMm - Math.max(...depthsMm));
  return rigs
    .filter(({ id, water }) => id !== rig.id && water === rig.water)
    .sort((a, b) => outsideMm(a) - outsideMm(b));
}
