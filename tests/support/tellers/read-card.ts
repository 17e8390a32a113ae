import { nodesOf, type ReadPdf } from "../../print/read-pdf.ts";
import { readDescription } from "./read-drawing.ts";
import {
  plain,
  readCm,
  readLineCm,
  readLoad,
  readLock,
  readMm,
  readPlaces,
  readSeconds,
} from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** What a printed card says: the words for its drawing, its table, and the paragraphs of both sides. */
export function readCard({ pages }: ReadPdf, teller: string): Statement[] {
  const [front, back] = pages;
  const alt = nodesOf(front!.tree, "Figure")[0]!.alt!;
  const [head, ...rows] = nodesOf(back!.tree, "TR").map((row) =>
    row.children.map((cell) => plain(cell.text)),
  );
  const told = [front!, back!].flatMap(({ tree }) => nodesOf(tree, "P").map((p) => plain(p.text))).join(" ");
  const aColumnEach = /^\S+ m$/.test(head![1]!);
  const depths = aColumnEach ? head!.slice(1).map(readCm) : rows.map(([depth]) => readCm(depth!));
  return [
    ...readDescription(alt, teller),
    ...(aColumnEach ? readColumns(depths, rows, teller) : readRows(head![1]!, rows, teller)),
    ...readTip(depths, told, teller),
    ...readParagraphs(told, teller),
  ];
}

const movedIn = (name: string) => (/^stop knot/i.test(name) ? "stop knot" : "float");

/** A column a depth: its setting, then the shot of all depths, or of each in a row of its own. */
function readColumns(
  depths: readonly number[],
  rows: readonly (readonly string[])[],
  teller: string,
): Statement[] {
  return rows.flatMap(([name, ...cells]) =>
    depths.flatMap((depthCm, i): Statement[] => {
      const [cell] = cells.length === depths.length ? [cells[i]!] : cells;
      if (/ to hook$/.test(name!))
        return [{ teller, depthCm, of: "setting", cm: readLineCm(cell!), moved: movedIn(name!) }];
      if (name === "Tip showing") return [{ teller, depthCm, of: "tip", mm: readMm(cell!) }];
      if (name === "Lock") return [{ teller, depthCm, of: "lock", ...readLock(cell!) }];
      if (name !== "Shot" && readCm(name!) !== depthCm) return [];
      return [{ teller, depthCm, of: "line placed", groups: readPlaces(cell!) }];
    }),
  );
}

/** A row a depth: its setting, then its lock, if shot hold the float, and the shot on the line. */
function readRows(head: string, rows: readonly (readonly string[])[], teller: string): Statement[] {
  return rows.flatMap(([depth, setting, shot]): Statement[] => {
    const depthCm = readCm(depth!);
    const [, tip, lock, places] = /^(?:Tip showing: (.*?)\. )?(?:(.* (?:above, .* below|alone)) )?(.*)$/.exec(
      shot!,
    )!;
    return [
      { teller, depthCm, of: "setting", cm: readLineCm(setting!), moved: movedIn(head) },
      ...(tip ? [{ teller, depthCm, of: "tip" as const, mm: readMm(tip) }] : []),
      ...(lock ? [{ teller, depthCm, of: "lock" as const, ...readLock(lock) }] : []),
      { teller, depthCm, of: "line placed", groups: readPlaces(places!) },
    ];
  });
}

/** The tip that is told once for all depths: by itself, or in what the float says when it is set right. */
function readTip(depths: readonly number[], told: string, teller: string): Statement[] {
  const [, tip] =
    /Tip showing: (\d+ mm)\./.exec(told) ?? /Right: (?:runs clean, )?tip (\d+ mm)/.exec(told) ?? [];
  return tip ? depths.map((depthCm) => ({ teller, depthCm, of: "tip", mm: readMm(tip) })) : [];
}

function readParagraphs(told: string, teller: string): Statement[] {
  const [, hook] = /Hook (\d+), /.exec(told)!;
  const [, hookLength] = /Hook length .*?, (\d+ cm)\./.exec(told)!;
  const [, metals] = /Shot: (all \w+|.*?: \w+(?:; rest \w+)?)\./.exec(told)!;
  const [, ml, every] = /Feed: .*?, (\S+) ml.*? every (.*?)\./.exec(told) ?? [];
  const tip = /More tip than .*? (?:showing|at the right depth): (.*?)\./.exec(told)?.[1];
  return [
    { teller, of: "tackle", hook: Number(hook), hookLengthCm: readLineCm(hookLength!) },
    {
      teller,
      of: "metals",
      metals: [...metals!.matchAll(/(?:all|rest|:) (\w+)/g)].map(([, metal]) => metal!),
    },
    ...(ml ? [{ teller, of: "feed" as const, ml: Number(ml), everyS: readSeconds(every!) }] : []),
    ...readRun(told, teller),
    ...(tip
      ? [{ teller, of: "tip set by" as const, what: tip.includes("add a small shot") ? "shot" : "depth" }]
      : []),
  ];
}

/** What the float says in running water, in the depth that the front draws. */
function readRun(told: string, teller: string): Statement[] {
  const [, percent] = /Float slowed by (\d+) %\./.exec(told) ?? [];
  if (!percent) return [];
  const share = Number(percent) / 100;
  const depthCm = readCm(/to hook, water (\S+ m)\b/.exec(told)![1]!);
  const [, off] = /Right: runs clean, tip \d+ mm, bait (\d+) cm off the bed/.exec(told)!;
  const [, dips] = / (\d+) cm too deep: dips now and then\./.exec(told)!;
  const [, under, onBed] = / (\d+) cm: is pulled under, (.*?) on the bed\./.exec(told)!;
  return [
    { teller, of: "held back", share },
    { teller, depthCm, of: "hook over bed", cm: -Number(off), heldBackShare: share },
    { teller, depthCm, of: "too deep by", cm: Number(dips), state: "rests on the bed", onBed: {} },
    { teller, depthCm, of: "too deep by", cm: Number(under), state: "drags under", onBed: readLoad(onBed!) },
  ];
}
