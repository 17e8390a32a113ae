import { describe, expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { inUnits } from "../support/in-units.ts";
import { metricLengths } from "../support/metric-lengths.ts";

describe.each(["imperial", "us"] as const)("the shipped guide in %s units", (units) => {
  it("tells no length and no volume in metric ones, on no page and in no alternative text", async () => {
    const { value } = await solveContent(inUnits(units), ["content"]);
    const files = outputFiles(value!, { date: "2026-11-20", siteAssets: new Map(), parts: ["web"] });
    const left: string[] = [];
    for await (const { path, content } of files) {
      if (path.endsWith(".html")) {
        const html = typeof content === "string" ? content : Buffer.from(content).toString("utf8");
        left.push(...metricLengths(html).map((found) => `${path}: ${found}`));
      }
    }
    expect(left).toEqual([]);
  }, 600_000);
});
