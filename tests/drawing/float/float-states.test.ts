import { describe, expect, test } from "vitest";
import { type FloatPicture, floatPictures, floatPose } from "../../../src/drawing/float/float-poses.ts";
import { drawFloatState } from "../../../src/drawing/float/float-states.ts";
import type { Drawing, PathItem } from "../../../src/drawing/model.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { breaksOnShot, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs, sampleStick } from "../../support/sample-rig.ts";

const textMm = 3.3;
const cases = sampleRigs.flatMap((rig) =>
  floatPictures.flatMap((picture) => {
    const drawing = drawFloatState(picture, rig, rig.depths[0]!, 42, drawingKit, { textMm });
    return drawing ? [{ name: `${rig.rig.id}, ${picture}`, rig, picture, drawing }] : [];
  }),
);

/** The surface of the water in each picture [mm from its top]. */
const surfaceMm = 15;
/** What is to be done stands above this. */
const markMm = 10;
/** A ring round a verdict is larger than any shot that is drawn. */
const ringMm = 2;

/** The places that a path goes through. */
const placesOf = ({ steps }: PathItem) =>
  steps.flatMap((step) => (step[0] === "Z" ? [] : [{ x: step.at(-2) as number, y: step.at(-1) as number }]));

const pathsOf = ({ items }: Drawing): PathItem[] =>
  flatItems(items).flatMap((item) => (item.kind === "path" ? [item] : []));

/** The scale beside the enlarged tip, from its own figures: millimetres of tip at a place of the picture. */
function scaleOf({ items }: Drawing): ((yMm: number) => number) | undefined {
  const [zero, next] = flatItems(items).flatMap((item) =>
    item.kind === "text" && /^\d+$/.test(item.text) ? [item] : [],
  );
  return (
    zero &&
    next &&
    ((yMm) =>
      ((zero.yMm - 0.35 * textMm - yMm) / (zero.yMm - next.yMm)) * (Number(next.text) - Number(zero.text)))
  );
}

/** The enlarged tip: what has the accent furthest to the right. */
function largeTip(drawing: Drawing) {
  const tips = pathsOf(drawing).filter(({ fill, stroke }) => fill === "accent" && stroke);
  return placesOf(tips.at(-1)!);
}

describe("the tip enlarged beside each state of a float", () => {
  test.each(cases)("$name: stands as high on its scale as is said", ({ rig, picture, drawing }) => {
    const pose = floatPose(picture as FloatPicture, rig, rig.depths[0]!, drawingKit)!;
    const onScale = scaleOf(drawing);
    // A float that lies flat is seen without it.
    expect(onScale === undefined).toBe(pose.leanDegrees > 60);
    if (!onScale || pose.leanDegrees !== 0) return;
    const top = onScale(Math.min(...largeTip(drawing).map(({ y }) => y)));
    if (pose.tipMm === null) expect(top).toBeLessThan(0);
    else if (pose.caption !== "high") expect(top).toBeCloseTo(pose.tipMm, 6);
  });

  test("is read between two figures of its scale, which a float alone breaks that is set far too deep", () => {
    for (const { name, rig, picture, drawing } of cases) {
      const pose = floatPose(picture as FloatPicture, rig, rig.depths[0]!, drawingKit)!;
      if (pose.leanDegrees > 60 || pose.caption === "high") continue;
      const told = flatItems(drawing.items).flatMap((item) =>
        item.kind === "text" && /^\d+$/.test(item.text) ? [Number(item.text)] : [],
      );
      expect(Math.max(...told), name).toBeGreaterThanOrEqual(pose.tipMm ?? 0);
    }
  });

  // An inch is 25.4 mm. Source: the international yard and pound agreement of 1959.
  test("is on a scale of inches where a tip is told in them", () => {
    const kit = { ...drawingKit, figures: makeFigures("imperial", drawingKit.words, "en") };
    for (const rig of sampleRigs) {
      const drawing = drawFloatState("right", rig, rig.depths[0]!, 42, kit, { textMm })!;
      const texts = flatItems(drawing.items).flatMap((item) => (item.kind === "text" ? [item] : []));
      expect(texts.map(({ text }) => text)).toContain("tip, in");
      const [zero, next] = texts.filter(({ text }) => /^[\d.]+$/.test(text));
      const perMm = (zero!.yMm - next!.yMm) / (25.4 * Number(next!.text));
      const top = Math.min(...largeTip(drawing).map(({ y }) => y));
      const pose = floatPose("right", rig, rig.depths[0]!, kit)!;
      expect((zero!.yMm - 0.35 * textMm - top) / perMm).toBeCloseTo(pose.tipMm!, 6);
    }
  });

  test("a float that goes off with a fish goes against the flow", () => {
    const moving = cases.find(({ rig, picture }) => rig === sampleStick && picture === "dragged-sideways")!;
    const heads = pathsOf(moving.drawing).filter(
      ({ fill, stroke, steps }) => fill && !stroke && steps.length === 4,
    );
    const beside = heads.filter(
      (head) => head.fill !== "accent" || placesOf(head).every(({ y }) => y > markMm),
    );
    const pointsRight = (head: PathItem) => {
      const [tip, ...back] = placesOf(head).map(({ x }) => x);
      return tip! > Math.max(...back);
    };
    const of = (ink: string) => beside.filter(({ fill }) => fill === ink).map(pointsRight);
    expect(of("accent")).toEqual([false]);
    expect(of("ink")).toContain(true);
  });

  test("is not cut by the picture's edge, nor does it cover its scale, where the float leans either", () => {
    for (const { name, rig, picture, drawing } of cases) {
      const { leanDegrees } = floatPose(picture as FloatPicture, rig, rig.depths[0]!, drawingKit)!;
      if (leanDegrees > 60) continue;
      const zero = flatItems(drawing.items).find((item) => item.kind === "text" && item.text === "0")!;
      const across = largeTip(drawing).map(({ x }) => x);
      expect(Math.max(...across), name).toBeLessThan(drawing.widthMm);
      expect(Math.min(...across), name).toBeGreaterThan(zero.kind === "text" ? zero.xMm : Number.NaN);
    }
  });

  test("is to one scale in all states of a rig", () => {
    for (const rig of sampleRigs) {
      const heights = cases
        .filter((one) => one.rig === rig)
        .flatMap(({ drawing }) => scaleOf(drawing)?.(0) ?? []);
      expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(0, 6);
    }
  });
});

describe("a fish that has the bait", () => {
  const bites = cases.filter(({ picture }) =>
    ["bite-under", "lift-bite", "dragged-sideways"].includes(picture),
  );

  test.each(bites)("$name: has the hook through its lip, ahead of the eye", ({ drawing }) => {
    const eyes = flatItems(drawing.items).flatMap((item) =>
      item.kind === "circle" && item.fill === "ink" && item.radiusMm < 0.5 ? [item] : [],
    );
    const hooks = pathsOf(drawing).filter(
      ({ fill, stroke, steps }) => !fill && stroke?.ink === "accent" && steps.some(([kind]) => kind === "C"),
    );
    expect([eyes.length, hooks.length]).toEqual([1, 1]);
    const [eye] = eyes;
    const furthest = Math.max(...placesOf(hooks[0]!).map(({ x }) => x));
    expect(furthest).toBeLessThan(eye!.cxMm - eye!.radiusMm);
    expect(furthest).toBeGreaterThan(eye!.cxMm - 2);
  });
});

describe("the load under a float", () => {
  test.each(cases)(
    "$name: marks the shot that is wanting or too much, and none where it is right",
    ({ picture, drawing }) => {
      const marks = flatItems(drawing.items).flatMap((item) =>
        item.kind === "circle" &&
        (item.fill === "accent" || item.stroke?.ink === "accent") &&
        item.radiusMm < ringMm
          ? [item.fill === "accent" ? "one more" : item.stroke?.dashMm ? "an empty place" : "other"]
          : [],
      );
      const wanted: Partial<Record<FloatPicture, string>> = {
        "too-little-shot": "an empty place",
        "too-much-shot": "one more",
      };
      const mark = wanted[picture as FloatPicture];
      expect(marks).toEqual(mark === undefined ? [] : [mark]);
    },
  );
});

// Common practice, no source: what a float does when the rig is as it should be, when it is not, and when a fish has the bait.
describe("what is to be done about a state of a float is seen", () => {
  const wanted: Readonly<Record<FloatPicture, string>> = {
    "too-little-shot": "wrong",
    right: "right",
    "too-much-shot": "wrong",
    "too-shallow": "wrong",
    "depth-right": "right",
    "too-deep": "wrong",
    "bite-under": "strike",
    "lift-bite": "strike",
    "dragged-sideways": "strike",
    "laid-on": "right",
    "held-by-the-bed": "wrong",
  };

  test.each(cases)(
    "$name: is marked as right, as wrong, or as a bite to strike at",
    ({ picture, drawing }) => {
      const rings = flatItems(drawing.items).flatMap((item) =>
        item.kind === "circle" && item.radiusMm > ringMm
          ? [item.stroke?.ink === "accent" ? "wrong" : "right"]
          : [],
      );
      const mark = wanted[picture as FloatPicture];
      expect(rings).toEqual(mark === "strike" ? [] : [mark]);
      expect(/Strike\.$/.test(drawing.description)).toBe(mark === "strike");
    },
  );

  test.each(cases)(
    "$name: has an arrow up or down where the float has to be moved",
    ({ picture, drawing }) => {
      const heads = pathsOf(drawing).flatMap((path) => {
        const [head, ...back] = placesOf(path).map(({ y }) => y);
        const isHead = path.fill === "accent" && !path.stroke && back.length === 2;
        return isHead && Math.min(...back) > surfaceMm ? [head! < Math.min(...back) ? "up" : "down"] : [];
      });
      const said = drawing.description.includes("Set it shallower")
        ? ["down"]
        : (drawing.description.match(/Move the [a-z ]+ (up|down)/)?.slice(1) ?? []);
      const isOfDepth = ["too-shallow", "too-deep", "held-by-the-bed"].includes(picture);
      expect(said.length > 0).toBe(isOfDepth);
      if (isOfDepth) expect(heads).toEqual(said);
    },
  );
});

test.each(cases.filter(({ picture }) => picture === "dragged-sideways"))(
  "$name: the float goes against what its arrow is called",
  ({ drawing }) => {
    const against = /against the (\w+)\./.exec(drawing.description)![1]!;
    const texts = flatItems(drawing.items).flatMap((item) => (item.kind === "text" ? [item.text] : []));
    expect(texts).toContain(against);
  },
);

test.each(cases)("$name: the mark of a line that is shortened touches no shot", ({ drawing }) => {
  expect(breaksOnShot(drawing)).toEqual([]);
});

// A plummet is heavier than what holds the float up, so it goes down to the bed however shallow the float is set. From
// the definition of what a plummet weighs (`lightestPlummetG`).
test.each(cases.filter(({ drawing }) => drawing.description.includes("lummet")))(
  "$name: the plummet stands on the bed, in words and in the picture",
  ({ drawing }) => {
    expect(drawing.description).toContain("The plummet stands on the bed");
    const widest = (path: PathItem) => {
      const xs = placesOf(path).map(({ x }) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    const lowest = (paths: readonly PathItem[]) =>
      Math.max(...paths.flatMap((path) => placesOf(path).map(({ y }) => y)));
    const all = pathsOf(drawing);
    const feet = all.filter(({ fill, stroke, steps }) => fill === "paper" && stroke && steps.length === 5);
    const bedY = lowest(all.filter((path) => path.fill === "water" && widest(path) > 20));
    expect(Math.abs(bedY - lowest(feet))).toBeLessThan(0.5);
  },
);
