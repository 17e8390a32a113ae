// Bills of materials of what site and tool ship of others: CycloneDX 1.6 as JSON, each with its version and licence text.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Names of the packages that files of a bundle come from. */
function packagesOf(inputs) {
  const names = Object.keys(inputs).flatMap(
    (path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? [],
  );
  return [...new Set(names)].sort();
}

/**
 * @param metafiles what the bundler says went into each bundle
 * @param others names of packages that are shipped without being bundled, such as fonts
 * @param folderOf folder of a package by its name
 */
export function billOfMaterials(metafiles, others, folderOf) {
  const bundled = metafiles.flatMap(({ inputs }) => packagesOf(inputs));
  const names = [...new Set([...bundled, ...others])].sort();
  const { name, version, license } = JSON.parse(readFileSync("package.json", "utf8"));
  const own = { type: "application", "bom-ref": `${name}@${version}`, name, version };
  const bill = {
    bomFormat: "CycloneDX",
    specVersion: "1.6",
    version: 1,
    metadata: { component: { ...own, licenses: [licenceOf(license, ".")] } },
    components: names.map((one) => componentOf(one, folderOf(one))),
  };
  return `${JSON.stringify(bill, null, 1)}\n`;
}

function componentOf(name, folder) {
  const { version, license, author } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const purl = `pkg:npm/${name.replace("@", "%40")}@${version}`;
  const by = typeof author === "string" ? author : author?.name;
  const licenses = [licenceOf(license, folder)];
  return { type: "library", "bom-ref": purl, ...(by && { author: by }), name, version, purl, licenses };
}

/** A licence by its SPDX name, with its words as the package has them. */
function licenceOf(license, folder) {
  const files = readdirSync(folder).filter((name) => /^(?:licen[cs]e|copying)/i.test(name));
  const texts = files.sort().map((file) => readFileSync(join(folder, file), "utf8"));
  const content = texts.join("\n").replaceAll("\r\n", "\n");
  // More than one name, or a choice of them, is an expression, which has no place for words.
  const named = / (?:AND|OR) /.test(license) ? { name: license } : { id: license };
  return { license: { ...named, ...(content !== "" && { text: { contentType: "text/plain", content } }) } };
}
