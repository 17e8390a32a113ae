import { describe, expect, it } from "vitest";
import { ChangingContentError, readSources, type World } from "../../src/content/world.ts";

/** A folder of two files of which somebody changes some after a number of reads. */
function changing(edits: Readonly<Record<number, Readonly<Record<string, string | undefined>>>>): World {
  let reads = 0;
  const files: Record<string, string | undefined> = { "a.md": "old", "b.md": "old" };
  return {
    list: async () =>
      Object.keys(files)
        .filter((path) => files[path] !== undefined)
        .map((path) => ({ path, bytes: 3 })),
    readBytes: async () => undefined,
    readText: async (path) => {
      const text = files[path.replace("content/", "")];
      Object.assign(files, edits[++reads]);
      return text;
    },
  };
}

const texts = async (world: World) =>
  [...(await readSources(world, ["content"])).values()].map(({ path, text }) => `${path} ${text}`);

describe("content that is changed while it is read", () => {
  it("is read again, so that nothing of before is mixed with what is new", async () => {
    expect(await texts(changing({ 1: { "a.md": "new", "b.md": "new" } }))).toEqual(["a.md new", "b.md new"]);
    expect(await texts(changing({ 3: { "a.md": "new", "b.md": "new" } }))).toEqual(["a.md new", "b.md new"]);
  });

  it("may lose a file, or get one", async () => {
    expect(await texts(changing({ 1: { "b.md": undefined } }))).toEqual(["a.md old"]);
    expect(await texts(changing({ 2: { "c.md": "new" } }))).toEqual(["a.md old", "b.md old", "c.md new"]);
  });

  it("is read once more only where it keeps still", async () => {
    let reads = 0;
    const world = changing({});
    const counting = (path: string) => {
      reads++;
      return world.readText(path);
    };
    await readSources({ ...world, readText: counting }, ["content"]);
    expect(reads).toBe(4);
  });

  it("is given up where it never keeps still, by the name of what changes", async () => {
    let edition = 0;
    const restless: World = {
      list: async () => [{ path: "a.md", bytes: 1 }],
      readBytes: async () => undefined,
      readText: async () => String(edition++),
    };
    const given = await readSources(restless, ["content"]).catch((error) => error);
    expect(given).toBeInstanceOf(ChangingContentError);
    expect(given.message).toBe("changed each time it was read: content/a.md");
  });
});

describe("a guide that refuses the library", () => {
  /** Files that are read of the library for a guide that says this of it. */
  async function readOf(choice: string): Promise<string[]> {
    const files: Readonly<Record<string, string>> = {
      "own/guide.yaml": choice,
      "library/words/en.yaml": "a: A\n",
      "library/rigs/plain.md": "text",
      "library-de/rigs/plain.md": "Text",
    };
    const opened = new Set<string>();
    const world: World = {
      list: async (folder) =>
        Object.keys(files)
          .filter((path) => path.startsWith(`${folder}/`))
          .map((path) => ({ path: path.slice(folder.length + 1), bytes: 4 })),
      readBytes: async () => undefined,
      readText: async (path) => {
        opened.add(path);
        return files[path];
      },
    };
    await readSources(world, ["own"], "library");
    return [...opened].filter((path) => path.startsWith("library")).sort();
  }

  it("has its fixed words and nothing else read of it", async () => {
    expect(await readOf("library: none\n")).toEqual(["library/words/en.yaml"]);
    expect(await readOf("library: none\nlanguage: de\n")).toEqual(["library/words/en.yaml"]);
  });

  it("is no other: of the rest all is read, in its language", async () => {
    expect(await readOf("title: Mine\n")).toEqual(["library/rigs/plain.md", "library/words/en.yaml"]);
    const inGerman = ["library-de/rigs/plain.md", "library/words/en.yaml"];
    expect(await readOf("language: de\n")).toEqual(inGerman);
    expect(await readOf("")).toEqual(["library/rigs/plain.md", "library/words/en.yaml"]);
  });
});
