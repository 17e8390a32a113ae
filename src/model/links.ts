import { first } from "../core/lists.ts";
import { pagePlaces } from "./content-addresses.ts";

/** Where a link of a text leads. */
type Link =
  /** Out of the guide, as a whole address with nothing but plain signs in it. */
  | { readonly kind: "outside"; readonly address: string }
  /** To a page of the guide; nobody has looked yet whether it is there. */
  | { readonly kind: "page"; readonly page: string; readonly anchor?: string }
  /** To a file that is none of the content's. */
  | { readonly kind: "no page"; readonly folder: string; readonly name: string }
  /** With a scheme that a guide does not follow. */
  | { readonly kind: "scheme"; readonly scheme: string }
  /** With a scheme, but no address behind it. */
  | { readonly kind: "no address" };

/** Schemes that lead out of a guide. Any other could run or read something on a reader's machine. */
export const linkSchemes = ["http", "https", "mailto"] as const;

/** Folder and name of a text's file: all that its links depend on of where the content lies. */
export const linksStartIn = (textPath: string) => textPath.split("/").slice(-2);

/**
 * Reads a link; the one way to do so, for checks, pages and paper alike. Authors may write a link as a file of the
 * content (`../rigs/stick.md`) or as its page (`../rigs/stick.html`), as it is or with its signs encoded. Whatever is
 * not understood leads nowhere; nothing is thrown.
 *
 * @param url as it stands in the text
 * @param textPath path of the file it stands in; its last folder says what it is, and links start from there
 */
export function parseLink(url: string, textPath: string): Link {
  if (url.trim() === "") return { kind: "no address" };
  const scheme = /^([a-z][a-z\d+.-]*):/i.exec(url)?.[1]?.toLowerCase();
  if (scheme === undefined) return linkWithin(url, textPath);
  if (!linkSchemes.some((allowed) => allowed === scheme)) return { kind: "scheme", scheme };
  const address = wholeAddress(url);
  return address === undefined ? { kind: "no address" } : { kind: "outside", address };
}

function wholeAddress(url: string): string | undefined {
  if (!URL.canParse(url)) return undefined;
  const { href, protocol, hostname, pathname } = new URL(url);
  return (protocol === "mailto:" ? pathname : hostname) === "" ? undefined : href;
}

function linkWithin(url: string, textPath: string): Link {
  const plain = decoded(url).normalize("NFC");
  const [file = "", anchor] = plain.split(/#(.*)/s);
  const own = linksStartIn(textPath);
  const [folder = "", name = ""] = file === "" ? own : resolved(first(own), file);
  const [, id, ending] = /^([\p{L}\p{M}\p{N}_-]+)\.(md|yaml|html)$/u.exec(name) ?? [];
  const target = id === undefined || ending === undefined ? undefined : pagePlaces.get(folder)?.(id);
  if (!target) return { kind: "no page", folder, name };
  const place = anchor ?? target.entry;
  return { kind: "page", page: target.page, ...(place !== undefined && place !== "" && { anchor: place }) };
}

function decoded(url: string): string {
  try {
    return decodeURIComponent(url);
  } catch {
    return url;
  }
}

/** Folder and file that a path leads to from a folder of the content; pages of the site's top stand in `pages`. */
function resolved(folder: string, path: string): readonly [string, string] {
  const steps = [folder];
  for (const step of path.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  const name = steps.pop() ?? "";
  return [steps.length === 0 ? "pages" : steps.join("/"), name];
}
