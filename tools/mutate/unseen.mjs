// Numbers of which 5 % more or less is no other figure, but another way to the same one: how near, from where on, in what
// steps or in how many goes at the most a search closes in, and what stands for rounding. They are laid out of a sample,
// and counted beside it. A test asks that each line is there, once, and has its reason.

const near = "how near a search closes in; far finer than what is told of its answer";
const goes = "so many goes at the most, of which a search needs a few";
const rounding = "what rounding may add; the figures that it parts are apart by many times as much";
const step =
  "how long or how sure a step is; tests/solve/convergence.slow.test.ts holds what comes out to 2 % of half the step";

const slope = "a slope by which Newton's rounds close in: what is balanced in the end has none of it";

/** @type {readonly { readonly path: string, readonly line: string, readonly why: string }[]} */
export const unseen = [
  {
    path: "src/core/sink/body-fall.ts",
    line: "while (bodyDragGS(drag, high, fluid) * high < weightUn) high *= 2;",
    why: "where a search ends; what it looks for lies before it",
  },
  {
    path: "src/core/sink/line-drag.ts",
    line: "const more = across2 > 0 ? (0.6 * cross) / across2 : 0;",
    why: slope,
  },
  { path: "src/core/sink/step.ts", line: "addDrag(tried, perSpeed, 0.9 * perSpeed);", why: slope },
  { path: "src/core/sink/step.ts", line: "const settledMmS = 5e-3;", why: near },
  { path: "src/core/sink/step.ts", line: "const worse = 1.25;", why: near },
  { path: "src/core/sink/fall.ts", line: "const firstStepS = 1e-3;", why: step },
  { path: "src/core/sink/fall.ts", line: "const shortestStepS = 1e-7;", why: step },
  { path: "src/core/sink/fall.ts", line: "const stepsMax = 50_000;", why: goes },
  {
    path: "src/core/sink/fall.ts",
    line: "const wanted = 0.9 * Math.sqrt(errorMm / ((stepS * changeMmS(points)) / 2 + 1e-12));",
    why: step,
  },
  { path: "src/core/sink/fall.ts", line: "stepS *= Math.min(1.5, Math.max(0.3, wanted));", why: step },
  { path: "src/core/sink/tension.ts", line: "const tooLongShare = 1e-9;", why: rounding },
  {
    path: "src/core/sink/tension.ts",
    line: "const drawn = dx * dx + dy * dy > (0.9 * link.lengthMm) ** 2;",
    why: "how a link begins a step; it is sorted anew within the step",
  },
  {
    path: "src/core/sink/sink-of-rig.ts",
    line: "straight: { leastMm: 11, perRootG: 90, mostMm: 27 },",
    why: step,
  },
  { path: "src/core/sink/sink-of-rig.ts", line: "const longestFallS = 600;", why: goes },
  {
    path: "src/core/flow/root.ts",
    line: "for (let i = 0; i < 100 && Math.abs(b - a) > within; i++) {",
    why: goes,
  },
  {
    path: "src/core/flow/root.ts",
    line: "const x = i % 4 === 3 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);",
    why: "where a search looks next; it closes in from any place between its ends",
  },
  { path: "src/core/flow/root.ts", line: "if (Math.abs(fx) < 1e-12) return x;", why: near },
  {
    path: "src/core/flow/line-balance.ts",
    line: "const stepMm = 100;",
    why: "how long a step of fourth order is; tests/core/flow/settle.test.ts holds the line to sums of its own",
  },
  {
    path: "src/core/flow/line-balance.ts",
    line: "const turnRad = 0.1;",
    why: "how long a step of fourth order is; tests/core/flow/settle.test.ts holds the line to sums of its own",
  },
  {
    path: "src/core/flow/line-balance.ts",
    line: 'if (end.kind === "depth" && state.depthMm <= end.depthMm + 1e-3) break;',
    why: near,
  },
  { path: "src/core/flow/free-pace.ts", line: "const paceWithinMmS = 0.05;", why: near },
  {
    path: "src/core/flow/free-pace.ts",
    line: "const seldomSlowerShare = 0.8;",
    why: "where a search begins; where it is not between, the whole range is searched",
  },
  {
    path: "src/core/flow/free-pace.ts",
    line: "const seldomChangedShare = 0.05;",
    why: "where a search begins; where it is not between, the whole range is searched",
  },
  { path: "src/core/flow/settle.ts", line: "const paceShareWithin = 1e-6;", why: near },
  { path: "src/core/flow/settle.ts", line: "const restWithin = 1e-6;", why: near },
  { path: "src/core/flow/settle.ts", line: "const most = 2 * balance.placesMm.length;", why: goes },
  { path: "src/core/flow/set-deeper.ts", line: "const lengthWithinMm = 0.5;", why: near },
  { path: "src/core/flow/set-deeper.ts", line: "const roundsMax = 8;", why: goes },
  { path: "src/core/flow/flow-guide.ts", line: "const foundWithinMm = 5;", why: near },
  { path: "src/core/float/cocking.ts", line: "while (fallsAtMm - standsAtMm > 1e-3) {", why: near },
  { path: "src/core/loading/loading.ts", line: "const pullToleranceG = 1e-9;", why: rounding },
  { path: "src/core/loading/best-division.ts", line: "const pullRoundingG = 1e-9;", why: rounding },
  { path: "src/core/patterns/supply.ts", line: "if (takenG > lineG + 1e-9) {", why: rounding },
  {
    path: "src/core/patterns/strung-out.ts",
    line: "if (!next || nextG > pullG + 1e-9) break;",
    why: rounding,
  },
  { path: "src/core/patterns/clearance.ts", line: "if (gapMm < leastMm - 1e-9) {", why: rounding },
  {
    path: "src/core/patterns/clearance.ts",
    line: "if (highest && highest.fromHookMm > highestMm(room) + 1e-9) {",
    why: rounding,
  },
  {
    path: "src/core/tackle/kit.ts",
    line: "const count = Math.ceil(need.count * learners * (1 + spareShare) - 1e-9);",
    why: rounding,
  },
  {
    path: "src/core/tackle/kit.ts",
    line: "Math.ceil(Math.max(0, missing / perPacket - 1e-9));",
    why: rounding,
  },
  { path: "src/core/feed/feed.ts", line: "const portions = Math.ceil(forS / everyS - 1e-9);", why: rounding },
  {
    path: "src/core/session/shelf.ts",
    line: "const wholePacks = (stock: number, each: number) => Math.floor(stock / each + 1e-9);",
    why: rounding,
  },
  {
    path: "src/core/sink/sink-of-rig.ts",
    line: "const stepErrorShare: Readonly<Record<Landing, number>> = { straight: 2e-4, heap: 0.7e-4 };",
    why: step,
  },
  {
    path: "src/core/sink/body-fall.ts",
    line: "while (time < 12 * runUpS) {",
    why: "from where on a fall is taken as steady; it is so long before",
  },
  {
    path: "src/core/flow/settle.ts",
    line: "const heightMm = ({ rig }: Stream, paceShare: Share) => rig.depthMm * power(paceShare, 1 / profileExponent);",
    why: "by what a search is numbered; each height has its number all the same",
  },
  { path: "src/core/depth/plumbing.ts", line: "const triesMax = 100;", why: goes },
  {
    path: "src/core/water/drag.ts",
    line: "Float64Array.from({ length: Math.sqrt(reMax) / step + 2 }, (_, i) => {",
    why: "how long a table is; it ends behind what is asked of it",
  },
  {
    path: "src/core/sink/line-drag.ts",
    line: "link.axialDragGMmS = axialDragGMmS(link.diameterMm || 1, speed, fluid);",
    why: "stands in for the width of the float's link, of which no drag is taken",
  },
];

/** Whether 5 % of a number are among them: a mutant of its line, in its file. */
export function isUnseen({ kind, path, line }, textOf) {
  if (kind !== "constant") return false;
  const text = textOf(path).split("\n")[line - 1].trim();
  return unseen.some((one) => one.path === path && one.line === text);
}
