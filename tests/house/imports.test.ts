import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf } from "../../tools/imports.mjs";

const root = join(import.meta.dirname, "../..");

interface Rule {
  readonly values: ReadonlySet<string>;
  readonly types: ReadonlySet<string>;
}

/** The table of rooms as it stands in DEVELOPERS.md. */
function readRules(): ReadonlyMap<string, Rule> {
  const lines = readFileSync(join(root, "DEVELOPERS.md"), "utf8").split("\n");
  const rows = lines
    .map((line) => /^\| `((?:src\/)?\w+)` \|.*\| ([^|]+) \|$/.exec(line))
    .filter((row) => row !== null);
  return new Map(
    rows.map(([, room, allowed]) => {
      const entries = allowed!.trim() === "nothing" ? [] : allowed!.split(",").map((entry) => entry.trim());
      const types = entries.filter((entry) => entry.startsWith("types of ")).map((entry) => entry.slice(9));
      return [
        roomOf(`${room}/x`)!,
        { values: new Set(entries.filter((e) => !e.startsWith("types of "))), types: new Set(types) },
      ];
    }),
  );
}

const roomOf = (path: string): string | undefined =>
  /^(?:src\/(\w+)|(templates))\//.exec(path)?.slice(1).find(Boolean);

const files = ["src", "templates"].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
    .filter((path) => /\.tsx?$/.test(path)),
);

const imports = files
  .flatMap((from) => importsOf(root, from).map((one) => ({ ...one, from })))
  .filter(({ from, to }) => from !== to);

describe("the rooms of the house", () => {
  const rules = readRules();
  const crossing = imports.filter(({ from, to }) => roomOf(to) && roomOf(from) !== roomOf(to));

  it("are all in the table", () => {
    expect([...new Set(files.map(roomOf))].filter((room) => !rules.has(room!))).toEqual([]);
  });

  it("import only what the table allows", () => {
    expect(files.length).toBeGreaterThan(20);
    const wrong = crossing.filter(({ from, to, typeOnly }) => {
      const rule = rules.get(roomOf(from)!)!;
      const target = roomOf(to)!;
      return !(rule.values.has(target) || (typeOnly && rule.types.has(target)));
    });
    expect(wrong.map(({ from, to }) => `${from} imports ${to}`)).toEqual([]);
  });

  it("are allowed nothing that none of their files imports", () => {
    const used = (from: string, to: string, typeOnly: boolean) =>
      crossing.some(
        (one) => roomOf(one.from) === from && roomOf(one.to) === to && (typeOnly || !one.typeOnly),
      );
    const unused = [...rules].flatMap(([room, { values, types }]) => [
      ...[...values].filter((to) => !used(room, to, false)).map((to) => `${room} needs no values of ${to}`),
      ...[...types].filter((to) => !used(room, to, true)).map((to) => `${room} needs no types of ${to}`),
    ]);
    expect(unused).toEqual([]);
  });

  it("form no circle of rooms, not of types either", () => {
    const edges = new Map<string, Set<string>>();
    for (const { from, to } of crossing) {
      const room = roomOf(from)!;
      edges.set(room, (edges.get(room) ?? new Set()).add(roomOf(to)!));
    }
    expect(findCircle(edges)).toEqual([]);
  });

  it("form no circle of files, not of types either", () => {
    const edges = new Map<string, Set<string>>();
    for (const { from, to } of imports) {
      edges.set(from, (edges.get(from) ?? new Set()).add(to));
    }
    expect(findCircle(edges)).toEqual([]);
  });
});

function findCircle(edges: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]): string[] => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return [];
    done.add(file);
    for (const next of edges.get(file) ?? []) {
      const circle = visit(next, [...trail, file]);
      if (circle.length > 0) return circle;
    }
    return [];
  };
  for (const file of edges.keys()) {
    const circle = visit(file, []);
    if (circle.length > 0) return circle;
  }
  return [];
}
