import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { RunOnly } from "axe-core";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const ruleSets = {
  /** WCAG 2.2 AA, and axe-core's best practice. */
  all: {
    type: "tag",
    values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  },
  /** Those of them that another theme can change. */
  colours: { type: "rule", values: ["color-contrast", "link-in-text-block"] },
} satisfies Record<string, RunOnly>;

/** Rules of axe-core that the open page breaks. */
export async function brokenRules(page: Page, set: keyof typeof ruleSets = "all"): Promise<string[]> {
  // By the debugger, as the pages' own policy lets no foreign script in.
  await page.evaluate(axe);
  return page.evaluate(async (runOnly) => {
    const { violations } = await (window as unknown as { axe: typeof import("axe-core") }).axe.run(document, {
      preload: false,
      resultTypes: ["violations"],
      runOnly,
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, ruleSets[set]);
}

/** Opens every part of the page that can be unfolded. */
export function unfoldAll(page: Page): Promise<void> {
  return page.evaluate(() => {
    for (const part of document.querySelectorAll("details")) part.open = true;
  });
}

/** Sets the text of the open page as far apart as a reader may. Source: WCAG 2.2, success criterion 1.4.12. */
export function spreadText(page: Page): Promise<void> {
  return page.evaluate(() => {
    const style = new CSSStyleSheet();
    style.replaceSync(
      "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }",
    );
    document.adoptedStyleSheets = [style];
  });
}

/** By how many pixels the open page is wider than its window, its text at this size of the root. */
export function overWidthPx(page: Page, rootSize: string): Promise<number> {
  return page.evaluate((size) => {
    document.documentElement.style.fontSize = size;
    return document.documentElement.scrollWidth - innerWidth;
  }, rootSize);
}

/** Text of the open page that does not fit its box and can neither be seen beside it nor scrolled to. */
export function clippedText(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("body *:not(.unseen, .skip, svg *)")]
      .filter((node) => /hidden|clip/.test(getComputedStyle(node).overflow) && node.textContent !== "")
      .filter((node) => node.scrollWidth > node.clientWidth + 1 || node.scrollHeight > node.clientHeight + 1)
      .map((node) => node.outerHTML.slice(0, 120)),
  );
}

/**
 * What is to be pressed on the open page and less than 24 px wide or high. WCAG 2.2, success criterion 2.5.8, leaves
 * out links in a sentence.
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("a, button, select, input, summary")]
      .filter((node) => !node.closest("p, td, dd, .prose li, section li:not(:has(> a:only-child))"))
      .filter((node) => !node.matches(".skip, .term"))
      .map((node) => ({ text: node.outerHTML, box: node.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
      .map(({ text }) => text),
  );
}
