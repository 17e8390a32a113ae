import { boldMm, circle, type Point, point, polygon, rectangle } from "../items.ts";
import type { Ink, Item } from "../model.ts";
import { smooth } from "../smooth.ts";

interface Angler {
  /** Where the hips are. */
  readonly hips: Point;
  /** Head to foot, standing [mm of the drawing]. */
  readonly heightMm: number;
  /** Where the hand on the rod is. */
  readonly hands: Point;
  /** Where the other hand is, where it does not help to hold the rod. */
  readonly otherHand?: Point;
  readonly sits: boolean;
}

/**
 * Lengths of the parts of a body as shares of its height.
 *
 * Source: Winter 2009, Biomechanics and Motor Control of Human Movement, table of segment lengths (from memory, rounded).
 */
const share = { trunk: 0.3, thigh: 0.245, shin: 0.225, foot: 0.13, upperArm: 0.185, forearm: 0.17 } as const;

/** Hips above the ground of somebody who sits, and who stands, as shares of the height. */
export const hipsShare = { sits: 0.275, stands: 0.51 } as const;

/** Light round what lies over the body, so that an arm is told from the trunk [mm]. */
const clearMm = 0.45;

/** Somebody with a cap, looking to the right: on a seat box, or on their feet. */
export function angler({ hands, otherHand, ...body }: Angler): Item[] {
  const { heightMm: h, sits } = body;
  const at = placesOf(body);
  return [
    ...(sits ? seat(at, h) : []),
    ...(otherHand ? anglerArm(body, otherHand) : []),
    ...trunkAndLegs(at, h, sits),
    ...head(at, h),
    ...anglerArm(body, hands),
  ];
}

type Body = Omit<Angler, "hands" | "otherHand">;

/** The part of somebody that stays where it is while head and arms move. */
export function anglerBody(body: Body): Item[] {
  const { heightMm: h, sits } = body;
  const at = placesOf(body);
  return [...(sits ? seat(at, h) : []), ...trunkAndLegs(at, h, sits)];
}

/** The head, looking to the right or back over the shoulder. */
export function anglerHead(body: Pick<Body, "hips" | "heightMm">, looks: "ahead" | "back"): Item[] {
  const at = placesOf(body);
  return head(looks === "ahead" ? at : (x, y) => at(2 * neckX - x, y), body.heightMm);
}

/** Where the neck is, on which the head turns, as a share of the height. */
const neckX = 0.055;

/** An arm to where its hand is. */
export function anglerArm(body: Pick<Body, "hips" | "heightMm">, hand: Point): Item[] {
  return arm(placesOf(body)(0.05, -share.trunk), hand, body.heightMm);
}

type At = (x: number, y: number) => Point;

function placesOf({ hips, heightMm: h }: Pick<Body, "hips" | "heightMm">): At {
  return (x, y) => point(hips.xMm + x * h, hips.yMm + y * h);
}

function trunkAndLegs(at: At, h: number, sits: boolean): Item[] {
  return [...legs(at, h, sits), polygon(smooth(trunkOf(at), true), "ink")];
}

function trunkOf(at: At): Point[] {
  return [
    at(-0.075, 0.045),
    at(-0.075, -0.08),
    at(-0.045, -0.22),
    at(-0.01, -0.315),
    at(0.06, -0.335),
    at(0.105, -0.27),
    at(0.1, -0.13),
    at(0.085, 0.0),
    at(0.06, 0.05),
  ];
}

/** Face to the right with a nose, and a cap with its peak over it. */
function head(at: At, h: number): Item[] {
  const face = smooth(
    [
      at(0.02, -0.37),
      at(0.01, -0.43),
      at(0.035, -0.485),
      at(0.09, -0.49),
      at(0.125, -0.45),
      at(0.147, -0.418),
      at(0.127, -0.402),
      at(0.122, -0.375),
      at(0.085, -0.36),
      at(0.075, -0.32),
      at(0.02, -0.32),
    ],
    true,
  );
  const cap = smooth([at(0.0, -0.455), at(0.02, -0.51), at(0.08, -0.515), at(0.125, -0.47)]);
  const peak = [at(0.2, -0.452), at(0.19, -0.44), at(0.1, -0.444), at(0.002, -0.44)];
  return [
    polygon(face, "ink"),
    polygon([...cap, ...peak], "ink", { ink: "paper", widthMm: Math.max(0.35, 0.012 * h) }),
  ];
}

function legs(at: At, h: number, sits: boolean): Item[] {
  const [a, b, c] = [0.062 * h, 0.045 * h, 0.032 * h];
  const leg = (hip: Point, knee: Point, ankle: Point): Item[] => [
    limb(hip, knee, a, b, "ink"),
    limb(knee, ankle, b, c, "ink"),
    boot(ankle, h),
  ];
  if (sits) return leg(at(0, 0), at(share.thigh, 0.0), at(share.thigh - 0.02, share.shin + 0.01));
  const ankleY = share.thigh + share.shin;
  return [
    ...leg(at(-0.01, 0.01), at(0.05, 0.24), at(0.075, ankleY)),
    ...leg(at(-0.01, 0.01), at(0.0, 0.24), at(-0.06, ankleY)),
  ];
}

/** A boot with its sole on the ground. */
function boot({ xMm, yMm }: Point, h: number): Item {
  const p = (x: number, y: number) => point(xMm + x * h, yMm + y * h);
  return polygon(
    [p(-0.035, -0.04), p(0.035, -0.04), p(0.05, -0.005), p(0.105, 0.02), p(0.105, 0.04), p(-0.04, 0.04)],
    "ink",
  );
}

/** A box to sit on, with its feet. */
function seat(at: At, h: number): Item[] {
  const [left, top] = [at(-0.14, 0.055), at(0.1, 0.055)];
  const wide = top.xMm - left.xMm;
  const high = (hipsShare.sits - 0.055) * h;
  const stroke = { ink: "ink", widthMm: boldMm } as const;
  return [
    rectangle(left.xMm, left.yMm, wide, high, { fill: "paper", stroke }),
    rectangle(left.xMm - 0.01 * h, left.yMm - 0.01 * h, wide + 0.02 * h, 0.045 * h, { fill: "ink" }),
  ];
}

/** Upper arm, forearm and hand, the elbow down and back as an arm bends. */
function arm(shoulder: Point, hand: Point, h: number): Item[] {
  const elbow = elbowOf(shoulder, hand, share.upperArm * h, share.forearm * h);
  const [a, b, c] = [0.042 * h, 0.034 * h, 0.026 * h];
  const bones = (grow: number, ink: Ink) => [
    limb(shoulder, elbow, a + grow, b + grow, ink),
    limb(elbow, hand, b + grow, c + grow, ink),
  ];
  return [...bones(clearMm, "paper"), ...bones(0, "ink"), circle(hand, 0.036 * h, { fill: "ink" })];
}

/** Where two bones meet between shoulder and hand; stretched where the hand is too far. */
function elbowOf(shoulder: Point, hand: Point, upperMm: number, foreMm: number): Point {
  const [dx, dy] = [hand.xMm - shoulder.xMm, hand.yMm - shoulder.yMm];
  const apart = Math.hypot(dx, dy) || 1;
  const reach = Math.min(apart, upperMm + foreMm);
  const along = (upperMm * upperMm - foreMm * foreMm + reach * reach) / (2 * reach);
  const aside = Math.sqrt(Math.max(0, upperMm * upperMm - along * along));
  const [ux, uy] = [dx / apart, dy / apart];
  // Turned so that the elbow of a hand held to the right hangs down.
  return point(shoulder.xMm + ux * along - uy * aside, shoulder.yMm + uy * along + ux * aside);
}

/** A part of a limb, round at both ends and thinner at its far one. */
function limb(from: Point, to: Point, fromMm: number, toMm: number, ink: Ink): Item {
  const turn = Math.atan2(to.yMm - from.yMm, to.xMm - from.xMm);
  const round = (centre: Point, radiusMm: number, start: number) =>
    Array.from({ length: 7 }, (_, i) => {
      const angle = start + (Math.PI * i) / 6;
      return point(centre.xMm + radiusMm * Math.cos(angle), centre.yMm + radiusMm * Math.sin(angle));
    });
  return polygon([...round(from, fromMm, turn + Math.PI / 2), ...round(to, toMm, turn - Math.PI / 2)], ink);
}
