import type { Finding } from "../core/finding.ts";
import { metalIn, parseBox } from "../core/tackle/box-notation.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { Rig } from "../model/rig.ts";
import { rigThatCan, worthBuying } from "../solve/from-box.ts";
import { loadedRig, type OtherRig, rigs, scaleOf } from "./fit-data.ts";
import { loadScript } from "./load-script.ts";

/** Counts what was asked for, so that an answer to an earlier question is dropped. */
let askedLast = 0;

const boxOf = (rig: Rig, text: string): Tub | undefined => {
  const box = parseBox(text, scaleOf(rig), metalIn(rig.tub));
  return box.ok ? box.value : undefined;
};

/** Where a box cannot make a rig: the size worth buying, and a rig that it can make, with the way to it. */
export async function insteadOf(
  rig: Rig,
  text: string,
  reason: (finding: Finding) => string,
  shownIn: HTMLElement,
): Promise<void> {
  askedLast++;
  const asked = askedLast;
  const list = document.createElement("ul");
  list.className = "findings";
  shownIn.replaceChildren(list);
  const add = (node: Node) => {
    const item = document.createElement("li");
    item.append(node);
    list.append(item);
  };
  for (const finding of worthBuying(rig, boxOf(rig, text) ?? []))
    add(document.createTextNode(reason(finding)));
  for (const other of nearestFirst(rig)) {
    const data = await dataOfRig(other);
    if (asked !== askedLast || !list.isConnected) return;
    const can = data && rigThatCan([{ ...data, depthsMm: rig.depthsMm }], (one) => boxOf(one, text));
    if (!can) continue;
    const link = document.createElement("a");
    link.href = `${new URL(other.page, siteAddress).href}?${new URLSearchParams(location.search)}`;
    link.textContent = reason(can.finding);
    add(link);
    return;
  }
}

const siteAddress = new URL("../", (document.currentScript as HTMLScriptElement).src);

async function dataOfRig({ data }: OtherRig): Promise<Rig | undefined> {
  try {
    await loadScript(new URL(data, siteAddress).href);
    return loadedRig();
  } catch {
    return undefined;
  }
}

/** The rigs for such water, those whose own depths are nearest first. */
function nearestFirst(rig: Rig): readonly OtherRig[] {
  const depthMm = rig.depthsMm[0] ?? 0;
  const outsideMm = ({ depthsMm }: OtherRig) =>
    Math.max(0, Math.min(...depthsMm) - depthMm, depthMm - Math.max(...depthsMm));
  return rigs
    .filter(({ id, water }) => id !== rig.id && water === rig.water)
    .sort((a, b) => outsideMm(a) - outsideMm(b));
}
