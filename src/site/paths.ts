import { posix } from "node:path";

/** Address of one file as seen from another, both below the output folder; an anchor stays. */
export function relativeHref(from: string, target: string): string {
  const [path = "", anchor] = target.split("#");
  const hash = anchor === undefined ? "" : `#${anchor}`;
  if (path === "" || path === from) return hash === "" ? posix.basename(from) : hash;
  return posix.relative(posix.dirname(from), path) + hash;
}
