/** By what readers know it, which may stand where its name should. */
export function titleOf(entry: unknown): string | undefined {
  if (typeof entry !== "object" || entry === null) return undefined;
  if ("bait" in entry) return titleOf(entry.bait);
  return "title" in entry ? String(entry.title) : undefined;
}

/** Where the file stands of what is looked up by its name, and what it ends in. */
export const filesOf: Readonly<Record<string, readonly [folder: string, ending: string]>> = {
  float: ["floats", ".yaml"],
  bait: ["baits", ".yaml"],
  knot: ["knots", ".yaml"],
  tub: ["tubs", ".yaml"],
  "shot scale": ["shot", ".yaml"],
  rig: ["rigs", ".md"],
  swim: ["swims", ".yaml"],
};

/** Name of a file without folder and ending, in the one form of its letters that addresses have. */
export function fileId(path: string): string {
  return path
    .replace(/^.*\//s, "")
    .replace(/\.\w+$/, "")
    .normalize("NFC");
}
