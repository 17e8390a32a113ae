import { describe, expect, it } from "vitest";
import { drawSign } from "../../../src/drawing/signs/draw-sign.ts";
import { type SignPicture, signPictures } from "../../../src/model/signs.ts";
import { featuresOf } from "./sign-features.ts";

type Float = "gone" | "low" | "right" | "tall" | "leans right" | "leans left" | "flat";

/** What a reader must see to know the sign; what is not named may not be there. */
interface Seen {
  readonly floats?: readonly Float[];
  readonly before?: number;
  readonly arrows?: readonly string[];
  readonly crosses?: number;
  readonly shot?: number;
  readonly fish?: readonly ("left" | "right")[];
  readonly hooks?: number;
  /** Quarters of a round, to the nearest. */
  readonly quarters?: number;
  readonly water?: false;
  readonly bed?: true;
  readonly flow?: true;
}

// What each sentence of content/troubles.yaml says is seen. Common practice, no source.
const seen: Readonly<Record<SignPicture, Seen>> = {
  // "sinks as soon as the rig has settled"
  "goes-under": { floats: ["gone"], before: 1, arrows: ["S"], shot: 1, hooks: 1 },
  "stands-tall": { floats: ["tall"], before: 1, crosses: 1 },
  "lies-flat": { floats: ["flat"], before: 1, crosses: 1, shot: 2, bed: true },
  // "never cocks although the water is deep"
  "half-cocked": { floats: ["leans right"], before: 1, crosses: 1, shot: 1, hooks: 1, bed: true },
  // "drops lower and lower over some minutes"
  "sinks-lower": { floats: ["low"], before: 2, arrows: ["SE"], quarters: 2 },
  "drifts-with-wind": { floats: ["right"], before: 1, arrows: ["E"] },
  "moves-against-wind": { floats: ["right"], before: 1, arrows: ["W"] },
  "dips-at-a-hump": { floats: ["low"], before: 1, arrows: ["S"], hooks: 1, flow: true },
  "dives-held-back": { floats: ["gone"], arrows: ["S"], flow: true },
  "leans-held-back": { floats: ["leans left"], before: 1, arrows: ["NE"], crosses: 1, flow: true },
  // "faster than the bubbles": the float's arrow and the bubbles' own
  "runs-ahead": { floats: ["right"], before: 3, arrows: ["E", "E"], flow: true },
  // "quick little dips and nothing there": down and up, twice, then a bare hook comes up
  "quick-dips": { floats: ["right"], arrows: ["S", "N", "S", "N", "N"], hooks: 1 },
  "bobs-back": { floats: ["right"], before: 2, arrows: ["SE", "NE"] },
  "rises-flat": { floats: ["flat"], before: 1, arrows: ["SE"] },
  "stops-early": { floats: ["tall"], before: 1, arrows: ["S"], fish: ["left"] },
  // "slides away but you miss every bite": a fish on it, then a bare hook and the fish gone
  "slides-away": { floats: ["gone"], before: 1, arrows: ["E", "N"], fish: ["left", "right"], hooks: 1 },
  "empty-skin": { arrows: ["E"], fish: ["left"], hooks: 2, water: false },
  // "after the first half hour": one fish, then none
  "bites-stop": { crosses: 1, fish: ["left", "left"], quarters: 2, water: false },
  "no-bites": { floats: ["right"], crosses: 1, fish: ["left"], hooks: 1, quarters: 4 },
  // "only just after the cast", "only after a long wait"
  "fish-high": { floats: ["leans right"], fish: ["left"], quarters: 0, bed: true },
  "fish-low": { floats: ["gone"], before: 1, arrows: ["S"], fish: ["left"], quarters: 3, bed: true },
  tangled: { floats: ["tall"], shot: 2, hooks: 1 },
  corkscrew: { hooks: 1, water: false },
  "slides-down": { floats: ["leans right"], before: 1, arrows: ["S"], shot: 2, water: false },
  "will-not-slide": { floats: ["right"], before: 2, arrows: ["S"], shot: 2, bed: true },
  "falls-short": { floats: ["right"], before: 1, arrows: ["SE"] },
  "breaks-at-hook": { crosses: 1, hooks: 1, water: false },
  "curly-end": { hooks: 1, water: false },
  "breaks-at-shot": { crosses: 1, shot: 1, water: false },
  "breaks-above-float": { floats: ["right"], crosses: 1 },
  "comes-out": { arrows: ["E"], fish: ["right"], hooks: 1 },
  "in-weed": { fish: ["left"], bed: true },
  "hook-deep": { fish: ["left"], hooks: 1, water: false },
  "bare-hook": { before: 1, hooks: 1, water: false },
  "casters-rise": { before: 1, arrows: ["N"], hooks: 1 },
  // "breaks in the air": its largest pieces
  "ball-breaks": { shot: 3 },
  porridge: { before: 1, arrows: ["S"], water: false },
  "weed-on-hook": { hooks: 1, water: false },
  "plummet-hangs": { floats: ["right"], arrows: ["S"], bed: true },
  "plummet-on-slope": { floats: ["right", "right"] },
  // "your coach's card and your float do not agree": one in the water of the card, which is lower down, one beside it
  "card-differs": { floats: ["gone", "right"], shot: 1 },
};

/** In a few words how a float stands; 2 to 4 mm of its 11 over the water is as it should. */
function stands({ aboveMm, lean }: { readonly aboveMm: number; readonly lean: number }): Float {
  const side = lean > 0 ? "leans right" : "leans left";
  if (Math.abs(lean) > 75) return "flat";
  if (Math.abs(lean) > 40) return side;
  if (aboveMm < 0) return "gone";
  if (Math.abs(lean) > 20) return side;
  return aboveMm < 1.5 ? "low" : aboveMm > 5 ? "tall" : "right";
}

describe("a small picture without words still shows what its sentence says", () => {
  it.each(signPictures)("%s", (picture) => {
    const {
      floats,
      clock,
      hasWater,
      hasBed,
      flow,
      fishMm: _,
      bubblesMm: __,
      ...found
    } = featuresOf(drawSign(picture, picture));
    const wanted = seen[picture];
    expect({
      ...found,
      floats: floats.map(stands),
      quarters: clock === undefined ? undefined : Math.round(4 * clock),
      water: hasWater,
      flow: flow > 0,
      ...(wanted.bed && { bed: hasBed }),
    }).toEqual({
      floats: wanted.floats ?? [],
      before: wanted.before ?? 0,
      arrows: wanted.arrows ?? [],
      crosses: wanted.crosses ?? 0,
      shot: wanted.shot ?? 0,
      fish: wanted.fish ?? [],
      hooks: wanted.hooks ?? 0,
      quarters: wanted.quarters,
      water: wanted.water ?? true,
      flow: wanted.flow ?? false,
      ...(wanted.bed && { bed: true }),
    });
  });
});

it("a float that bites only just after the cast has its fish high, one after a long wait has it by the bed", () => {
  const fishY = (picture: SignPicture) => featuresOf(drawSign(picture, picture)).fishMm[0]!.y;
  expect(fishY("fish-high")).toBeLessThan(fishY("fish-low") - 4);
});

it("a float that runs faster than the bubbles is ahead of them all", () => {
  const { floats, bubblesMm } = featuresOf(drawSign("runs-ahead", "runs-ahead"));
  expect(bubblesMm.length).toBe(3);
  expect(floats[0]!.x).toBeGreaterThan(Math.max(...bubblesMm) + 5);
});
