import { mmPerFoot } from "../../src/core/units.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../src/model/solved.ts";

/** A figure that the trade has a usual range for. */
interface Band {
  readonly of: string;
  /** Where the range comes from; none of them has a published source. */
  readonly basis:
    | "common practice, no source"
    | "from memory"
    | "common practice, no source; 80–90 % from memory"
    | "this guide's own rule";
  /** Usual ranges, both ends in them. */
  readonly ranges: readonly (readonly [from: number, to: number])[];
  /** The figure for a rig at a depth; undefined for rigs that the band is not about. */
  readonly figure: (rig: SolvedRig["rig"], depth: SolvedDepth) => number | undefined;
  /** Rigs outside the ranges on purpose, each with the words of its notes that say why. */
  readonly outside: Readonly<Record<string, string>>;
}

const telltale = ({ lineShot }: SolvedDepth): SolvedShot | undefined =>
  lineShot.find(({ role }) => role === "telltale");

const ofKind = (kind: string, figure: Band["figure"]): Band["figure"] => {
  return (rig, depth) => (rig.float.kind === kind ? figure(rig, depth) : undefined);
};

const inStillWater = (pattern: string, figure: Band["figure"]): Band["figure"] => {
  return (rig, depth) =>
    rig.water === "still" && rig.pattern.kind === pattern ? figure(rig, depth) : undefined;
};

const no4G = 0.2;
const bbG = 0.4;
const ssgG = 1.6;

/** Hook sizes that go with a bait; 16 is the beginner's for two maggots, and 18 is usual. */
const hooks = (bait: string, basis: Band["basis"], range: readonly [number, number]): Band => ({
  of: `size of hook for ${bait}`,
  basis,
  ranges: [range],
  figure: (rig) => (rig.bait.id === bait ? rig.hook.size : undefined),
  outside: {},
});

export const bands: readonly Band[] = [
  {
    // Half to three quarters are common practice, eight or nine tenths from memory; the course teaches both ends.
    of: "share of the load that locks a waggler",
    basis: "common practice, no source; 80–90 % from memory",
    ranges: [[0.5, 0.9]],
    figure: (rig, { lockShare }) => (rig.float.heldByShot ? lockShare : undefined),
    outside: { "pellet-waggler-shallow": "Every shot is at the float" },
  },
  {
    of: "No 4 that a stick takes for each foot of depth",
    basis: "common practice, no source",
    ranges: [[1, 2]],
    figure: ofKind("stick", (rig, depth) => rig.float.capacityG / no4G / (depth.depthMm / mmPerFoot)),
    outside: {
      "stick-held-back": "keep that depth for the slower of its paces",
      "stick-shirt-button": "slow water needs less",
      "stick-tapered": "slow water needs less",
    },
  },
  {
    of: "No 4 that a stick takes",
    basis: "common practice, no source",
    ranges: [[3, 8]],
    figure: ofKind("stick", (rig) => Math.round(rig.float.capacityG / no4G)),
    outside: {},
  },
  {
    of: "bulk of an Avon above the hook [mm]",
    basis: "common practice, no source",
    ranges: [[600, 900]],
    figure: ofKind("Avon", (_, { lineShot }) => lineShot.find(({ role }) => role === "bulk")?.fromHookMm),
    outside: {},
  },
  {
    of: "depth for a balsa with spread shot [mm]",
    basis: "common practice, no source",
    ranges: [[0, 8 * mmPerFoot]],
    figure: ofKind("balsa", (_, { depthMm }) => depthMm),
    outside: {},
  },
  {
    of: "telltale above the hook, on the hook length [mm]",
    basis: "common practice, no source",
    ranges: [
      [40, 50],
      [70, 100],
    ],
    figure: (rig, depth) => {
      const atMm = telltale(depth)?.fromHookMm;
      return atMm !== undefined && atMm < rig.hookLengthMm ? atMm : undefined;
    },
    outside: { "laid-on-in-wind": "it grips the bed like a tiny anchor" },
  },
  {
    of: "telltale above the hook length's loop [mm]",
    basis: "this guide's own rule",
    ranges: [[10, 30]],
    figure: (rig, depth) => {
      const aboveLoopMm = (telltale(depth)?.fromHookMm ?? 0) - rig.hookLengthMm;
      return aboveLoopMm >= 0 ? aboveLoopMm : undefined;
    },
    outside: {},
  },
  {
    of: "anchor of a lift rig above the hook [mm]",
    basis: "from memory",
    ranges: [[25, 50]],
    figure: (_, { lineShot }) => lineShot.find(({ role }) => role === "anchor")?.fromHookMm,
    outside: {},
  },
  {
    of: "hook length of a waggler [mm]",
    basis: "from memory",
    ranges: [[300, 460]],
    figure: (rig) => (rig.float.heldByShot ? rig.hookLengthMm : undefined),
    outside: {},
  },
  {
    of: "hook length of a stick [mm]",
    basis: "from memory",
    ranges: [[300, 610]],
    figure: ofKind("stick", (rig) => rig.hookLengthMm),
    outside: {},
  },
  {
    of: "BB that an Avon takes",
    basis: "common practice, no source",
    ranges: [[4, 10]],
    figure: ofKind("Avon", (rig) => rig.float.capacityG / bbG),
    outside: {},
  },
  {
    of: "No 8 below the bulk of an Avon",
    basis: "common practice, no source",
    ranges: [[2, 4]],
    figure: ofKind("Avon", (_, { lineShot }) => lineShot.filter(({ size }) => size === "No 8").length),
    outside: {},
  },
  {
    of: "SSG that a sliding float takes",
    basis: "common practice, no source",
    ranges: [[1.5, 4]],
    figure: (rig) => (rig.float.attachment === "sliding" ? rig.float.capacityG / ssgG : undefined),
    outside: {},
  },
  {
    of: "depth beyond the rod that a float slides for [mm]",
    basis: "from memory",
    ranges: [[0, 4000]],
    figure: (rig, { depthMm }) =>
      rig.float.attachment === "sliding" ? depthMm - rig.rodLengthMm : undefined,
    outside: {},
  },
  {
    of: "load of a waggler, 2 BB to 3 SSG [g]",
    basis: "common practice, no source",
    ranges: [[2 * bbG, 3 * ssgG]],
    figure: (rig) => (rig.float.heldByShot ? rig.float.capacityG : undefined),
    outside: {},
  },
  {
    of: "tip that shows with the load right [mm]",
    basis: "common practice, no source",
    ranges: [[10, 20]],
    figure: (rig) => rig.float.tipShowingMm,
    outside: { "laid-on-in-wind": "the tip stands higher" },
  },
  {
    of: "seconds between feeds, strung out in still water",
    basis: "common practice, no source",
    ranges: [[30, 60]],
    figure: inStillWater("strung out", ({ feed }) => feed.everyS),
    outside: { margin: "a dozen grains every five minutes" },
  },
  {
    of: "seconds between feeds, with a bulk in still water",
    basis: "common practice, no source",
    ranges: [[1800, 3600]],
    figure: inStillWater("bulk", ({ feed }) => feed.everyS),
    outside: { "canal-light": "more often than the handful or two an hour" },
  },
  {
    // Slim sticks are for slow water; chubbers, large Avons and balsas for more pace.
    of: "fastest pace that a stick is for [m/s]",
    basis: "common practice, no source",
    ranges: [[0.2, 0.5]],
    figure: ofKind("stick", (rig) => Math.max(...rig.pacesMs)),
    outside: {},
  },
  hooks("double-maggot", "common practice, no source", [16, 18]),
  hooks("maggot", "from memory", [20, 22]),
  hooks("caster", "from memory", [18, 20]),
  hooks("sweetcorn", "from memory", [12, 16]),
  hooks("bread-flake", "from memory", [8, 12]),
  hooks("worm-piece", "from memory", [8, 14]),
];
