/** A figure or picture of a rig at a depth, from its braces on. */
export const bracesOf = (id: string) => new RegExp(`\\{[^}\\n]*\\brig="?${id}(?![\\w-])[^}\\n]*\\}`, "g");
const depthIn = /\bdepth="([^"]*)"/;

/**
 * A copied rig's text, with its figures at whatever depth comes first, so that it stays right when the depths are changed. A
 * text that has them at several depths is left as it is: it may compare them.
 *
 * @param id the rig whose text it is
 */
export function atFirstDepth(text: string, id: string): string {
  const typed = new Set(
    [...text.matchAll(bracesOf(id))].flatMap(([braces]) => depthIn.exec(braces)?.[1] ?? []),
  );
  const [depth, ...others] = typed;
  if (depth === undefined || others.length > 0) return text;
  const named = new RegExp(`(?<![\\d.,])${depth.replace(".", "[.,]")}(?!\\w)`, "g");
  const sentences = text.split(/(?<=[.!?]\s)/).map((sentence) => {
    const tells = [...sentence.matchAll(bracesOf(id))].some(([braces]) => depthIn.test(braces));
    if (!tells) return sentence;
    // What stands in braces is no prose.
    const parts = sentence.split(/(\{[^}]*\})/);
    const figure = `:figure[]{rig=${id} depth=first of=depth}`;
    return parts.map((part) => (part.startsWith("{") ? part : part.replace(named, figure))).join("");
  });
  return sentences.join("").replace(bracesOf(id), (braces) => braces.replace(depthIn, "depth=first"));
}

/** A depth or a distance as texts type it. */
const metresTyped = /(?<![\d.,])\d+(?:[.,]\d+)? (?:m|ft)(?!\w)/;

/** Lines of a text that name metres or feet by hand, with their numbers from 1: of another water they may be wrong. */
export function linesWithDepths(text: string): readonly { readonly line: number; readonly text: string }[] {
  const lines = text.split("\n").map((one, at) => ({ line: at + 1, text: one.trim() }));
  const body = lines.findIndex(({ text: one }, at) => at > 0 && one === "---");
  return lines.filter(
    ({ line, text: one }) =>
      metresTyped.test(one.replace(/\{[^}]*\}/g, "")) && (line > body || /^(?:- [^{]|purpose:)/.test(one)),
  );
}
