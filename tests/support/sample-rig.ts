import { keptForPlumbing } from "../../src/core/depth/plumbing.ts";
import { feedForSession } from "../../src/core/feed/feed.ts";
import type { PatternSpec, PlacedShot } from "../../src/core/patterns/pattern.ts";
import { lineChain } from "../../src/core/tackle/knots.ts";
import { ballDiameterMm, type Metal, pullG } from "../../src/core/tackle/shot.ts";
import type { Rig } from "../../src/model/rig.ts";
import type { GuideStep, SolvedDepth, SolvedRig, SolvedShot } from "../../src/model/solved.ts";
import { guideRows } from "../../src/solve/guide-rows.ts";
import { withWater } from "../../src/solve/in-water.ts";
import { sampleRubberFloat, sampleWagglerFloat } from "./sample-float.ts";

/** Round figures of the trade's scale [g]; sizes below No 8 are tin here as they may not be lead everywhere. */
const sizeG: Readonly<Record<string, number>> = {
  SSG: 1.6,
  AAA: 0.8,
  BB: 0.4,
  "No 4": 0.2,
  "No 6": 0.1,
  "No 8": 0.06,
  "No 10": 0.04,
};
const conditions = { tempC: 15, salinity: 0 };

const metalOf = (size: string): Metal => (sizeG[size]! >= 0.06 ? "tin" : "lead");

/** A shot as the solve stage hands it on. */
export function sampleShot(size: string, role: PlacedShot["role"], fromHookMm: number) {
  const massG = sizeG[size]!;
  const metal = metalOf(size);
  return {
    size,
    massG,
    metal,
    role,
    fromHookMm,
    pullG: pullG(massG, metal, conditions),
    diameterMm: ballDiameterMm(massG, metal),
  };
}

export const waggler = sampleWagglerFloat({
  id: "straight-waggler",
  title: "Straight waggler 2 AAA",
  profile: [
    { atMm: 0, diameterMm: 5 },
    { atMm: 150, diameterMm: 5 },
    { atMm: 190, diameterMm: 4 },
    { atMm: 200, diameterMm: 4 },
  ],
  capacityG: 1.6,
  tipShowingMm: 15,
});

export const stick = sampleRubberFloat("stick", {
  id: "stick",
  title: "Stick float 5 No 4",
  profile: [
    { atMm: 0, diameterMm: 2 },
    { atMm: 60, diameterMm: 3 },
    { atMm: 110, diameterMm: 7.5 },
    { atMm: 130, diameterMm: 7 },
    { atMm: 150, diameterMm: 3 },
  ],
  capacityG: 1,
  tipShowingMm: 8,
});

export const avon = sampleRubberFloat("avon", {
  id: "avon",
  title: "Avon float 4 BB",
  profile: [
    { atMm: 0, diameterMm: 2 },
    { atMm: 70, diameterMm: 2.5 },
    { atMm: 85, diameterMm: 10 },
    { atMm: 105, diameterMm: 12 },
    { atMm: 120, diameterMm: 7 },
    { atMm: 140, diameterMm: 5 },
    { atMm: 170, diameterMm: 5 },
  ],
  capacityG: 1.6,
  tipShowingMm: 20,
});

const tub = Object.entries(sizeG).map(([size, massG]) => ({
  size,
  massG,
  metal: metalOf(size),
  count: Number.POSITIVE_INFINITY,
}));

function sampleRig(
  own: Pick<Rig, "id" | "title" | "purpose" | "water" | "float" | "setting" | "overdepthMm" | "pacesMs"> & {
    pattern: PatternSpec;
    depthsMm: readonly number[];
    hookLengthMm: number;
  },
): Rig {
  const basis = "common practice" as const;
  const loop = { id: "loop", title: "Overhand loop", strengthShareLow: 0.6, strengthShareHigh: 0.8, basis };
  return {
    mainLine: { strengthG: 1814, diameterMm: 0.18 },
    hookLine: { strengthG: 1361, diameterMm: 0.14 },
    hook: { size: 16, massG: 0.03, basis },
    bait: { id: "maggot", title: "Maggot", massG: 0.04, densityKgM3: 1020, basis },
    feed: { what: "maggots", portionMl: 10, everyS: 60, forS: 4 * 3600 },
    tub,
    scaleId: "trade",
    scaleTitle: "Round figures of the trade",
    scaleSizes: Object.entries(sizeG).map(([name, massG]) => ({ name, massG })),
    conditions,
    outfit: "rod and reel",
    rodLengthMm: 3600,
    leadRule: { place: "Testland", allowedUpToG: 0.06, source: "made up", checked: "2026-11-20" },
    plummets: [],
    lockShareMin: 0,
    knots: [
      { where: "hook length loop", knot: loop },
      { where: "main line loop", knot: loop },
    ],
    ...own,
  };
}

function sampleDepth(
  rig: Rig,
  depthMm: number,
  draughtMm: number,
  shot: readonly SolvedShot[],
  tipShowingMm: number,
): SolvedDepth {
  const pull = shot.reduce((sum, s) => sum + s.pullG, 0);
  const lockShot = shot.filter((s) => s.role === "lock");
  const lowest = shot[0]!;
  const lock = {
    below: lockShot.filter((_, at) => at % 2 === 0),
    above: lockShot.filter((_, at) => at % 2 === 1),
  };
  const depthGuide: readonly GuideStep[] = [
    {
      overdepthMm: 0,
      floatToHookMm: depthMm - draughtMm,
      hookOffBedMm: 0,
      state: "rests on the bed",
      shotOnBed: [],
      tipShowingMm,
      advice: "start-here",
      moveMm: 0,
    },
    {
      overdepthMm: lowest.fromHookMm + 20,
      floatToHookMm: depthMm - draughtMm + lowest.fromHookMm + 20,
      hookOffBedMm: 0,
      state: rig.water === "still" ? "rests on the bed" : "drags under",
      shotOnBed: [lowest.size],
      tipShowingMm: rig.water === "still" ? tipShowingMm + 8 : null,
      advice: "go-shallower",
      moveMm: -lowest.fromHookMm - 20,
    },
  ];
  return {
    depthMm,
    overdepthMm: rig.overdepthMm,
    draughtMm,
    floatToHookMm: depthMm + rig.overdepthMm - draughtMm,
    lineShot: shot.filter((s) => s.role !== "lock"),
    lockShot,
    lock,
    tipSetBy: "shot",
    massG: shot.reduce((sum, s) => sum + s.massG, 0),
    pullG: pull,
    sparePullG: 0.02,
    tipShowingMm,
    tipAsSetMm: tipShowingMm,
    tipUncertaintyMm: 4,
    lockShare: lockShot.reduce((sum, s) => sum + s.pullG, 0) / pull,
    depthGuide,
    guideRows: guideRows(depthGuide),
    ...(rig.pacesMs[0] !== undefined && { guidedFlow: { paceMs: rig.pacesMs[0], heldBackShare: 0.1 } }),
    shotEffects: [],
    plumbing: { steps: [], kept: keptForPlumbing(lock), tooDeep: "lies flat", plummetNeededG: 0 },
    tipStates: [
      { load: "too little", changeG: -0.1, tipShowingMm: tipShowingMm + 25 },
      { load: "right", changeG: 0, tipShowingMm },
      { load: "too much", changeG: 0.1, tipShowingMm: 0 },
    ],
    findings: [],
  };
}

function solved(rig: Rig, floatMassG: number, floatPullG: number, depths: readonly SolvedDepth[]): SolvedRig {
  const floatLengthMm = rig.float.profile.at(-1)!.atMm;
  const chain = lineChain(rig);
  const feed = feedForSession(rig.feed);
  if (!chain.ok || !feed.ok) throw new Error("the sample rig has no line or no feed");
  const dry: SolvedRig = {
    rig,
    floatPullG,
    floatLengthMm,
    floatMassG,
    hookAndBaitPullG: 0.03,
    lineChain: chain.value,
    sessionFeed: feed.value,
    depths,
    findings: [],
  };
  const wet = withWater(dry);
  return wet.ok ? wet.value : dry;
}

/** A waggler locked by shot, the rest strung out; dead depth, one shallow and one deep. */
export const sampleWaggler: SolvedRig = (() => {
  const rig = sampleRig({
    id: "waggler-strung-out",
    title: "Waggler strung out",
    purpose: "Slow fall through still water",
    water: "still",
    float: waggler,
    setting: "dead depth",
    overdepthMm: 0,
    pacesMs: [],
    depthsMm: [1500, 3000],
    hookLengthMm: 300,
    pattern: { kind: "strung out", size: "No 8", gapMm: 250, telltale: { size: "No 10" } },
  });
  const lock = (floatToHook: number) =>
    ["BB", "BB", "No 4", "No 4"].map((size) => sampleShot(size, "lock", floatToHook));
  const strung = (count: number) =>
    Array.from({ length: count }, (_, i) => sampleShot("No 8", "spread", 560 + 250 * i));
  const telltale = sampleShot("No 10", "telltale", 310);
  return solved(rig, 2.1, 1.5, [
    sampleDepth(rig, 1500, 185, [telltale, ...strung(2), ...lock(1315)], 15),
    sampleDepth(rig, 3000, 185, [telltale, ...strung(7), ...lock(2815)], 15),
  ]);
})();

/** A stick float held by rubbers, the whole load in equal steps, run through slightly over depth. */
export const sampleStick: SolvedRig = (() => {
  const rig = sampleRig({
    id: "stick-shirt-button",
    title: "Stick float, shirt button",
    purpose: "Steady water at close range",
    water: "flowing",
    float: stick,
    setting: "over depth",
    overdepthMm: 150,
    pacesMs: [0.4],
    depthsMm: [1200, 1800],
    hookLengthMm: 350,
    pattern: { kind: "shirt button", sizes: ["No 4"], telltale: { size: "No 8" } },
  });
  const buttons = (from: number, gap: number, count: number) =>
    Array.from({ length: count }, (_, i) => sampleShot("No 4", "spread", from + gap * i));
  return solved(rig, 1.4, 0.93, [
    sampleDepth(rig, 1200, 142, [sampleShot("No 8", "telltale", 360), ...buttons(560, 150, 4)], 8),
    sampleDepth(rig, 1800, 142, [sampleShot("No 8", "telltale", 360), ...buttons(660, 250, 4)], 8),
  ]);
})();

/** An Avon with its load in a bulk and droppers below, for deeper flowing water. */
export const sampleAvon: SolvedRig = (() => {
  const rig = sampleRig({
    id: "avon-bulk",
    title: "Avon, bulk and droppers",
    purpose: "Holds a line in deeper, pushing water",
    water: "flowing",
    float: avon,
    setting: "off bottom",
    overdepthMm: -50,
    pacesMs: [0.6],
    depthsMm: [2500],
    hookLengthMm: 300,
    pattern: {
      kind: "bulk",
      sizes: ["BB"],
      share: 0.8,
      fromHookMm: 750,
      droppers: ["No 8"],
      telltale: { size: "No 8" },
    },
  });
  const bulk = Array.from({ length: 4 }, (_, i) => sampleShot("BB", "bulk", 750 + 5 * i));
  const shot = [sampleShot("No 8", "telltale", 310), sampleShot("No 8", "dropper", 450), ...bulk];
  return solved(rig, 2.4, 1.5, [sampleDepth(rig, 2500, 150, shot, 20)]);
})();

/** The waggler as a sliding float with a stop knot. */
export const sampleSlider: SolvedRig = {
  ...sampleWaggler,
  rig: {
    ...sampleWaggler.rig,
    title: "Slider",
    float: { ...sampleWaggler.rig.float, attachment: "sliding", heldByShot: false },
  },
};

export const sampleRigs = [sampleWaggler, sampleStick, sampleAvon];
