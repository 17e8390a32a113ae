import type { Nodes } from "mdast";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { isOurSign } from "../model/our-signs.ts";
import { isJoined, type OwnFont } from "../model/own-font.ts";
import { positionOf } from "../model/source-position.ts";
import { visit } from "../model/visit.ts";
import { beyondInKey, beyondInValue, tooMuch, tooMuchToLayOut } from "./text-limits.ts";
import type { Source } from "./world.ts";
import type { YamlSource } from "./yaml-source.ts";

/**
 * What the values of a YAML text hold that cannot be set: too many words or levels, or signs that the fonts lack. One
 * message a value.
 */
export function checkValues(yaml: YamlSource, source: Source, font?: OwnFont): readonly Message[] {
  const messages: Message[] = [];
  const look = (value: unknown, path: readonly (string | number)[]): void => {
    if (path.length > limits.depth.most) {
      // An alias within what it stands for has no end.
      if (messages.length === 0)
        messages.push(tooMuch("depth", path.length, yaml.placeOf(path.slice(0, -1))));
      return;
    }
    if (typeof value === "string") {
      const key = source.path.startsWith("words/") ? undefined : path.at(-1);
      messages.push(...checkValue(value, key, () => yaml.placeOf(path), source, font));
      if (mustSay(value, path, source)) {
        const named = String(path.findLast((step) => typeof step === "string") ?? "the entry");
        messages.push(
          message("not-valid", yaml.placeOf(path), { key: named, problem: "nothing can be read in it" }),
        );
      }
    }
    if (typeof value !== "object" || value === null) return;
    if (Array.isArray(value) && value.length > limits.listEntries.most) {
      messages.push(tooMuch("listEntries", value.length, yaml.placeOf(path)));
      return;
    }
    for (const [key, inner] of Object.entries(value)) {
      if (messages.length > limits.depth.most) return;
      look(inner, [...path, Array.isArray(value) ? Number(key) : key]);
    }
  };
  look(yaml.data, []);
  return messages;
}

/** Whether a value says nothing that should say something: notes may be empty, and words of a language a space. */
const mustSay = (value: string, path: readonly (string | number)[], source: Source): boolean =>
  !/[^\s\u00a0]/.test(value) &&
  !["note", "notes"].includes(String(path.at(-1))) &&
  !source.path.startsWith("words/");

/** @param placeOf is asked only where something is wrong: finding a place among all keys takes its time */
function checkValue(
  value: string,
  key: string | number | undefined,
  placeOf: () => Place,
  source: Source,
  font: OwnFont | undefined,
): readonly Message[] {
  const beyond = beyondInValue(value) ?? beyondInKey(key, value);
  if (beyond) return [tooMuch(beyond.limit, beyond.found, placeOf())];
  const signs = missingSigns(value, font);
  return signs.length === 0 ? [] : [noSign(signs, placeOf(), source, font)];
}

/** What keeps a text from being laid out. */
export function checkText(body: Nodes, source: Source, font?: OwnFont): readonly Message[] {
  const beyond = tooMuchToLayOut(body, source.file);
  return beyond ? [beyond] : checkSigns(body, source, font);
}

/** Signs of a text that the fonts lack: a message a piece, at the first of them. */
function checkSigns(body: Nodes, source: Source, font?: OwnFont): readonly Message[] {
  const messages: Message[] = [];
  visit(body, (node) => {
    if (!("value" in node) || node.type === "html") return;
    const signs = missingSigns(node.value, font);
    if (signs.length === 0) return;
    const { line, column } = positionOf(node).start;
    messages.push(noSign(signs, { file: source.file, line, column }, source, font));
  });
  return messages;
}

function noSign(signs: readonly string[], from: Place, source: Source, font: OwnFont | undefined): Message {
  const [sign, ...others] = signs as readonly [string, ...string[]];
  const code = sign.codePointAt(0)!;
  const number = `U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
  const values = { sign, number, others, isJoined: isJoined(code), ...(font && { font: font.id }) };
  return message("no-sign", placeOfSign(sign, from, source), values);
}

/** Ends of lines, indents, and a hyphen that shows at the end of a line only: layout takes them out. */
const takenOut = new Set([..."\n\r\t\u00ad"].map((sign) => sign.codePointAt(0)!));

/** The signs of a text that no face has, each once. */
function missingSigns(text: string, font: OwnFont | undefined): readonly string[] {
  const missing = new Set<string>();
  for (const sign of text.normalize("NFC")) {
    const code = sign.codePointAt(0)!;
    if (!isOurSign(code) && !takenOut.has(code) && !font?.signs.has(code)) missing.add(sign);
  }
  return [...missing];
}

/** Where a sign stands in its file, from a place on; that place where it is written in another way, such as an escape. */
function placeOfSign(sign: string, from: Place, { text }: Source): Place {
  const lines = text.split(/\r\n?|\n/);
  const { line = 1, column = 1 } = from;
  for (let at = line - 1; at < lines.length; at++) {
    const found = lines[at]!.indexOf(sign, at === line - 1 ? column - 1 : 0);
    if (found >= 0) return { file: from.file, line: at + 1, column: found + 1 };
  }
  return from;
}
