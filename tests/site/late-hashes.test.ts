import { expect, test } from "vitest";
import type { SiteInput } from "../../src/site/input.ts";
import { loadedBy, withHashes, withoutHashes } from "../../src/site/late-hashes.ts";

const stamped = new Map([
  ["site/assets/rig.js", "site/assets/rig.0a1b.js"],
  ["site/assets/site.css", "site/assets/site.2c3d.css"],
  ["site/data/rig.js", "site/data/rig.4e5f.js"],
]);
const input = { stamped } as Partial<SiteInput> as SiteInput;

/** A page as it names what it loads: from its own folder, two in one attribute. */
const page = (names: ReadonlyMap<string, string>) => {
  const to = (path: string) => names.get(path)!.replace("site/", "../");
  return `<link href="${to("site/assets/site.css")}"><p data-scripts="${to("site/assets/rig.js")} ${to("site/data/rig.js")}">zz</p>`;
};

test("a page is the same with its hashes at once and put in at last, and tells what it loads", () => {
  const kept = page(withoutHashes(input).stamped!);
  expect(kept).not.toContain("0a1b");
  expect(loadedBy(kept)).toEqual(["site/assets/site.css", "site/assets/rig.js", "site/data/rig.js"]);
  expect(withHashes(kept, input)).toBe(page(stamped));
});

test("without hashes a page stays as it is", () => {
  const plain = {} as SiteInput;
  expect(withoutHashes(plain)).toBe(plain);
  const html = page(new Map([...stamped.keys()].map((path) => [path, path])));
  expect(loadedBy(html)).toEqual([]);
  expect(withHashes(html, plain)).toBe(html);
});

test("a page that loads what there is not is a fault", () => {
  const kept = page(withoutHashes(input).stamped!);
  expect(() => withHashes(kept, { stamped: new Map() } as Partial<SiteInput> as SiteInput)).toThrow(
    RangeError,
  );
});
