import { posix } from "node:path";
import { sitePaths } from "../../templates/pages/view.ts";

/** Address of one file as seen from another, both below the output folder; an anchor stays. */
export function relativeHref(from: string, target: string): string {
  const [path = "", anchor] = target.split("#");
  const hash = anchor === undefined ? "" : `#${anchor}`;
  if (path === "" || path === from) return hash === "" ? posix.basename(from) : hash;
  return posix.relative(posix.dirname(from), path) + hash;
}

/**
 * Page that shows a content file, or undefined where none does: authors link `../rigs/stick.md`, readers get
 * `../rigs/stick.html`.
 */
export function pageOfContent(contentPath: string): string | undefined {
  const [, folder, id] = /^([\w-]+)\/([\w-]+)\.(?:md|yaml)$/.exec(contentPath) ?? [];
  if (folder === undefined || id === undefined) return undefined;
  const pages: Record<string, string> = {
    rigs: sitePaths.rig(id),
    lessons: sitePaths.lesson(id),
    pages: sitePaths.page(id),
    floats: `${sitePaths.floats}#${id}`,
    shot: `${sitePaths.shot}#${id}`,
    baits: `${sitePaths.baits}#${id}`,
    knots: `${sitePaths.knots}#${id}`,
  };
  return pages[folder];
}
