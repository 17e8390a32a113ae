import { describe, expect, it } from "vitest";
import { LayoutEngine, LayoutEngineError } from "../../src/layout/layout-engine.ts";

/** An engine that does in turn what is asked of it, and how often it was. */
function engineOf(...does: (() => string)[]) {
  let asked = 0;
  const engine = new LayoutEngine(async () => does[asked++]!());
  return { engine, asked: () => asked };
}

const breaks = (error: Error) => () => {
  throw error;
};

describe("the layout engine", () => {
  it.each([
    ["its memory is out of bounds", new WebAssembly.RuntimeError("memory access out of bounds")],
    ["its stack has no end", new RangeError("Maximum call stack size exceeded")],
  ])("is never asked again once %s", async (_, error) => {
    const { engine, asked } = engineOf(
      () => "first",
      breaks(error),
      () => "third",
    );
    expect(await engine.run()).toBe("first");
    await expect(engine.run()).rejects.toBeInstanceOf(LayoutEngineError);
    await expect(engine.run()).rejects.toThrow(`the layout engine failed: ${error.message}`);
    expect(asked()).toBe(2);
  });

  it("is asked again after it refused a template", async () => {
    const { engine } = engineOf(breaks(new TypeError("no such style")), () => "second");
    await expect(engine.run()).rejects.toThrow("no such style");
    expect(await engine.run()).toBe("second");
  });
});
