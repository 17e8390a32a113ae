// What files take from others.
import { readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { parseSync } from "oxc-parser";

export function importsOf(root, path) {
  const text = readFileSync(join(root, path), "utf8");
  const { staticImports, staticExports } = parseSync(path, text).module;
  const statements = [
    ...staticImports.map(({ moduleRequest, entries }) => [moduleRequest, entries]),
    ...staticExports.map(({ entries }) => [entries[0]?.moduleRequest, entries]),
  ];
  const stated = statements.flatMap(([request, entries]) => {
    if (!request) return [];
    const names = entries.map(({ importName }) => importName.name ?? "default");
    const whole = entries.some(({ importName }) => /^(?:NamespaceObject|All)/.test(importName.kind));
    const typeOnly = entries.length > 0 && entries.every(({ isType }) => isType);
    return [{ ...placeOf(request.value, path), names: whole ? undefined : names, typeOnly }];
  });
  const asked = [...text.matchAll(/\bimport\("([^"\s]+)"\)/g)].map(([, target]) => ({
    ...placeOf(target, path),
    typeOnly: false,
  }));
  return [...stated, ...asked];
}

function placeOf(target, path) {
  const inside = target.startsWith(".");
  return { inside, to: inside ? normalize(join(dirname(path), target)).replaceAll("\\", "/") : target };
}
