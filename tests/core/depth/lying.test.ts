import { describe, expect, it } from "vitest";
import { lyingMm } from "../../../src/core/depth/lying.ts";

// By hand: 1,200 mm of line and 60 mm of float reach 1,260 mm down.
describe("line that lies on the bed", () => {
  it("is what the depth leaves over", () => {
    expect(lyingMm({ floatToHookMm: 1200, draughtMm: 60, depthMm: 1000 })).toBe(260);
  });

  it("is none where the hook hangs clear", () => {
    expect(lyingMm({ floatToHookMm: 1200, draughtMm: 60, depthMm: 1300 })).toBe(0);
  });
});
