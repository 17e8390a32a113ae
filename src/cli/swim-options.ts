import type { Read } from "../build/stages.ts";
import type { Rig } from "../model/rig.ts";
import type { Spot, SwimEntry } from "../model/swim.ts";
import { conditionsAt } from "../solve/choosing/conditions-at.ts";
import { UsageError } from "./command.ts";
import { noSuch } from "./no-such.ts";
import { type Options, quantityAsked } from "./sheet-options.ts";

/** @throws UsageError that names the swims that there are */
export function swimNamed(name: string, { library }: Read): SwimEntry {
  const swim = library.swims.find(({ id }) => id === name);
  if (swim) return swim;
  const known = library.swims.map(({ id }) => id);
  if (known.length > 0) throw noSuch("swim", name, known);
  throw new UsageError(
    `there is no swim "${name}", nor any other; begin one with npx dotdown new swim ${name}`,
  );
}

/** The place that was asked for, or all of the swim. */
export function spotsAsked({ spots, title }: SwimEntry, options: Options): readonly Spot[] {
  if (options.spot === undefined) return spots;
  const asked = String(options.spot);
  const found = spots.filter((spot) => spot.title.toLowerCase() === asked.toLowerCase());
  if (found.length > 0) return found;
  throw new UsageError(`${title} has no place "${asked}"; there are ${titlesOf(spots)}`);
}

const titlesOf = (spots: readonly Spot[]) => spots.map((spot) => spot.title).join(", ");

/** @throws UsageError where the water that is left is none to fish in */
export function waterAt(
  swim: SwimEntry,
  spot: Spot,
  asked: Parameters<typeof conditionsAt>[2],
  { kit }: Pick<Read, "kit">,
) {
  const conditions = conditionsAt(swim, spot, asked);
  if (conditions) return conditions;
  throw new UsageError(
    `--level leaves no water at ${spot.title}, which is ${kit.figures.depth(spot.fromBankMm)} out`,
  );
}

/** A rig as it is made up for a place of a swim, where one was asked for. */
export function rigAtSwim(
  rig: Rig,
  options: Options,
  read: Read,
): { readonly rig: Rig; readonly swim?: SwimEntry } {
  if (options.swim === undefined) {
    const stray = ["spot", "level"].find((name) => options[name] !== undefined);
    if (stray === undefined) return { rig };
    throw new UsageError(`--${stray} is of a swim; say which with --swim`);
  }
  const swim = swimNamed(String(options.swim), read);
  if (rig.water !== swim.water) {
    const is = { still: "still water", flowing: "running water" };
    throw new UsageError(`${rig.title} is for ${is[rig.water]}, and ${swim.title} is ${is[swim.water]}`);
  }
  const [spot, another] = spotsAsked(swim, options);
  if (!spot || another) {
    throw new UsageError(`${swim.title} has several places; say which with --spot: ${titlesOf(swim.spots)}`);
  }
  const levelMm = quantityAsked(options, "level", "length");
  const asked = { wind: "calm", learner: "next", ...(levelMm !== undefined && { levelMm }) } as const;
  const { depthMm, paceMs } = waterAt(swim, spot, asked, read);
  return { rig: { ...rig, depthsMm: [depthMm], ...(paceMs !== undefined && { pacesMs: [paceMs] }) }, swim };
}
