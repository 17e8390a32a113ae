import { keptOf } from "./read-plumbing.ts";
import { heard, readCm, readLineCm, readLoad, readLock, readMm, readPlaces } from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** Titles of the states of a float that are drawn together, in their order. */
const groups = [
  ["Too little shot", "Shotted right", "Too much shot"],
  ["Set too shallow", "Depth right", "Set too deep"],
  ["A bite", "A lift bite", "Moving off", "Laid on in wind", "Pulled down by the bed"],
];

/**
 * The words for pictures of what a float says, which are of the shallowest depth of their rig.
 *
 * @param rigs of the pictures, in the order of the alternatives
 */
export function readStates(
  alts: readonly string[],
  rigs: readonly string[],
  teller: string,
): (readonly [rig: string, Statement])[] {
  const runs: { group: readonly string[]; at: number; alts: string[] }[] = [];
  for (const alt of alts) {
    const group = groups.find((titles) => titles.some((title) => alt.startsWith(`${title}. `)));
    if (!group) continue;
    const at = group.findIndex((title) => alt.startsWith(`${title}. `));
    const run = runs.at(-1);
    if (run && run.group === group && at > run.at) Object.assign(run, { at, alts: [...run.alts, alt] });
    else runs.push({ group, at, alts: [alt] });
  }
  if (runs.length !== rigs.length)
    throw new Error(`${teller}: ${runs.length} of float-states, not ${rigs.length}`);
  return runs.flatMap(({ alts }, at) =>
    alts.flatMap((alt) => readState(alt, teller).map((one) => [rigs[at]!, one] as const)),
  );
}

function readState(alt: string, teller: string): Statement[] {
  const told = heard(alt).replace(/^.*?\. /, "");
  const move = /Move the (float|stop knot) (?:up|down)\.$/.exec(told)?.[1];
  if (alt.startsWith("Set too deep")) {
    const sign = told.includes("it lies over") ? "lies flat" : "stands too high";
    return [{ teller, of: "too deep", sign, moved: move! }];
  }
  const [, tip] = /^(\d+ mm) of tip shows\.$/.exec(told) ?? [];
  if (tip) return [{ teller, of: "tip", mm: readMm(tip) }];
  const [, shown, wrong, size] =
    /^(?:Only )?(\d+ mm|The tip is level|The float goes under).*: (add|take) one (.*?)(?: off)?\.$/.exec(
      told,
    ) ?? [];
  if (size) {
    const tipMm = /mm$/.test(shown!) ? readMm(shown!) : shown!.includes("level") ? 0 : null;
    return [{ teller, of: "one shot", size, more: wrong === "take", tipMm }];
  }
  const [, lifted, after, before] =
    /(?:the weight of bait and|lifts the) (.*?)(?: that still hangs)?: (\d+ mm) of tip shows where (\d+ mm) did/.exec(
      told,
    ) ?? [];
  if (lifted)
    return [
      { teller, of: "tip", mm: readMm(before!) },
      { teller, of: "lift", size: lifted, riseMm: readMm(after!) - readMm(before!) },
    ];
  const [, over, lying, laid] =
    /^(\d+ cm) over depth: the (.*?) on the bed .*? (\d+ mm) of tip shows/.exec(told) ?? [];
  if (over)
    return [{ teller, of: "laid on", cm: readCm(over), onBed: readLoad(lying!), tipMm: readMm(laid!) }];
  return [];
}

/** The words for the pictures of making a rig up, step by step. */
export function readMakeUp(words: string, teller: string): Statement[] {
  const captions = words.match(/1\. Lead the line from the reel .*? measured from the hook: [^.]*\./g) ?? [];
  const steps = captions.flatMap((caption) => caption.split(/ ?\b\d\. /).map((step) => step.trim()));
  return steps.flatMap((step): Statement[] => {
    const [, hookLength] = /^Join the hook length of (\d+ cm) to the line/.exec(step) ?? [];
    const [, lock] = /^Take the plummet off\. .*until it is: (.*)\.$/.exec(step) ?? [];
    const [, places] = /measured from the hook: (.*)\.$/.exec(step) ?? [];
    return [
      ...keptOf(step, { teller }),
      ...(hookLength ? [{ teller, of: "hook length" as const, cm: readLineCm(hookLength) }] : []),
      ...(lock ? [{ teller, of: "lock" as const, ...readLock(lock) }] : []),
      ...(places ? [{ teller, of: "line placed" as const, groups: readPlaces(places) }] : []),
    ];
  });
}
