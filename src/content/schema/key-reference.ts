import { fileKinds } from "./file-kinds.ts";
import { keysOf } from "./json-schema.ts";
import type { FileKind } from "./key-notes.ts";

/** Every key of every kind of file as a text to read, in Markdown. */
export function keyReference(): string {
  const kinds = Object.keys(fileKinds) as FileKind[];
  const head =
    "# Every key of every file\n\nMade by `dotdown schema --keys`. Keys with a star may not be left out.\n";
  return [head, ...kinds.map(sectionOf)].join("\n");
}

function sectionOf(kind: FileKind): string {
  const { folder, ending } = fileKinds[kind];
  const file = folder ? `${folder}/*${ending}` : `${kind}${ending}`;
  const rows = keysOf(kind).map(
    ({ path, form, description, isRequired }) =>
      `| \`${path}\`${isRequired ? "\\*" : ""} | ${description} | ${form} |`,
  );
  return `## \`${file}\`\n\n| key | what it means | what may stand there |\n| --- | --- | --- |\n${rows.join("\n")}\n`;
}
