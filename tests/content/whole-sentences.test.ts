import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";

interface Trouble {
  readonly sign: string;
  readonly causes: readonly string[];
  readonly do: readonly string[];
}

// YAML 1.2.2, 7.4.1: a comma parts the entries of a flow sequence, unless it stands in quotes.
test.each(["content", "content-de"])("no sentence of %s/troubles.yaml is cut at its comma", (folder) => {
  const troubles = parse(readFileSync(`${folder}/troubles.yaml`, "utf8")) as readonly Trouble[];
  const texts = troubles.flatMap((trouble) => [...trouble.causes, ...trouble.do]);
  expect(texts.length).toBeGreaterThan(50);
  expect(texts.filter((text) => !/^\p{Lu}.*[.?!]$/u.test(text))).toEqual([]);
});
