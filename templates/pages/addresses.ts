import { sitePaths } from "./view.ts";

/** Where a file below `site/` is found once the site is served. */
export function publicAddress(path: string, siteAddress: string): string {
  const base = siteAddress.endsWith("/") ? siteAddress : `${siteAddress}/`;
  return new URL(path.replace(/^site\//, ""), base).href;
}

/**
 * Page that shows a file of the content folder, or undefined where none does. Authors may write a link as the file
 * (`../rigs/stick.md`) or as the page (`../rigs/stick.html`).
 */
export function pageOfContent(contentPath: string): string | undefined {
  const [, folder = "pages", id] = /^(?:([\w-]+)\/)?([\w-]+)\.(?:md|yaml|html)$/.exec(contentPath) ?? [];
  if (id === undefined) return undefined;
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
