import { describe, expect, test } from "vitest";
import { first } from "../../src/core/lists.ts";
import { allShot } from "../../src/model/solved.ts";
import { sameShot } from "../../src/solve/same-shot.ts";
import { sinkInWay, type WayToSink } from "../../src/solve/sink-in-way.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { rigs } = shippedGuide;

function sunk(rig: (typeof rigs)[number], way: WayToSink) {
  const got = sinkInWay(rig, first(rig.depths), way);
  if (!got.ok) throw new Error(got.findings.map(({ code }) => code).join());
  return got.value;
}

describe.each(rigs.filter(({ rig }) => rig.water === "still"))("$rig.id sunk in a way of its own", (rig) => {
  const depth = first(rig.depths);
  const { inWater } = depth;
  const ways = sameShot(rig.rig, depth);
  const own = ways.find((one) => one.own)?.arrangement;

  test("falls as the guide says that it falls, and its shot in the other pattern as that of the other", () => {
    for (const told of inWater!.sink) {
      const way = sunk(rig, { ...(own && { arrangement: own }), landing: told.landing })!;
      expect(way.sink.tenthsS).toEqual(told.tenthsS);
      expect(way.shot).toEqual(allShot(depth));
    }
    const { sister } = inWater!;
    for (const told of sister?.sink ?? []) {
      const way = sunk(rig, { arrangement: sister!.arrangement, landing: told.landing })!;
      expect(way.sink.tenthsS).toEqual(told.tenthsS);
      expect(way.shot.slice(0, sister!.shot.length)).toEqual(sister!.shot);
      expect(way.shot.length).toBe(allShot(depth).length);
    }
  });

  test("cannot be had in a pattern that its shot find no room for", () => {
    for (const arrangement of ["strung out", "spread bulk", "bulk"] as const) {
      const isThere = ways.some((one) => one.arrangement === arrangement);
      const { landing } = first(inWater!.sink);
      expect(sunk(rig, { arrangement, landing }) !== undefined, arrangement).toBe(isThere);
    }
  });
});
