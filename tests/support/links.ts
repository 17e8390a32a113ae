import { posix } from "node:path";

/**
 * Links of the pages among these files (path → content) that lead to no file, no anchor, or another host than the
 * guide's own, whose folder is `site/`.
 */
export function brokenLinks(files: ReadonlyMap<string, string | Uint8Array>, siteAddress?: string): string[] {
  const idsOf = new Map<string, Set<string>>();
  for (const [path, content] of files) {
    if (path.endsWith(".html")) {
      idsOf.set(path, new Set([...String(content).matchAll(/\sid="?([^"\s>]+)/g)].map((match) => match[1]!)));
    }
  }
  const broken: string[] = [];
  for (const path of idsOf.keys()) {
    for (const [, address] of String(files.get(path)).matchAll(/\s(?:href|src|action)="([^"]*)"/g)) {
      // A page may be asked for something, such as a rig: it is there all the same.
      const [target = "", anchor] = address!
        .replace(/&(?:amp|#x26);/g, "&")
        .replace(/\?[^#]*/, "")
        .split("#");
      if (siteAddress !== undefined && target.startsWith(siteAddress)) {
        if (!files.has(target.replace(siteAddress, "site/"))) broken.push(`${path}: ${address}`);
        continue;
      }
      const file = target === "" ? path : fileAt(target, path, siteAddress);
      const known = files.has(file) && (anchor === undefined || idsOf.get(file)?.has(anchor) === true);
      if (!known) broken.push(`${path}: ${address}`);
    }
  }
  return broken;
}

/** The file that a relative address leads to, or one from the root of the host that the guide is served at. */
function fileAt(target: string, from: string, siteAddress: string | undefined): string {
  if (!target.startsWith("/")) return posix.join(posix.dirname(from), target);
  const root = siteAddress === undefined ? "/" : new URL(siteAddress).pathname;
  return target.startsWith(root) ? `site/${target.slice(root.length)}` : target;
}
