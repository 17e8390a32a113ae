import { stringify } from "csv-stringify/sync";
import type { OutputFile } from "../markup/output.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import { allShot, mostShot, type SolvedRig } from "../model/solved.ts";
import { cm, rounded } from "./data-figures.ts";

export type Row = Readonly<Record<string, string | number>>;

/** A table as programs for sheets read it. Source: RFC 4180. */
export function csvFile(path: string, columns: readonly string[], rows: readonly Row[]): OutputFile {
  const options = {
    header: true,
    columns: [...columns],
    record_delimiter: "windows",
    escape_formulas: true,
  } as const;
  return { path, content: stringify([...rows], options) };
}

/**
 * `data/shot.csv`, each shot of each rig at each depth, and `data/kit.csv`, what each rig is made of: for stock and labels.
 *
 * @param markings what is written on floats, by their ids
 */
export function tableFiles(
  solved: readonly SolvedRig[],
  markings: ReadonlyMap<string, string>,
  keep: Keep = makeAnew,
): readonly OutputFile[] {
  const shotColumns = ["rig", "depthCm", "size", "metal", "massG", "role", "fromHookCm"];
  const kitColumns = ["rig", "kind", "item", "size", "count"];
  return [
    csvFile(
      "data/shot.csv",
      shotColumns,
      solved.flatMap((one) => keep("rows of shot", digestOnce(one.rig), () => shotRows(one))),
    ),
    csvFile(
      "data/kit.csv",
      kitColumns,
      solved.flatMap((one) => {
        const marking = markings.get(one.rig.float.id) ?? "";
        return keep("rows of kit", digestOf(digestOnce(one.rig), marking), () => kitRows(one, marking));
      }),
    ),
  ];
}

function shotRows({ rig, depths }: SolvedRig): Row[] {
  return depths.flatMap((depth) =>
    allShot(depth).map(({ size, metal, massG, role, fromHookMm }) => ({
      rig: rig.id,
      depthCm: cm(depth.depthMm),
      size,
      metal,
      massG: rounded(massG),
      role,
      fromHookCm: cm(fromHookMm),
    })),
  );
}

function kitRows(solved: SolvedRig, marking: string): Row[] {
  const { rig } = solved;
  const line = ({ strengthG, diameterMm }: typeof rig.mainLine) =>
    `${rounded(strengthG, 0)} g, ${rounded(diameterMm, 2)} mm`;
  const one = (kind: string, item: string, size: string): Row => ({
    rig: rig.id,
    kind,
    item,
    size,
    count: 1,
  });
  return [
    one("float", rig.float.title, marking),
    one("main line", "line", line(rig.mainLine)),
    one("hook length", "line", line(rig.hookLine)),
    one("hook", "hook", String(rig.hook.size)),
    one("bait", rig.bait.title, ""),
    ...mostShot(solved).map(({ size, metal, count }) => ({
      rig: rig.id,
      kind: "shot",
      item: metal,
      size,
      count,
    })),
  ];
}
