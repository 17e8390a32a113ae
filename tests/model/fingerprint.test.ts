import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { storeInMemory } from "../../src/cli/crew/shared-store.ts";
import { fingerprintOf, fingerprintOfFile, keptFile, movedTo } from "../../src/model/fingerprint.ts";
import { keeping } from "../../src/model/kept.ts";

test("content is told by its size in bytes and its SHA-256, be it text or bytes", () => {
  const sha256 = createHash("sha256").update(Buffer.from("één")).digest("hex");
  expect(fingerprintOf("één")).toEqual({ bytes: 5, sha256 });
  expect(fingerprintOf(new TextEncoder().encode("één"))).toEqual({ bytes: 5, sha256 });
});

test("a file that was kept is known, moved and told of without being read", () => {
  const store = storeInMemory();
  const read: string[] = [];
  const find: typeof store.find = (kind, from) => {
    read.push(kind);
    return store.find(kind, from);
  };
  const file = () => keptFile("a/b", keeping({ ...store, find }), "page", "of this", () => "words");
  expect(file().content).toBe("words");
  read.length = 0;
  const moved = movedTo("c/b", file());
  expect(moved.path).toBe("c/b");
  expect(fingerprintOfFile(moved)).toEqual(fingerprintOf("words"));
  expect(read).toEqual(["page, told"]);
  expect(moved.content).toBe("words");
  expect(read).toEqual(["page, told", "page"]);
});

test("a file that is not known is read to be told of", () => {
  expect(fingerprintOfFile({ content: "words" })).toEqual(fingerprintOf("words"));
});
