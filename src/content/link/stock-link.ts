import type { z } from "zod";
import { byId } from "../../core/lists.ts";
import { kitKey } from "../../core/tackle/kit.ts";
import type { FloatEntry, ScaleEntry } from "../../model/library.ts";
import type { Hook } from "../../model/rig.ts";
import { needOf, type StockLine, type Thing } from "../../model/stock.ts";
import type { Read, Reading } from "../reading.ts";
import type { stockKeys } from "../schema/stock-schema.ts";

/** What the names of a stock are looked up in. */
export interface StockShelves {
  readonly floats: readonly FloatEntry[];
  readonly hooks: readonly Hook[];
  readonly scale: ScaleEntry;
}

type TypedStock = z.output<z.ZodObject<typeof stockKeys>>;
type Path = readonly (string | number)[];

/** What stands at one place of the file; no thing where its name is nobody's. */
interface Listed {
  readonly thing: Thing | undefined;
  readonly count: number;
  readonly packet?: number | undefined;
  readonly price?: number | undefined;
  readonly at: Path;
}

/** What a packet costs, where that is said. */
export const priced = (price: number | undefined): { readonly priceCents?: number } =>
  price === undefined ? {} : { priceCents: Math.round(100 * price) };

/** Tackle in a box or on a shelf, with its names looked up; what is listed twice is an error at its second place. */
export function linkStock(
  typed: TypedStock,
  path: Path,
  { yaml }: Pick<Read<unknown>, "yaml">,
  shelves: StockShelves,
  reading: Reading,
): readonly StockLine[] {
  const placeOf = (of: Path) => yaml.placeOf([...path, ...of]);
  const lookUp = <T>(found: ReadonlyMap<string, T>, name: string, what: string, at: Path) =>
    reading.lookUp(found, name, what, placeOf(at));
  const lines = new Map<string, StockLine>();
  for (const { thing, count, packet, price, at } of listed(typed, shelves, lookUp)) {
    if (!thing) continue;
    const need = needOf(thing, count);
    const key = kitKey(need);
    if (lines.has(key)) {
      reading.error(placeOf(at), "duplicate-name", { found: need.name });
    }
    lines.set(key, {
      ...need,
      ...(packet !== undefined && { perPacket: packet }),
      ...priced(price),
    });
  }
  return [...lines.values()];
}

type LookUp = <T>(found: ReadonlyMap<string, T>, name: string, what: string, at: Path) => T | undefined;

const metre = 1000;

function listed(typed: TypedStock, shelves: StockShelves, lookUp: LookUp): readonly Listed[] {
  const floats = byId(shelves.floats.map(({ float }) => float));
  const sizes = new Map(shelves.scale.sizes.map((size) => [size.name, size]));
  const hooks = new Map(shelves.hooks.map((hook) => [String(hook.size), hook]));
  const spools = (key: "hook-line" | "main-line", kind: "hook length" | "line") =>
    typed[key].map(
      ({ strength: strengthG, length, packet, price }, i): Listed => ({
        thing: { kind, strengthG },
        count: length / metre,
        packet: packet && packet / metre,
        price,
        at: [key, i, "strength"],
      }),
    );
  return [
    ...typed.floats.map(({ float: name, ...sold }, i): Listed => {
      const at = ["floats", i, "float"];
      const float = lookUp(floats, name, "float", at);
      const thing = float && ({ kind: "float", id: float.id, title: float.title } as const);
      return { thing, ...sold, at };
    }),
    ...typed.shot.map(({ size: name, metal, ...sold }, i): Listed => {
      const at = ["shot", i, "size"];
      const size = lookUp(sizes, name, "shot size", at);
      return { thing: size && { kind: "shot", size: size.name, metal }, ...sold, at };
    }),
    ...typed.hooks.map(({ size, ...sold }, i): Listed => {
      const at = ["hooks", i, "size"];
      const hook = lookUp(hooks, String(size), "hook size", at);
      return { thing: hook && { kind: "hook", size: hook.size }, ...sold, at };
    }),
    ...spools("hook-line", "hook length"),
    ...spools("main-line", "line"),
  ];
}
