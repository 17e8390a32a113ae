import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { Ajv } from "ajv";
import formats from "ajv-formats";
import { beforeAll, describe, expect, it } from "vitest";
import { importsOf } from "../../tools/imports.mjs";
import { siteAssets } from "../support/site-assets.ts";

interface Component {
  readonly type: string;
  readonly "bom-ref": string;
  readonly name: string;
  readonly version: string;
  readonly purl: string;
  readonly author?: string;
  readonly licenses: readonly {
    readonly license: { id?: string; name?: string; text?: { content: string } };
  }[];
}

let bill: { bomFormat: string; specVersion: string; version: number; components: Component[] };
let scripts: string;
beforeAll(async () => {
  const assets = await siteAssets();
  bill = JSON.parse(String(assets.get("licences.cdx.json")));
  scripts = [...assets]
    .flatMap(([name, content]) => (name.endsWith(".js") ? [String(content)] : []))
    .join("\n");
});

const locked = JSON.parse(readFileSync("package-lock.json", "utf8")).packages as Record<
  string,
  { version: string; license: string }
>;

/** The standard's own schemas in JSON, as its library carries them. */
const library = dirname(createRequire(import.meta.url).resolve("@cyclonedx/cyclonedx-library/package.json"));
const schema = (name: string) =>
  JSON.parse(readFileSync(join(library, `res/schema/${name}.SNAPSHOT.schema.json`), "utf8"));

/** Source: CycloneDX 1.6, its schema in JSON; package URLs by the purl specification (from memory). */
describe("the bill of materials of the site", () => {
  it("is CycloneDX by the standard's own schema", () => {
    // What the schema says for readers alone, and addresses in other scripts, which no package here has.
    const ajv = new Ajv({ strict: false, formats: { "iri-reference": true, "idn-email": true } });
    formats.default(ajv);
    for (const name of ["spdx", "jsf-0.82", "cryptography-defs"]) {
      ajv.addSchema(schema(name), `http://cyclonedx.org/schema/${name}.SNAPSHOT.schema.json`);
    }
    const isBill = ajv.compile(schema("bom-1.6"));
    isBill(bill);
    expect(isBill.errors).toBeNull();
    const [first, ...others] = bill.components;
    expect(
      isBill({ ...bill, components: [{ ...first, licenses: [{ license: { id: "no such licence" } }] }] }),
    ).toBe(false);
    expect(isBill({ ...bill, components: [{ ...first, type: "thing" }, ...others] })).toBe(false);
    expect(isBill({ ...bill, version: "1" })).toBe(false);
  });

  it("names each package once, by its package URL", () => {
    expect(bill).toMatchObject({ bomFormat: "CycloneDX", specVersion: "1.6", version: 1 });
    const refs = bill.components.map((component) => component["bom-ref"]);
    expect(new Set(refs).size).toBe(refs.length);
    for (const { type, name, version, purl } of bill.components) {
      expect(type).toBe("library");
      expect(purl).toBe(`pkg:npm/${name.replace("@", "%40")}@${version}`);
    }
  });

  it("has the versions and licences of the lock file, each with its words", () => {
    for (const { name, version, licenses } of bill.components) {
      const versions = Object.entries(locked).filter(([path]) => path.endsWith(`node_modules/${name}`));
      expect(
        versions.map(([, one]) => one.version),
        name,
      ).toContain(version);
      const [{ license } = { license: {} }] = licenses;
      expect(license.id ?? license.name, name).toMatch(/MIT|BSD|Apache|ISC|OFL|MPL|Zlib|0BSD/);
    }
    const wordless = bill.components.filter(({ licenses }) => !licenses[0]!.license.text);
    expect(wordless.map(({ name }) => name)).toEqual([]);
  });

  it("has every package that the scripts are made of", () => {
    const seen = new Set<string>();
    const packages = new Set<string>();
    const follow = (path: string): void => {
      if (seen.has(path)) return;
      seen.add(path);
      for (const { to, inside, typeOnly } of importsOf(process.cwd(), path)) {
        if (typeOnly) continue;
        if (inside) follow(to);
        else packages.add(/^(?:@[^/]+\/)?[^/]+/.exec(to)![0]);
      }
    };
    for (const name of readdirSync("src/browser")) follow(`src/browser/${name}`);
    expect(seen.size).toBeGreaterThan(100);
    expect([...packages]).not.toEqual([]);
    const names = bill.components.map(({ name }) => name);
    expect([...packages].filter((name) => !names.includes(name))).toEqual([]);
  });

  it("names all that the scripts are known to hold, and the fonts", () => {
    const names = bill.components.map(({ name }) => name);
    const known = ["@expo-google-fonts/ibm-plex-sans", "fflate", "minisearch", "uqr"];
    expect(names).toEqual(expect.arrayContaining(known));
    expect(scripts.length).toBeGreaterThan(250_000);
  });
});
