import type { z } from "zod";
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
  readonly packet: number | undefined;
  readonly price: number | undefined;
  readonly at: Path;
}

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
    const key = `${need.kind}|${need.name}`;
    if (lines.has(key)) {
      reading.error(placeOf(at), "duplicate-name", { found: need.name });
    }
    lines.set(key, {
      ...need,
      ...(packet !== undefined && { perPacket: packet }),
      ...(price !== undefined && { priceCents: Math.round(100 * price) }),
    });
  }
  return [...lines.values()];
}

type LookUp = <T>(found: ReadonlyMap<string, T>, name: string, what: string, at: Path) => T | undefined;

const metre = 1000;

function listed(typed: TypedStock, shelves: StockShelves, lookUp: LookUp): readonly Listed[] {
  const floats = new Map(shelves.floats.map(({ float }) => [float.id, float]));
  const sizes = new Map(shelves.scale.sizes.map((size) => [size.name, size]));
  const hooks = new Map(shelves.hooks.map((hook) => [String(hook.size), hook]));
  const spools = (key: "hook-line" | "main-line", kind: "hook length" | "line") =>
    typed[key].map(({ strength: strengthG, length, packet, price }, i): Listed => {
      const at = [key, i, "strength"];
      const perSpool = packet === undefined ? undefined : packet / metre;
      return { thing: { kind, strengthG }, count: length / metre, packet: perSpool, price, at };
    });
  return [
    ...typed.floats.map(({ float: name, ...sold }, i): Listed => {
      const at = ["floats", i, "float"];
      const float = lookUp(floats, name, "float", at);
      const thing = float && ({ kind: "float", id: float.id, title: float.title } as const);
      return { thing, packet: sold.packet, price: sold.price, count: sold.count, at };
    }),
    ...typed.shot.map(({ size: name, metal, ...sold }, i): Listed => {
      const at = ["shot", i, "size"];
      const size = lookUp(sizes, name, "shot size", at);
      return {
        thing: size && { kind: "shot", size: size.name, metal },
        packet: sold.packet,
        price: sold.price,
        count: sold.count,
        at,
      };
    }),
    ...typed.hooks.map(({ size, ...sold }, i): Listed => {
      const at = ["hooks", i, "size"];
      const hook = lookUp(hooks, String(size), "hook size", at);
      return {
        thing: hook && { kind: "hook", size: hook.size },
        packet: sold.packet,
        price: sold.price,
        count: sold.count,
        at,
      };
    }),
    ...spools("hook-line", "hook length"),
    ...spools("main-line", "line"),
  ];
}
