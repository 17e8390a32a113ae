import { describe, expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { inUnits } from "../support/in-units.ts";
import { metricLengths } from "../support/metric-lengths.ts";

/** `6 ft 4.5 in` in inches. */
function inches(told: string): number {
  const [, feet = "0", rest = "0"] =
    /^(?:([\d.]+) ft)? ?(?:([\d.]+) in)?$/.exec(told.replaceAll("\u00a0", " ")) ?? [];
  return 12 * Number(feet) + Number(rest);
}

/** The line from float to hook at every depth, as a rig's page tells it: beside the picture, where to start, at a glance. */
function settings(html: string) {
  const all = (pattern: RegExp, text = html) => [...text.matchAll(pattern)].map(([, told]) => inches(told!));
  const glance = /<table class="glance">.*?<\/table>/s.exec(html)![0];
  return {
    beside: all(/<dl class="key-figures"><div><dt>[^<]*<\/dt><dd>([^<]*)/g),
    start: all(/<tr class="chosen"><th scope="row">[^<]*<span class="beside">[^\d<]*([^<]*)/g),
    glance: all(/<\/th><td>([^<]*)<\/td><td>/g, glance),
    depths: all(/<th scope="row">([^<]*)/g, glance),
  };
}

describe.each(["imperial", "us"] as const)("the shipped guide in %s units", (units) => {
  it("tells no length and no volume in metric ones, and a rig's line to the hook alike wherever a page has it", async () => {
    const { value } = await solveContent(inUnits(units), ["content"]);
    const files = outputFiles(value!, { date: "2026-11-20", siteAssets: new Map(), parts: ["web"] });
    const left: string[] = [];
    for await (const { path, content } of files) {
      if (path.endsWith(".html")) {
        const html = typeof content === "string" ? content : Buffer.from(content).toString("utf8");
        left.push(...metricLengths(html).map((found) => `${path}: ${found}`));
        if (/^site\/rigs\/(?!index)/.test(path)) {
          const { beside, start, glance, depths } = settings(html);
          expect(glance.length, path).toBeGreaterThan(1);
          expect(beside, path).toEqual(glance);
          expect(start, path).toEqual(glance);
          // Told in one step, as the rule of a card gives them; from six feet up lengths are told in whole inches.
          const more = glance.map((line, at) => line - depths[at]!);
          expect(Math.max(...more) - Math.min(...more), path).toBeLessThanOrEqual(0.5);
        }
      }
    }
    expect(left).toEqual([]);
  });
});
