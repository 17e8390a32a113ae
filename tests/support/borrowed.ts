import type { World } from "../../src/content/world.ts";

type Files = Readonly<Record<string, string>>;

/** A world with a guide of one's own in `content`, and the library that it borrows from in `library`, in any language. */
export function borrowing(own: Files, library: Files): World {
  const below: Readonly<Record<string, Files>> = { content: own, library, "library-de": library };
  return {
    list: async (folder) =>
      Object.entries(below[folder]!)
        .map(([path, text]) => ({ path, bytes: Buffer.byteLength(text) }))
        .sort((a, b) => (a.path < b.path ? -1 : 1)),
    readText: async (path) => {
      const [folder, ...rest] = path.split("/");
      return below[folder!]![rest.join("/")];
    },
    readBytes: async () => undefined,
  };
}
