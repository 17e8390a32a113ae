import { plain } from "./read-words.ts";
import type { Statement } from "./statement.ts";

/** A cell of a printed table. */
export interface Cell {
  readonly head: boolean;
  readonly cell: string;
}

/** The tables of what a learner brings, one after the other; each must do for the rigs of its kit. */
export function readKits(rows: readonly (readonly Cell[])[], teller: string): Statement[][] {
  let told = new Map<string, string>();
  return rows.flatMap((row) => {
    const [name, what] = row.map(({ cell }) => plain(cell));
    if (name === "Tackle") told = new Map();
    if (what) told.set(name!, what);
    // Other tables have hook baits too.
    if (name !== "Hook bait" || row[1]!.head) return [];
    const list = (key: string) => told.get(key)!.split(", ");
    const pounds = (key: string) => Number(/^([\d.]+) lb/.exec(told.get(key)!)![1]);
    const [, metal, sizes] = /all (\w+): (.*)$/.exec(told.get("Shot")!)!;
    return [
      [
        { teller, of: "metals", metals: [metal!] },
        {
          teller,
          of: "kit",
          floats: list("Floats"),
          sizes: sizes!.split(", "),
          hooks: list("Hooks").map(Number),
          mainLb: pounds("Main line"),
          hookLb: pounds("Hook length"),
          baits: list("Hook bait"),
        },
      ],
    ];
  });
}

/** `In our tubs every shot is tin.`, `Ours are all of non-toxic tin.`: said of every rig. */
export function readMetals(words: string, teller: string): Statement[] {
  return [...words.matchAll(/(?:\bour tubs every shot is|\bOurs are all of non-toxic) (\w+)\./g)].map(
    ([, metal]) => ({ teller, of: "metals", metals: [metal!] }),
  );
}
