import { parseSync } from "oxc-parser";

/**
 * A module of a bundle as a script, whose value is a function that runs it and gives what it exports; each line stays where it is.
 * The engine compiles a script from what it compiled before, which it does for no module.
 */
export function asScript(name, code) {
  const { errors, module } = parseSync(name, code);
  if (errors.length > 0) throw new Error(`${name}: ${errors[0].message}`);
  const edits = [
    ...module.staticImports.map(({ start, end, moduleRequest, entries }) => ({
      start,
      end,
      text: asLoad(moduleRequest.value, entries),
    })),
    ...exportsOf(module, code),
    ...module.dynamicImports.map(({ start }) => ({
      start,
      end: start + "import".length,
      text: "loadLater",
    })),
    ...module.importMetas.map(({ start, end }) => ({ start, end, text: "meta" })),
  ].sort((a, b) => a.start - b.start);
  let script = "";
  let at = 0;
  for (const { start, end, text } of edits) {
    const lines = code.slice(start, end).split("\n").length - 1;
    script += code.slice(at, start) + text + "\n".repeat(lines);
    at = end;
  }
  return inAscii(
    `(function (load, loadLater, require, meta) { "use strict"; ${script}${code.slice(at).replace(/\n?(\/\/# sourceMappingURL=.*)?\s*$/, "\n})\n$1\n")}`,
  );
}

/** What is no script of ours is its own default export. */
function asLoad(from, entries) {
  const load = `load(${JSON.stringify(from)});`;
  if (entries.length === 0) return load;
  const isOurs = from.startsWith("./");
  const parts = [];
  const wholes = [];
  for (const { importName, localName } of entries) {
    const name = importName.name ?? (importName.kind === "Default" ? "default" : undefined);
    if (name === undefined || (name === "default" && !isOurs)) wholes.push(localName.value);
    else parts.push(name === localName.value ? name : `${name}: ${localName.value}`);
  }
  const one = parts.length > 0 ? [`{ ${parts.join(", ")} }`] : [];
  return [...wholes, ...one].map((name) => `var ${name} = ${load}`).join(" ");
}

/** The bundler writes all exports of a module as one list behind it, be they its own or of another. */
function exportsOf({ staticImports, staticExports }, code) {
  const entries = staticExports.flatMap((one) => one.entries);
  if (entries.length === 0) return [];
  const localOf = ({ moduleRequest, importName, localName }) =>
    localName.name ??
    staticImports
      .find((one) => one.moduleRequest.value === moduleRequest.value)
      .entries.find((one) => one.importName.name === importName.name).localName.value;
  const names = entries.map((one) => `${one.exportName.name ?? "default"}: ${localOf(one)}`);
  const start = code.lastIndexOf("export", Math.min(...entries.map((one) => one.start)));
  const end = code.indexOf(";", start) + 1;
  return [{ start, end, text: `return { ${names.join(", ")} };` }];
}

/** The bundler leaves other signs in regular expressions and comments alone, where they may be written so. A script without any is held, and read, as one byte a sign. */
const inAscii = (script) =>
  script.replace(/[^\0-\x7f]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`);
