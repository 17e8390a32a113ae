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
