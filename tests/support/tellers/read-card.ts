import { nodesOf, type ReadPdf } from "../../print/read-pdf.ts";
import { readDescription } from "./read-drawing.ts";
import { plain, readCm, readLineCm, readLock, readMm, readPlaces, readSeconds } from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** Cells of a row, one for each depth: a cell that spans them is said of each. */
const each = (cells: readonly string[], depths: number) =>
  cells.length === depths ? cells : Array.from({ length: depths }, () => cells[0]!);

/** What a printed card says: the words for its drawing, its table, and the paragraphs of its back. */
export function readCard({ pages }: ReadPdf, teller: string): Statement[] {
  const [front, back] = pages;
  const alt = nodesOf(front!.tree, "Figure")[0]!.alt!;
  const rows = nodesOf(back!.tree, "TR").map((row) => row.children.map((cell) => plain(cell.text)));
  const paragraphs = [front!, back!].flatMap(({ tree }) => nodesOf(tree, "P").map((p) => plain(p.text)));
  return [
    ...readDescription(alt, teller),
    ...tablesOf(rows).flatMap((table) => readRows(table, teller)),
    ...readParagraphs(paragraphs.join(" "), teller),
  ];
}

/** Tables below each other, each with its head row. */
function tablesOf(rows: readonly string[][]): string[][][] {
  const tables: string[][][] = [];
  for (const row of rows) {
    if (row[0] === "Depth") tables.push([row]);
    else tables.at(-1)!.push(row);
  }
  return tables;
}

function readRows([head, ...rows]: readonly string[][], teller: string): Statement[] {
  const depths = head!.slice(1).map(readCm);
  return rows.flatMap(([name, ...cells]) =>
    depths.flatMap((depthCm, i): Statement[] => {
      const cell = each(cells, depths.length)[i]!;
      const [, what, of] = /^(.*?)(?:, (.*))?$/.exec(name!)!;
      if (of && of !== "any depth" && !of.split(", ").some((one) => readCm(one) === depthCm)) return [];
      if (/ to hook$/.test(what!)) {
        const moved = /knot/i.test(what!) ? "stop knot" : "float";
        return [{ teller, depthCm, of: "setting", cm: readLineCm(cell), moved }];
      }
      if (what === "Lock") return [{ teller, depthCm, of: "lock", ...readLock(cell) }];
      if (what === "Tip showing") return [{ teller, depthCm, of: "tip", mm: readMm(cell) }];
      return [{ teller, depthCm, of: "line placed", groups: readPlaces(cell) }];
    }),
  );
}

function readParagraphs(told: string, teller: string): Statement[] {
  const [, hook] = /Hook (\d+), /.exec(told)!;
  const [, hookLength] = /Hook length .*?, (\d+ cm)\./.exec(told)!;
  const [, metals] = /Shot: (all \w+|.*?: \w+(?:; rest \w+)?)\./.exec(told)!;
  const [, ml, every] = /Feed: .*?, (\S+) ml.*? every (.*?)\./.exec(told) ?? [];
  const tip = /More tip than that showing: (.*?)\./.exec(told)?.[1];
  return [
    { teller, of: "tackle", hook: Number(hook), hookLengthCm: readLineCm(hookLength!) },
    {
      teller,
      of: "metals",
      metals: [...metals!.matchAll(/(?:all|rest|:) (\w+)/g)].map(([, metal]) => metal!),
    },
    ...(ml ? [{ teller, of: "feed" as const, ml: Number(ml), everyS: readSeconds(every!) }] : []),
    ...(tip
      ? [{ teller, of: "tip set by" as const, what: tip.includes("add a small shot") ? "shot" : "depth" }]
      : []),
  ];
}
