import type { Nodes, Parent, Root, Table } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { readShotTable } from "./read-tables.ts";
import { plain, readCm, readLineCm, readMl, readSeconds } from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** What a text says by its live figures and tables: the rig that each is about, and what stands in its place. */
export function readLesson(written: Root, live: Root, path: string): [rig: string, Statement][] {
  return pairs(written, live).flatMap(([node, made]): [string, Statement][] => {
    if (node.type !== "textDirective" && node.type !== "leafDirective") return [];
    const { rig, depth, of } = node.attributes ?? {};
    if (!rig) return [];
    const teller = `${path}, ${node.name}`;
    if (node.name === "shot-table") {
      const [head, ...rows] = (made as Table).children.map((row) =>
        row.children.map((cell) => plain(textOf(cell))),
      );
      return readShotTable({ head: head!, rows }, teller).map((one) => [rig, one]);
    }
    if (node.name !== "figure") return [];
    const depthCm = depth ? Math.round(readCm(depth.replace(/(\d)(c?m)/, "$1 $2"))) : undefined;
    const told = { teller, ...(depthCm !== undefined && { depthCm }) };
    return figure(of!, plain(textOf(made)), told).map((one) => [rig, one]);
  });
}

/** A live figure, as it is told. */
export function figure(of: string, text: string, told: { teller: string; depthCm?: number }): Statement[] {
  switch (of) {
    case "tip":
      return [{ ...told, of, mm: Number.parseFloat(text) }];
    case "float-to-hook":
      return [{ ...told, of: "setting", cm: readLineCm(text) }];
    case "lock-share":
      return [{ ...told, of: "lock share", percent: Number.parseFloat(text) }];
    case "shot-count":
      return [{ ...told, of: "shot drawn", count: Number(text) }];
    case "draught":
      return [{ ...told, of: "draught", cm: readCm(text) }];
    case "session":
      return [
        {
          ...told,
          of: "session",
          hours: text.endsWith("h") ? Number.parseFloat(text) : readSeconds(text) / 3600,
        },
      ];
    case "feed":
      return [{ ...told, of: "session feed", ml: readMl(text) }];
    case "weakest":
      return [{ ...told, of, lb: Number.parseFloat(text) }];
    default:
      return [];
  }
}

/** Nodes of a text as it is written, each with what it became; a plan has a head before what was written. */
function pairs(written: Nodes, live: Nodes): [Nodes, Nodes][] {
  const below = "children" in written && written.type !== "textDirective" && written.type !== "leafDirective";
  if (!below || !("children" in live)) return [[written, live]];
  const { children } = written as Parent;
  const made = (live as Parent).children.slice(-children.length);
  return children.flatMap((child, at) => pairs(child, made[at]!));
}
