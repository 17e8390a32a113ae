import { mmPerFoot } from "../../src/core/units.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../src/solve/solved.ts";

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

const telltale = ({ shot }: SolvedDepth): SolvedShot | undefined =>
  shot.find(({ role }) => role === "telltale");

const ofKind = (kind: string, figure: Band["figure"]): Band["figure"] => {
  return (rig, depth) => (rig.float.kind === kind ? figure(rig, depth) : undefined);
};

const no4G = 0.2;

export const bands: readonly Band[] = [
  {
    of: "share of the load that locks a waggler",
    basis: "common practice, no source; 80–90 % from memory",
    ranges: [
      [0.5, 0.75],
      [0.8, 0.9],
    ],
    figure: (rig, { lockShare }) => (rig.float.heldByShot ? lockShare : undefined),
    outside: {
      "insert-waggler-close-in": "more than the usual three quarters of the load is at the float",
      "loaded-waggler-at-range": "often more than the half to three quarters that is common practice",
      "pellet-waggler-shallow": "Every shot is at the float",
    },
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
    figure: ofKind("Avon", (_, { shot }) => shot.find(({ role }) => role === "bulk")?.fromHookMm),
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
    figure: (_, { shot }) => shot.find(({ role }) => role === "anchor")?.fromHookMm,
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
];
