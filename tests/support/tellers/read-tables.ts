import type { TextTable } from "../../../src/words/tables.ts";
import { keptOf, plummetOf, tryOf } from "./read-plumbing.ts";
import {
  plain,
  readCm,
  readHookSet,
  readLineCm,
  readLoad,
  readLock,
  readMm,
  readPlaces,
  readSeconds,
} from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** The table of a rig's shot, depth by depth, as lessons and handouts have it. */
export function readShotTable({ head, rows }: TextTable, teller: string): Statement[] {
  const moved = plain(head[1]!)
    .replace(/ to hook$/, "")
    .toLowerCase();
  const depths: Statement = { teller, of: "all depths", cm: rows.map(([depth]) => readCm(depth!)) };
  const told = rows.flatMap((cells): Statement[] => {
    const [depth, setting, ...rest] = cells;
    const [tip, line, lock] = rest.reverse();
    const depthCm = readCm(depth!);
    return [
      { teller, depthCm, of: "setting", cm: readLineCm(setting!), moved },
      { teller, depthCm, of: "tip", mm: readMm(tip!) },
      { teller, depthCm, of: "line placed", groups: readPlaces(line!) },
      ...(lock === undefined ? [] : [{ teller, depthCm, of: "lock" as const, ...readLock(lock) }]),
    ];
  });
  return [depths, ...told];
}

/** How a whip's line is shared out, depth by depth. */
export function readWhipTable({ rows }: TextTable, teller: string): Statement[] {
  return rows.flatMap(([depth, setting, tipToWater, reach]): Statement[] => {
    const depthCm = readCm(depth!);
    return [
      { teller, depthCm, of: "setting", cm: readLineCm(setting!), moved: "float" },
      { teller, depthCm, of: "whip", tipToWaterCm: readCm(tipToWater!), reachCm: readCm(reach!) },
    ];
  });
}

/** A line of a depth guide: setting first, then in running water two columns more, what lies on the bed, and the tip. */
export function readGuideRow(cells: readonly string[], depthCm: number, teller: string): Statement {
  const [set, onBed, tip] = [cells[0]!, cells.at(-2)!, cells.at(-1)!];
  const word = tip === "flat" || tip === "under" ? tip : undefined;
  return {
    teller,
    depthCm,
    of: "guide",
    ...readHookSet(set),
    tip: word ?? readMm(tip),
    onBed: readLoad(onBed),
  };
}

/** Rows of a table of the sheet, cut where the rule below its head has its gaps. */
function columnsOf(sheet: string, heading: string): string[][] {
  const lines = sheet.slice(sheet.indexOf(`\n${heading}`) + 1).split("\n");
  const rule = lines.findIndex((line) => /^ *─/.test(line));
  const widths = [...lines[rule]!.matchAll(/─+/g)].map(
    ({ index, 0: bar }) => [index, index + bar.length] as const,
  );
  const end = lines.indexOf("", rule);
  return [lines[rule - 1]!, ...lines.slice(rule + 1, end)]
    .filter((line) => /^ {2}\S/.test(line))
    .map((line) => widths.map(([from, to]) => line.slice(from, to).trim()));
}

/** The plummet and the tries with it, each a label with its text over as many lines as it needs. */
function readFinding(sheet: string, at: { teller: string; depthCm: number }): Statement[] {
  const told = (label: string) =>
    plain(new RegExp(`\\n  ${label} +(.*(?:\\n {4,}.*)*)`).exec(sheet)?.[1] ?? "");
  const tries = [...sheet.matchAll(/\n {2}Try (\d+) /g)].map(([, number]) => Number(number));
  return [
    plummetOf(told("Plummet"), at),
    ...keptOf(told("Plummet"), at),
    ...tries.map((number) => {
      const [, set, says, next] = /^set (.*?), (.*); (.*)$/.exec(told(`Try ${number}`))!;
      return tryOf(number - 1, set!, says!, next!, at);
    }),
  ];
}

/** The sheet that the command line prints of a rig; the later half is of one depth. */
export function readSheet(sheet: string): Statement[] {
  const teller = "sheet";
  const [head, ...rows] = columnsOf(sheet, "Shot, depth by depth");
  const depthCm = readCm(/\nSet it for (.*?) of water/.exec(sheet)![1]!);
  const guide = columnsOf(sheet, "Too shallow, right, too deep").filter(
    (row) => row.at(-1) === "Start here.",
  );
  if (guide.length !== 1) throw new Error(`${guide.length} rows of the sheet say where to start`);
  const { fromCm, toCm } = readHookSet(guide[0]![0]!);
  const [, cm, from] = /\n {2}Line to hook +(\S+ c?m).*? from the (float's lower eye|stop knot)/s.exec(
    sheet,
  )!;
  const [, ml, every] = /\n {2}Feed +(\S+) ml.*? every (.*?):/s.exec(sheet)!;
  const [, metals] = /\n {2}Shot +by the scale ".*?", (.*?); water/s.exec(sheet)!;
  const [, hook] = /\n {2}Hook, bait +(\d+),/.exec(sheet)!;
  const [, hookLength] = /; hook length .*?, (\d+ cm)/s.exec(sheet)!;
  return [
    ...readShotTable({ head: head!, rows }, teller),
    { teller, depthCm, of: "start here", overdepthCm: fromCm, toCm },
    { teller, depthCm, of: "setting", cm: readLineCm(cm!), moved: from === "stop knot" ? from : "float" },
    ...readFinding(sheet, { teller, depthCm }),
    { teller, of: "feed", ml: Number(ml), everyS: readSeconds(every!) },
    { teller, of: "metals", metals: plain(metals!).split(", ") },
    { teller, of: "tackle", hook: Number(hook), hookLengthCm: readLineCm(hookLength!) },
  ];
}
