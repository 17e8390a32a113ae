import type { SolvedDepth } from "../../model/solved.ts";
import { arrow, bold, circle, curveTo, type Point, partWay, point, polyline } from "../items.ts";
import type { Item, PathStep } from "../model.ts";
import { lineBreakHalfMm } from "../parts/line-break.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { strandStrokes } from "../strands.ts";
import { mirrored, rotated, turnFromUpright } from "../transform.ts";
import type { FloatPose } from "./float-poses.ts";

const hookMm = 2.8;
const plummetMm = 4;
/** How far a slack line bows aside, clear of the arrow that says which way to move the float. */
const slackAsideMm = -8;
const fishMm = 10;
/** How far up a line that hangs its lowest shot is. */
const lowestShare = 0.18;
/** Where a hooked fish has its nose, from the bend of the hook: the point comes up through its lip, ahead of the eye. */
const noseOffBend = { xMm: 1, yMm: -1.4 } as const;

/** Where the picture of a state has its float, its bed and its sides. */
interface StateRoom {
  /** Where the line leaves the float downwards. */
  readonly eye: Point;
  readonly bedMm: number;
  readonly widthMm: number;
}

/** The line below the float, with what is at its end and the lowest shot. */
export function lineAndEnd(pose: FloatPose, depth: SolvedDepth, room: StateRoom): Item[] {
  const { eye, bedMm } = room;
  const stroke = strandStrokes["main line"];
  const baitX = room.widthMm * (0.5 + pose.baitAside / 2);
  const lowest = depth.lineShot[0];
  const radiusMm = lowest ? Math.min(1.2, Math.max(0.7, lowest.diameterMm * 0.3)) : 0;
  const shotAt = (at: Point) => (lowest ? parts.shot.draw({ at, radiusMm }) : []);
  const fishAt = (bend: Point) => {
    const nose = point(bend.xMm + noseOffBend.xMm, bend.yMm + noseOffBend.yMm);
    return pose.fishDegrees === undefined ? [] : rotated(fish(nose, fishMm), pose.fishDegrees, nose);
  };
  switch (pose.line) {
    case "hanging": {
      const bend = point(baitX, bedMm - (pose.fishDegrees === undefined ? 0.3 : 2.4));
      const top = point(baitX, bend.yMm - hookMm);
      const shot = partWay(top, eye, lowestShare);
      const takenMm = pose.load ? loadMm.below + loadMm.radius : 0;
      return [
        ...fishAt(bend),
        polyline([eye, top], stroke),
        ...shortened(along(eye, top, takenMm), along(shot, eye, radiusMm)),
        ...(pose.load ? loadMark(pose.load, eye) : []),
        ...shotAt(shot),
        ...parts.hook.draw({ bend, heightMm: hookMm }),
      ];
    }
    case "lifted": {
      const bend = point(baitX + 3, bedMm - 4.5);
      const hookTop = point(bend.xMm, bend.yMm - hookMm);
      const shot = point(baitX + 0.6, bedMm - 8.5);
      const slack = curve(eye, point(eye.xMm - 2.5, (eye.yMm + shot.yMm) / 2), shot);
      return [
        ...fishAt(bend),
        { kind: "path", steps: slack, stroke },
        polyline([shot, hookTop], stroke),
        ...shotAt(shot),
        ...parts.hook.draw({ bend, heightMm: hookMm }),
      ];
    }
    case "on the bed": {
      // Under a float that stands upright its line goes straight down.
      const touchX = pose.leanDegrees === 0 ? eye.xMm : (eye.xMm + baitX) / 2;
      const touch = point(touchX, bedMm - 0.4);
      const bend = point(baitX, bedMm - 0.3);
      const hookTop = point(baitX + hookMm, bedMm - 0.4);
      return [
        polyline([eye, touch, hookTop], stroke),
        ...shortened(eye, along(touch, eye, 2 * radiusMm)),
        ...shotAt(point(touch.xMm - 0.4, bedMm - radiusMm)),
        ...rotated(mirrored(parts.hook.draw({ bend, heightMm: hookMm }), bend.xMm), 90, bend),
      ];
    }
    case "plummet standing": {
      const foot = point(baitX, bedMm - 0.3);
      const top = point(baitX, foot.yMm - plummetMm);
      return [
        polyline([eye, top], stroke),
        ...shortened(eye, top),
        ...parts.plummet.draw({ at: foot, heightMm: plummetMm }),
      ];
    }
    case "plummet slack": {
      const foot = point(baitX, bedMm - 0.3);
      const top = point(baitX, foot.yMm - plummetMm);
      const slack = curve(eye, point(top.xMm + slackAsideMm, (eye.yMm + top.yMm) / 2), top);
      return [
        { kind: "path", steps: slack, stroke },
        ...parts.plummet.draw({ at: foot, heightMm: plummetMm }),
      ];
    }
  }
}

const loadMm = { radius: 1.1, below: 1.8, arrow: 5 } as const;

/** Under the float, in the accent: the shot to take off, or the empty place of the one to put on, with the way that it goes. */
function loadMark(load: NonNullable<FloatPose["load"]>, { xMm, yMm }: Point): Item[] {
  const at = point(xMm, yMm + loadMm.below);
  const near = point(xMm + loadMm.radius + 0.7, at.yMm);
  const far = point(near.xMm + loadMm.arrow, at.yMm);
  const [from, to] = load === "too much" ? [near, far] : [far, near];
  const place =
    load === "too much"
      ? circle(at, loadMm.radius, { fill: "accent" })
      : circle(at, loadMm.radius, {
          fill: "paper",
          stroke: { ink: "accent", widthMm: 0.35, dashMm: [0.6, 0.5] },
        });
  return [place, ...arrow(from, to, { ...bold, ink: "accent" }, 2.2)];
}

/** Bare line that has room for the mark of a stretch left out. */
const leastBareMm = 2 * lineBreakHalfMm + 1;

/** The mark of a stretch left out, in the middle of a bare one that has room for it. */
function shortened(from: Point, to: Point): readonly Item[] {
  const middle = partWay(from, to, 0.5);
  return Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) < leastBareMm
    ? []
    : parts.lineBreak.draw({ at: middle, turnedDegrees: turnFromUpright(to, from) });
}

/** So far on the way from one place to another. */
const along = (from: Point, to: Point, mm: number): Point =>
  partWay(from, to, mm / Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm));

/** A slack line from one point to another, drawn towards a third. */
export function curve(from: Point, towards: Point, to: Point): PathStep[] {
  const a = partWay(from, towards, 2 / 3);
  const b = partWay(to, towards, 2 / 3);
  return [["M", from.xMm, from.yMm], curveTo(a, b, to)];
}
