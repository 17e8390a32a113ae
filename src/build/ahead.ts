import { readAhead } from "../content/read-ahead.ts";
import type { Source } from "../content/world.ts";
import { drawPictures } from "../drawing/pictures.ts";
import type { InOrder } from "../model/in-order.ts";
import type { Keep } from "../model/kept.ts";
import { printAhead } from "../print/print-files.ts";
import { pagesAhead } from "../site/site-files.tsx";
import { solveChecked } from "./build.ts";
import { checkSources } from "./check-sources.ts";
import { printablesOf, printInput } from "./printed-files.ts";
import { siteInput } from "./site-input.ts";
import { type BuildSettings, buildParts, type Solved } from "./stages.ts";

/**
 * Makes what a build of the same sources will ask for, in an order of its own, for what is kept of it alone: files as
 * they are parsed, the sums of rigs, what is laid out and painted on paper, and pages. What is wrong with the content is the build's to tell.
 */
export async function makeAhead(
  sources: ReadonlyMap<string, Source>,
  settingsOf: (solved: Solved) => BuildSettings,
  keep: Keep,
  inOrder: InOrder,
): Promise<void> {
  readAhead(sources, keep, inOrder);
  const { value: solved } = await solveChecked(checkSources(sources, keep), keep, "errors", inOrder);
  if (!solved) return;
  const settings = { ...settingsOf(solved), keep };
  const { parts = buildParts } = settings;
  if (!parts.some((part) => part !== "data")) return;
  const drawings = drawPictures(solved.source);
  await printAhead(printInput(solved, drawings, settings), inOrder);
  if (!parts.includes("web")) return;
  const printables = await printablesOf(solved, drawings, settings);
  pagesAhead(siteInput(solved, drawings, printables, settings), inOrder);
}
