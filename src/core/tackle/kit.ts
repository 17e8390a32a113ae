import { type Answer, answer, noAnswer } from "../finding.ts";
import type { Share } from "../units.ts";

const kitKinds = ["float", "shot", "hook", "hook length", "line"] as const;
type KitKind = (typeof kitKinds)[number];

/** One thing that a rig uses up; `count` is in pieces, for line in metres. */
export interface KitNeed {
  readonly kind: KitKind;
  /** What to ask for in the shop, such as `No 8, lead` or `hook 18`. */
  readonly name: string;
  readonly count: number;
}

/** One line of the shopping list; `count` is what all learners need, spares included. */
export type KitLine<Need extends KitNeed = KitNeed> = Need & {
  /** What is there already; it may be more than is needed. */
  readonly inStock: number;
  readonly packets: number;
  readonly perPacket: number;
  readonly bought: number;
};

/** Whether it is told in metres, not in pieces. */
export const isLine = ({ kind }: Pick<KitNeed, "kind">): boolean => kind === "line" || kind === "hook length";

/** What makes two needs one line of the list. */
export const kitKey = ({ kind, name }: KitNeed): string => `${kind}|${name}`;

/** Whether it is sold in packets or on spools; what is not is asked for by its amount. */
export const isInPackets = ({ perPacket }: Pick<KitLine, "perPacket">): boolean => perPacket !== 1;

/** Whole packets for what is missing; a share of a piece too small to count keeps rounding from buying one more. */
export const packetsFor = (missing: number, perPacket: number): number =>
  Math.ceil(Math.max(0, missing / perPacket - 1e-9));

/**
 * Shopping list for a session: every learner ties every rig, with spares, rounded up to whole packets. What is there
 * already is taken off once, whatever number of rigs uses it.
 *
 * @param learners how many [1 and more]
 * @param rigs what each rig takes; a thing that several rigs use is added up
 * @param spareShare extra on top, 0.5 for half as much again
 * @param perPacket how a thing is sold; 1 where it comes singly
 * @param stockOf what is there already
 */
export function kitFor<Need extends KitNeed>(
  learners: number,
  rigs: readonly (readonly Need[])[],
  spareShare: Share,
  perPacket: (need: Need) => number,
  stockOf: (need: Need) => number = () => 0,
): Answer<readonly KitLine<Need>[]> {
  if (!(Number.isInteger(learners) && learners >= 1)) return noAnswer("kit-learners");
  if (!(spareShare >= 0 && spareShare < Infinity)) return noAnswer("kit-spares");
  const sums = new Map<string, Need>();
  for (const need of rigs.flat()) {
    if (!(need.count >= 0 && need.count < Infinity)) {
      return noAnswer("kit-count", { name: need.name });
    }
    const key = kitKey(need);
    sums.set(key, { ...need, count: (sums.get(key)?.count ?? 0) + need.count });
  }
  const lines: KitLine<Need>[] = [];
  for (const need of sums.values()) {
    const size = perPacket(need);
    if (!(size > 0 && size < Infinity)) return noAnswer("kit-packet", { name: need.name });
    // A share of a piece too small to count keeps rounding from buying one more.
    const count = Math.ceil(need.count * learners * (1 + spareShare) - 1e-9);
    const inStock = stockOf(need);
    const packets = packetsFor(count - inStock, size);
    lines.push({ ...need, count, inStock, packets, perPacket: size, bought: packets * size });
  }
  return answer(lines.sort((a, b) => kitKinds.indexOf(a.kind) - kitKinds.indexOf(b.kind)));
}
