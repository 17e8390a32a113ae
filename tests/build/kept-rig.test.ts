import { expect, test } from "vitest";
import { wholly } from "../../src/build/kept-rig.ts";
import { storeInMemory } from "../../src/cli/crew/shared-store.ts";
import { keeping, type Store } from "../../src/model/kept.ts";
import { solveWholly } from "../../src/solve/solve-wholly.ts";
import { sampleStick } from "../support/sample-rig.ts";

/** A store that says what it was asked for. */
function asked(): Store & { readonly kinds: string[] } {
  const kinds: string[] = [];
  const { find, put } = storeInMemory();
  return {
    kinds,
    put,
    find(kind, from) {
      kinds.push(kind);
      return find(kind, from);
    },
  };
}

const rig = { ...sampleStick.rig, depthsMm: [1000, 1500] };

test("a rig's sums are the same whether they are kept or not, and its depths are the same ones each time", () => {
  const store = asked();
  const whole = solveWholly(rig);
  const expected = whole.ok ? whole.value : undefined;
  for (let build = 0; build < 2; build++) {
    const { value, findings } = wholly(rig, keeping(store));
    expect(structuredClone(value)).toEqual(structuredClone(expected));
    expect(findings).toEqual(whole.findings);
    expect(value!.depths[1]).toBe(value!.depths[1]);
    expect(value!.depths[0]!.inWater).toEqual(expected!.depths[0]!.inWater);
  }
});

test("of a rig that is kept nothing is looked up that nobody asks for", () => {
  const store = asked();
  wholly(rig, keeping(store));
  store.kinds.length = 0;
  const { value } = wholly(rig, keeping(store));
  expect(value!.floatPullG).toBeGreaterThan(0);
  expect(store.kinds).toEqual(["rig"]);
  expect(value!.depths.map(({ depthMm }) => depthMm)).toEqual([1000, 1500]);
  expect(store.kinds).toEqual(["rig", "depths of rig"]);
  expect(value!.depths[0]!.inWater!.sink.length).toBeGreaterThan(0);
  expect(store.kinds).toEqual(["rig", "depths of rig", "water of rig"]);
});
