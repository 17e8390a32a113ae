import { topMm } from "../../core/float/profile.ts";
import { first } from "../../core/lists.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { arrow, circle, type Point, point, polygon, polyline, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { leastShotRadiusMm } from "../parts/shot.ts";

import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { holdOf, type MakeUpStep, makeUpCaption, makeUpSteps } from "./make-up.ts";
import { sceneTextMm } from "./scene-text.ts";

/** Places along the line as shares of the width, rod left and hook right. */
const at = { ring: 0.1, stopKnot: 0.24, bead: 0.3, float: 0.44, end: 0.6, loop: 0.8, hook: 0.93 };

const floatWidthMm = 2.6;
const rubberGapMm = 1.6;
const lockAsideMm = 2.4;
const hookMm = 3.2;
const loopJoinMm = 4.5;
const plummetMm = 5;
const pointerMm = 4;
/** Below the line: hook and plummet. */
const belowMm = 8;

/** Marks drawn to a size that shows; their own sizes are far apart. */
const shotScale = 0.25;
const mostShotRadiusMm = 1.4;
/** On narrower pictures shot are drawn smaller. */
const fullWidthMm = 90;

interface Bench {
  readonly solved: SolvedRig;
  readonly box: Box;
  readonly lineMm: number;
  readonly floatMm: number;
}

/** The order to make up a rig: one picture a step, each with everything that is on the line by then. */
export function drawMakeUp(solved: SolvedRig, box: Box, kit: DrawingKit): Drawing[] {
  const steps = makeUpSteps(solved);
  return steps.map((step, index) => {
    const done = steps.slice(0, index + 1);
    const textMm = sceneTextMm(box);
    const lineMm = box.heightMm - belowMm;
    const bench = { solved, box, lineMm, floatMm: Math.min(14, lineMm - textMm - pointerMm - 2.5) };
    const part = kit.words(`drawing.scenes.make-up.part.${step}`);
    return {
      ...box,
      title: kit.words("drawing.scenes.make-up.title", {
        rig: solved.rig.title,
        step: index + 1,
        steps: steps.length,
        part,
      }),
      description: makeUpCaption(solved, step, kit),
      items: [
        ...rodAndLine(done, bench),
        ...done.flatMap((one) => piece(one, done, bench)),
        ...pointer(step, part, textMm, bench, kit),
      ],
    };
  });
}

const across = ({ box }: Bench, share: number) => share * box.widthMm;

function rodAndLine(done: readonly MakeUpStep[], bench: Bench): Item[] {
  const { lineMm } = bench;
  const ring = across(bench, at.ring);
  const end = across(bench, done.includes("loop") ? at.loop : at.end);
  const rod = polygon(
    [
      point(0, lineMm - 3.4),
      point(ring + 1, lineMm - 2.2),
      point(ring + 1, lineMm - 1.8),
      point(0, lineMm - 1.8),
    ],
    "ink",
  );
  return [
    polyline([point(0, lineMm), point(end, lineMm)], strandStrokes["main line"]),
    rod,
    circle(point(ring, lineMm - 0.6), 1.2, { stroke: thin }),
  ];
}

function piece(step: MakeUpStep, done: readonly MakeUpStep[], bench: Bench): readonly Item[] {
  const { solved, lineMm } = bench;
  const x = (share: number) => across(bench, share);
  const line = (share: number) => point(x(share), lineMm);
  switch (step) {
    case "rings":
      return [];
    case "stop-knot":
      return parts.stopKnot.draw({ at: line(at.stopKnot), turnedDegrees: 0 });
    case "bead":
      return [circle(line(at.bead), 1, { fill: "paper", stroke: thin })];
    case "rubbers":
      return done.includes("float") ? [] : rubbers(bench);
    case "float":
      return holdOf(solved.rig) === "rubbers"
        ? [...lyingFloat(bench), ...rubbers(bench)]
        : standingFloat(bench);
    case "loop":
      return done.includes("hook-length") ? [] : endLoop(line(at.loop));
    case "hook-length":
      return hookLength(bench);
    case "hold":
      return done.includes("lock") ? [] : besideTheEye(0, bench);
    case "lock":
      return besideTheEye(
        Math.max(...first(solved.depths).lockShot.map(({ diameterMm }) => diameterMm)),
        bench,
      );
    case "plummet":
      return done.at(-1) !== "plummet"
        ? []
        : parts.plummet.draw({
            at: point(x(at.hook) + hookMm / 2, lineMm + plummetMm + 1),
            heightMm: plummetMm,
          });
    case "shot":
      return first(solved.depths).lineShot.flatMap((shot) =>
        shotAt(point(shotAcross(shot.fromHookMm, bench), lineMm), shot.diameterMm, bench),
      );
  }
}

/** A shot on either side of the float's eye. */
function besideTheEye(diameterMm: number, bench: Bench): readonly Item[] {
  return [-1, 1].flatMap((side) =>
    shotAt(point(across(bench, at.float) + side * lockAsideMm, bench.lineMm), diameterMm, bench),
  );
}

function shotAt(place: Point, diameterMm: number, { box }: Bench): readonly Item[] {
  const grow = Math.min(1, box.widthMm / fullWidthMm);
  const radiusMm = Math.max(leastShotRadiusMm, grow * Math.min(mostShotRadiusMm, diameterMm * shotScale));
  return parts.shot.draw({ at: place, radiusMm });
}

/** Hook length and line above it each have a scale of their own. */
function shotAcross(fromHookMm: number, bench: Bench): number {
  const { rig, depths } = bench.solved;
  const [hook, loop, float] = [at.hook, at.loop, at.float].map((share) => across(bench, share)) as [
    number,
    number,
    number,
  ];
  if (fromHookMm < rig.hookLengthMm) return hook - (hook - loop) * (fromHookMm / rig.hookLengthMm);
  const share = (fromHookMm - rig.hookLengthMm) / (first(depths).floatToHookMm - rig.hookLengthMm);
  const lying = holdOf(rig) === "rubbers" ? bench.floatMm / 2 : 0;
  const top = float + lying + lockAsideMm + 2 * mostShotRadiusMm;
  const lowest = loop - loopJoinMm / 2 - mostShotRadiusMm;
  return lowest - (lowest - top) * share;
}

function floatMarks({ solved, floatMm }: Bench, foot: Point, eye: boolean): readonly Item[] {
  const { float } = solved.rig;
  const top = topMm(float.profile);
  const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
  return parts.floatBody.draw({
    profile: float.profile,
    tipMm: Math.max(float.tipShowingMm, top * 0.12),
    loadMm: 0,
    eye,
    at: foot,
    lengthScale: floatMm / top,
    widthScale: floatWidthMm / widest,
  });
}

/** On the line by its lower eye. */
function standingFloat(bench: Bench): readonly Item[] {
  return floatMarks(bench, point(across(bench, at.float), bench.lineMm - floatEyeRadiusMm), true);
}

/** Along the line, tip towards the rod. */
function lyingFloat(bench: Bench): Item[] {
  const foot = point(across(bench, at.float) + bench.floatMm / 2, bench.lineMm);
  return rotated(floatMarks(bench, foot, false), -90, foot);
}

function rubbers({ floatMm, ...bench }: Bench): Item[] {
  const middle = across({ floatMm, ...bench }, at.float);
  return [-0.5 * floatMm + 3, 0.5 * floatMm - rubberGapMm / 2].flatMap((aside) => {
    const centre = point(middle + aside, bench.lineMm);
    return rotated(parts.rubber.draw({ at: centre, widthMm: 3.2 }), 90, centre);
  });
}

/** The loop in the end of the main line, with its knot. */
function endLoop({ xMm, yMm }: Point): Item[] {
  const [left, right] = [xMm, xMm + 6];
  return [
    {
      kind: "path",
      steps: [
        ["M", left, yMm],
        ["C", left + 2, yMm - 2.6, right, yMm - 2.2, right, yMm],
        ["C", right, yMm + 2.2, left + 2, yMm + 2.6, left, yMm],
      ],
      stroke: strandStrokes["main line"],
    },
    polyline([point(left - 0.8, yMm), point(left + 0.8, yMm)], { ink: "ink", widthMm: 1.6 }),
  ];
}

function hookLength(bench: Bench): Item[] {
  const [join, eye] = [
    point(across(bench, at.loop), bench.lineMm),
    point(across(bench, at.hook), bench.lineMm),
  ];
  const upright = parts.hook.draw({ bend: point(eye.xMm, eye.yMm + hookMm), heightMm: hookMm });
  return [
    polyline([join, eye], strandStrokes["hook length"]),
    ...rotated(parts.loopJoin.draw({ at: join, heightMm: loopJoinMm }), 90, join),
    ...rotated(upright, -90, eye),
  ];
}

/** Names what the step adds, with an arrow to it: down from above, or up to the shot that the float stands over. */
function pointer(
  step: MakeUpStep,
  words: string,
  textMm: number,
  bench: Bench,
  { measure }: DrawingKit,
): Item[] {
  const shares: Readonly<Record<MakeUpStep, number>> = {
    rings: at.ring,
    rubbers: at.float,
    "stop-knot": at.stopKnot,
    bead: at.bead,
    float: at.float,
    loop: at.loop + 0.03,
    "hook-length": (at.loop + at.hook) / 2,
    hold: at.float,
    lock: at.float,
    plummet: at.hook,
    shot: (at.float + at.loop) / 2,
  };
  const standing = step === "float" && holdOf(bench.solved.rig) !== "rubbers";
  const shot = first(bench.solved.depths).lineShot;
  const pointedAt = step === "shot" ? shot[Math.floor(shot.length / 2)] : undefined;
  const xMm = pointedAt ? shotAcross(pointedAt.fromHookMm, bench) : across(bench, shares[step]);
  const tipMm = bench.lineMm - (standing ? bench.floatMm + floatEyeRadiusMm + 0.8 : 3.6);
  const half = measure(words, textMm, "bold") / 2 + 0.5;
  const labelMm = Math.min(bench.box.widthMm - half, Math.max(half, xMm));
  const name = (yMm: number) => text(point(labelMm, yMm), words, textMm, { face: "bold", anchor: "middle" });
  const stroke = { ink: "accent", widthMm: 0.6 } as const;
  if (step === "hold" || step === "lock") {
    const tail = bench.lineMm + 4;
    return [
      name(tail + 0.3 + 0.78 * textMm),
      ...arrow(point(xMm, tail), point(xMm, bench.lineMm + 1.8), stroke, 2),
    ];
  }
  return [
    name(tipMm - pointerMm - 0.45 * textMm),
    ...arrow(point(xMm, tipMm - pointerMm), point(xMm, tipMm), stroke, 2),
  ];
}
