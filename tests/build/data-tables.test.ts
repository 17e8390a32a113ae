import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, it } from "vitest";
import { tableFiles } from "../../src/build/data-tables.ts";
import { allShot } from "../../src/model/solved.ts";
import { sampleRigs } from "../support/sample-rig.ts";

type Row = Readonly<Record<string, string>>;
let shot: readonly Row[];
let kit: readonly Row[];

beforeAll(() => {
  const markings = new Map(sampleRigs.map(({ rig }) => [rig.float.id, '2 AAA, "loaded"']));
  const rows = tableFiles(sampleRigs, markings).map(({ content }) => {
    // RFC 4180 ends each line by CR and LF.
    expect(
      String(content)
        .split("\n")
        .slice(0, -1)
        .every((line) => line.endsWith("\r")),
    ).toBe(true);
    return parse(content as string, { columns: true }) as Row[];
  });
  [shot, kit] = rows as [Row[], Row[]];
});

describe("the tables of the data", () => {
  it("have each shot of each rig at each depth, as another reader of CSV reads them", () => {
    const all = sampleRigs.flatMap(({ depths }) => depths.flatMap((depth) => allShot(depth)));
    expect(shot).toHaveLength(all.length);
    const mass = shot.reduce((sum, { massG }) => sum + Number(massG), 0);
    expect(mass).toBeCloseTo(
      all.reduce((sum, { massG }) => sum + massG, 0),
      2,
    );
    expect(shot[0]).toMatchObject({ rig: sampleRigs[0]!.rig.id, size: all[0]!.size, metal: all[0]!.metal });
  });

  it("have what each rig is made of, with the most shot of a size that a depth takes", () => {
    for (const { rig, depths } of sampleRigs) {
      const rows = kit.filter((row) => row.rig === rig.id);
      expect(rows.find(({ kind }) => kind === "float")).toMatchObject({
        item: rig.float.title,
        size: '2 AAA, "loaded"',
      });
      expect(rows.find(({ kind }) => kind === "hook")).toMatchObject({ size: String(rig.hook.size) });
      for (const { item, size, count } of rows.filter(({ kind }) => kind === "shot")) {
        const counts = depths.map(
          (depth) => allShot(depth).filter((one) => one.size === size && one.metal === item).length,
        );
        expect(Number(count), `${rig.id} ${size} ${item}`).toBe(Math.max(...counts));
      }
    }
  });
});
