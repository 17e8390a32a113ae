import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { siteFile } from "../../src/site/site-files.tsx";
import { shippedGuide } from "../support/shipped-guide.ts";
import { realSite } from "./real-site.ts";

const input = await realSite();
const paths = [
  "site/swims/index.html",
  "site/soundings.html",
  ...shippedGuide.library.swims.map(({ id }) => `site/swims/${id}.html`),
];
const files = paths.map((path) => siteFile(path, input)!);
const contentOf = (path: string) => String(files.find((file) => file.path === path)!.content);

test.each(paths)("%s is valid HTML by the rules of html-validate", async (path) => {
  const validator = new HtmlValidate({ extends: ["html-validate:standard", "html-validate:a11y"] });
  const { results } = await validator.validateString(contentOf(path), path);
  const said = results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
  );
  expect(said).toEqual([]);
});

test("each swim's page tells its hazards before anything else, and draws its bed and its rigs", () => {
  for (const { swim } of shippedGuide.swims) {
    const html = contentOf(`site/swims/${swim.id}.html`);
    const hazards = html.indexOf('id="hazards-here"');
    expect(hazards).toBeGreaterThan(0);
    expect(hazards).toBeLessThan(html.indexOf("<svg", html.indexOf("<article")));
    const svgs = html.slice(html.indexOf("<article")).split("<svg").length - 1;
    expect(svgs).toBeGreaterThanOrEqual(swim.lines.length + swim.spots.length);
  }
});
