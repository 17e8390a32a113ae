import type { Kit, RigEntry } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import { mostOfEachSize, type SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import type { ContentCheck } from "./check.ts";

/** What a rig takes that is not in the kit which learners bring for it; and first rigs that no kit of the guide's own is for. */
export const kitForRig: ContentCheck = ({ library: { kits, rigs, lent }, rigs: solved, figures }) => [
  ...kits.flatMap((kit) =>
    rigs
      .filter(({ id }) => kit.rigIds.includes(id))
      .flatMap((entry) => [
        ...outsideKit(entry, kit, figures),
        ...shotOutsideKit(
          entry,
          kit,
          solved.find(({ rig }) => rig.id === entry.id),
        ),
      ]),
  ),
  ...(kits.every(({ id }) => lent.has(`kits/${id}`)) ? [] : rigs)
    .filter(({ id, level }) => level === "first" && !kits.some(({ rigIds }) => rigIds.includes(id)))
    .map(({ title, placeOf }) =>
      message("rig-without-kit", placeOf(["title"]), { title, kits: kits.map(({ id }) => id) }),
    ),
];

function outsideKit({ rig, placeOf }: RigEntry, kit: Kit, figures: Figures): readonly Message[] {
  const things = [
    {
      what: "float",
      path: ["float"],
      found: rig.float.title,
      allowed: kit.floats.map(({ title }) => title),
    },
    {
      what: "main line",
      path: ["main-line", "strength"],
      found: figures.strength(rig.mainLine.strengthG),
      allowed: [figures.strength(kit.mainLineG)],
    },
    {
      what: "hook length",
      path: ["hook-length", "strength"],
      found: figures.strength(rig.hookLine.strengthG),
      allowed: [figures.strength(kit.hookLineG)],
    },
    {
      what: "hook",
      path: ["hook"],
      found: String(rig.hook.size),
      allowed: kit.hooks.map(({ size }) => String(size)),
    },
    { what: "bait", path: ["bait"], found: rig.bait.title, allowed: kit.baits.map(({ bait }) => bait.title) },
  ] as const;
  return things
    .filter(({ found, allowed }) => !(allowed as readonly string[]).includes(found))
    .map(({ what, path, found, allowed }) =>
      message("not-in-kit", placeOf(path), { what, found, kit: kit.title, allowed: allowed.join(", ") }),
    );
}

/** Sizes of which a rig needs more, at any of its depths, than the kit's tub holds. */
function shotOutsideKit(
  { placeOf }: RigEntry,
  { title, tub }: Kit,
  solved: SolvedRig | undefined,
): readonly Message[] {
  const held = (size: string) =>
    tub.tub.filter((one) => one.size === size).reduce((sum, { count }) => sum + count, 0);
  const most = solved ? mostOfEachSize(solved) : [];
  const allowed = tub.tub
    .map(({ size, count }) => (count === Infinity ? size : `${count} × ${size}`))
    .join(", ");
  return [...most]
    .filter(([size, count]) => count > held(size))
    .map(([size, count]) =>
      message("not-in-kit", placeOf(["loading"]), {
        what: "shot",
        found: `${count} × ${size}`,
        kit: title,
        allowed,
      }),
    );
}
