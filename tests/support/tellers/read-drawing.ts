import type { Drawing, Item, TextItem } from "../../../src/drawing/model.ts";
import { heard, plain, readCm, readLoad, readLock, readMm, readPlaces } from "./read-words.ts";
import type { Statement, ToldGroup } from "./statement.ts";

export const textsOf = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === "text" ? [item] : item.kind === "group" ? textsOf(item.items) : []));

/** Labels of a rig's drawing that begin with a distance, each as one text. */
export function labelsOf(drawing: Drawing): string[] {
  const labels: string[] = [];
  for (const { face, text } of textsOf(drawing.items)) {
    if (face === "bold") labels.push(text);
    else if (labels.length > 0) labels.push(`${labels.pop()} ${text}`);
  }
  // What stands in the drawing without a distance follows the last label of its column.
  return labels
    .map((label) =>
      plain(label).replace(
        / (hook size|(?:\d+ cm deep, )?\d+ cm off the bed|about \d+ cm of float|bed, |flow|\d+ mm of tip).*$/,
        "",
      ),
    )
    .filter((label) => !label.startsWith("0 hook bend") && !label.startsWith("hook set"));
}

/** By how much a float is told to be slowed. */
const slowed = /slowed by (\d+) %/;

/** What the labels of a drawing, its caption and its marks say. */
export function readDrawing(drawing: Drawing, teller: string): Statement[] {
  const texts = textsOf(drawing.items).map(({ text }) => plain(text));
  const depthCm = readCm(/bed, ([^,]*?) down/.exec(texts.join(" "))![1]!);
  const told: Statement[] = [];
  const groups: ToldGroup[] = [];
  for (const label of labelsOf(drawing)) {
    const [, from, to, words] = /^(\d+)(?: to (\d+))? cm (.*)$/.exec(label)!;
    const cm = Number(from);
    const held = /^(stop knot(?:, |: the ))?float(?: slides up to it|, locked by (.*))?$/.exec(words!);
    if (held) {
      told.push({ teller, depthCm, of: "setting", cm, moved: held[1] ? "stop knot" : "float" });
      if (held[2]) told.push({ teller, depthCm, of: "lock", ...readLock(held[2]) });
    } else if (!words!.startsWith("loop of the hook length")) {
      const counts = readLoad(words!.replace(/, just above the loop$|, evenly$/, ""));
      const stretch = to && {
        stretch: words!.endsWith(", evenly") ? ("even" as const) : ("uneven" as const),
      };
      groups.unshift({ counts, placesCm: to ? [cm, Number(to)] : [cm], ...(stretch || {}) });
    }
  }
  told.push({
    teller,
    depthCm,
    of: "line placed",
    groups: [...groups].sort((a, b) => a.placesCm[0]! - b.placesCm[0]!),
  });
  const tip = /(\d+ mm) of tip shows/.exec(texts.join(" "));
  if (tip) told.push({ teller, depthCm, of: "tip", mm: readMm(tip[1]!) });
  const [, percent] = slowed.exec(texts.join(" ")) ?? [];
  const [, cm] = /(\d+) cm off the bed/.exec(texts.join(" ")) ?? [];
  if (percent) {
    const share = Number(percent) / 100;
    told.push({ teller, of: "held back", share });
    told.push({ teller, depthCm, of: "hook over bed", cm: -Number(cm), heldBackShare: share });
  }
  const shot = drawing.items.filter((item) => item.kind === "circle" && item.fill === "ink");
  return [...told, { teller, depthCm, of: "shot drawn", count: shot.length }];
}

/** What moving the float changes, in one statement; the data have a rig as it is set. */
function movedAgainstSet(statements: readonly Statement[], moves: string, overBedCm: number): Statement[] {
  const rest: Statement[] = [];
  let [cm, tipMm] = [Number.NaN, Number.NaN];
  for (const one of statements) {
    if (one.of === "setting") cm = one.cm;
    else if (one.of === "tip") tipMm = one.mm;
    else rest.push(one);
  }
  const movedCm = readCm(moves) * (moves.endsWith(" up the line") ? 1 : -1);
  const { teller, depthCm } = statements[0]!;
  return [...rest, { teller, depthCm: depthCm!, of: "moved", cm, movedCm, overBedCm, tipMm }];
}

/** What is said of a drawing to those who do not see it. */
export function readDescription(description: string, teller: string): Statement[] {
  const told = heard(description);
  const [, depth, moves, line, rest] =
    /for water (.*?) deep\. (?:The [\w ]+ is moved (.*?)\. )?From the hook up: (.*?)\. (.*)$/.exec(told)!;
  const depthCm = readCm(depth!);
  const [, shot, held, cm, lock] = /^(?:(.*); )?the (float|stop knot) at (\d+) cm(?:, locked by (.*))?$/.exec(
    line!,
  )!;
  const statements: Statement[] = [
    { teller, depthCm, of: "setting", cm: Number(cm), moved: held! },
    ...(lock ? [{ teller, depthCm, of: "lock" as const, ...readLock(lock) }] : []),
    { teller, depthCm, of: "line placed", groups: readPlaces(shot ?? "none") },
  ];
  const tip = /(\d+ mm) of tip shows/.exec(rest!);
  if (tip) statements.push({ teller, depthCm, of: "tip", mm: readMm(tip[1]!) });
  const [, over] = /set (\d+) cm over depth and lies on the bed/.exec(rest!) ?? [];
  const [, off] = /The hook hangs (\d+) cm off the bed/.exec(rest!) ?? [];
  const [, percent] = slowed.exec(rest!) ?? [];
  const hook = { cm: Number(over ?? -Number(off ?? 0)), heldBackShare: Number(percent ?? 0) / 100 };
  if (percent) statements.push({ teller, of: "held back", share: hook.heldBackShare });
  if (moves === undefined) return [...statements, { teller, depthCm, of: "hook over bed", ...hook }];
  return movedAgainstSet(statements, moves, hook.cm);
}
