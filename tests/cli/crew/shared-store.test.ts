import { once } from "node:events";
import { BroadcastChannel } from "node:worker_threads";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { sharedStore, storeInMemory } from "../../../src/cli/crew/shared-store.ts";

let channels: BroadcastChannel[];
beforeEach(() => {
  channels = [0, 1, 2].map(() => new BroadcastChannel("a build"));
});
afterEach(() => {
  for (const channel of channels) channel.close();
});

describe("stores of those who are at work on the same", () => {
  it("have what any of them has put, each by itself and as it was", () => {
    const [one, other, third] = channels.map((channel) => sharedStore(storeInMemory(), channel));
    const made = { bytes: new Uint8Array([1, 2]), none: undefined, list: [0.1, -0] };
    one!.put("card", "of a rig", made);
    expect(other!.find("card", "of a rig")).toEqual({ value: made });
    expect(third!.find("card", "of a rig")!.value).not.toBe(made);
    expect(other!.find("card", "of another rig")).toBeUndefined();
    expect(other!.find("car", "dof a rig")).toBeUndefined();
    expect([one, other, third].map((store) => store!.taken)).toEqual([0, 1, 1]);
  });

  it("hear what others tell while a thread waits for something", async () => {
    const [one, other] = [channels[0]!, channels[1]!].map((channel) => sharedStore(storeInMemory(), channel));
    const hasCome = once(channels[2]!, "message");
    one!.put("card", "of a rig", "made by another");
    await hasCome;
    expect(other!.find("card", "of a rig")).toEqual({ value: "made by another" });
  });

  it("hold no more in memory than they may: what was told first goes to the store below, what was put first is forgotten", () => {
    const [below, forgetful] = [storeInMemory(), storeInMemory({ mostBytes: 2500 })];
    const one = sharedStore(forgetful, channels[0]!);
    const other = sharedStore(below, channels[1]!, { mostBytes: 2500 });
    const thousand = "x".repeat(1000);
    for (const name of ["first", "second", "third"]) one.put("card", name, thousand + name);
    expect(["first", "second", "third"].map((name) => forgetful.find("card", name)?.value)).toEqual([
      undefined,
      `${thousand}second`,
      `${thousand}third`,
    ]);
    other.find("card", "another");
    expect(["first", "second"].map((name) => below.find("card", name)?.value)).toEqual([
      `${thousand}first`,
      undefined,
    ]);
    expect(other.find("card", "second")).toEqual({ value: `${thousand}second` });
  });

  it("keep what they take over, and take it over once", () => {
    const below = storeInMemory();
    const [one, other] = [sharedStore(storeInMemory(), channels[0]!), sharedStore(below, channels[1]!)];
    one.put("card", "of a rig", "made by another");
    other.put("card", "of my own", "made here");
    expect(other.find("card", "of my own")).toEqual({ value: "made here" });
    expect(below.find("card", "of a rig")).toBeUndefined();
    other.find("card", "of a rig");
    expect(below.find("card", "of a rig")).toEqual({ value: "made by another" });
    other.find("card", "of a rig");
    expect(other.taken).toBe(1);
  });

  it("put below at the end what was told and nobody asked for", () => {
    const below = storeInMemory();
    const [one, other] = [sharedStore(storeInMemory(), channels[0]!), sharedStore(below, channels[1]!)];
    for (const name of ["first", "second"]) one.put("card", name, name);
    other.end();
    expect(["first", "second"].map((name) => below.find("card", name)?.value)).toEqual(["first", "second"]);
    expect(other.taken).toBe(0);
  });

  it("have what is large from the disk, where all of them find it, and hold none of it", () => {
    const disk = storeInMemory();
    const one = sharedStore(storeInMemory({ disk }), channels[0]!, { disk });
    const other = sharedStore(storeInMemory(), channels[1]!);
    const large = "x".repeat(30_000);
    one.put("card", "of a rig", large);
    one.put("rows", "of a rig", "small");
    expect(disk.find("card", "of a rig")).toEqual({ value: large });
    expect(disk.find("rows", "of a rig")).toBeUndefined();
    expect(one.find("card", "of a rig")).toEqual({ value: large });
    expect(["card", "rows"].map((kind) => other.find(kind, "of a rig")?.value)).toEqual([undefined, "small"]);
    const third = sharedStore(storeInMemory({ disk }), channels[2]!, { disk });
    expect(third.find("card", "of a rig")).toEqual({ value: large });
  });
});
