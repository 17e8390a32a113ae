import type { Element } from "xast";
import { fromXml } from "xast-util-from-xml";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { visit } from "../model/visit.ts";
import { tooMuch } from "./text-limits.ts";

/** Elements that can run a program, load something, or hold a page of their own. Source: SVG 2, W3C, chapters 12, 15 and 16. */
const refused = new Set([
  "script",
  "foreignobject",
  "iframe",
  "audio",
  "video",
  "canvas",
  "handler",
  "embed",
  "object",
]);

/** What would make a drawing unsafe on a page, or unreadable, each at its place. */
export function svgProblems(text: string, file: string): readonly Message[] {
  if (text.length > limits.svgSigns.most) return [tooMuch("svgSigns", text.length, { file })];
  const told = (place: Place, reason: string, hint: string) =>
    message("image-not-usable", place, { reason: `the drawing cannot be shown: ${reason}`, hint });
  // A drawing has no use for a document type, whose entities can multiply without end.
  if (/<!doctype/i.test(text) && /<!entity/i.test(text))
    return [told({ file }, "it declares entities", "save it as plain SVG")];
  let tree: ReturnType<typeof fromXml>;
  try {
    tree = fromXml(text);
  } catch (error) {
    const { line, column, reason } = error as { line?: number; column?: number; reason?: string };
    const place = { file, ...(line !== undefined && { line, column: column ?? 1 }) };
    return [told(place, `it is no SVG: ${reason ?? error}`, "save it anew as plain SVG")];
  }
  const messages: Message[] = [];
  let root: Element | undefined;
  visit(tree, "element", (node) => {
    root ??= node;
    const { line, column } = node.position!.start;
    const place = { file, line, column };
    const name = node.name.replace(/^.*:/, "").toLowerCase();
    if (refused.has(name)) {
      messages.push(told(place, `it has a <${node.name}>`, "take it out; a drawing runs and loads nothing"));
    }
    for (const [key, value] of Object.entries(node.attributes)) {
      const wrong = wrongAttribute(key, value ?? "");
      if (wrong)
        messages.push(told(place, `${wrong} in its <${node.name}>`, "take it out, or set it into the file"));
    }
    if (name === "style" && /@import|url\(\s*["']?(?!#)/i.test(textIn(node)))
      messages.push(told(place, "its style loads something from elsewhere", "set it into the file"));
  });
  if (root?.name.replace(/^.*:/, "") !== "svg")
    return [told({ file }, "it is no SVG", "save it anew as plain SVG")];
  return messages;
}

function wrongAttribute(key: string, value: string): string | undefined {
  if (/^on/i.test(key)) return `"${key}" runs a program`;
  const isLink = /^(?:xlink:)?href$/i.test(key);
  if (isLink && !/^\s*(?:#|data:image\/(?:png|jpeg);)/i.test(value)) return "a link leads elsewhere";
  return /url\(\s*["']?(?!["']?#)/i.test(value) ? `"${key}" loads something from elsewhere` : undefined;
}

const textIn = (node: Element): string =>
  node.children.map((child) => ("value" in child ? child.value : "")).join("");
