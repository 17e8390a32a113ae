import { existsSync, readdirSync } from "node:fs";

/** Names of the files in a folder that end so, in their order; none where there is no such folder. */
export const namesIn = (folder: string, ending: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith(ending))
        .sort()
    : [];
