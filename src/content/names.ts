/** What is wrong with the name of a file, as its message says it. */
interface NameProblem {
  readonly reason: string;
  readonly hint: string;
}

/** Devices of one system that open in place of a file of that name. Source: Microsoft, Naming Files, Paths, and Namespaces. */
const devices = /^(?:con|prn|aux|nul|conin|conout|com\d|lpt\d)$/;

const hint = "call it by letters, digits, - and _ only, such as first-knots";

/**
 * Why a file may not be called so, or undefined where it may. Its name becomes an address, an anchor and part of other
 * files' names, on every system and on every host: what one of them reads in a way of its own is refused.
 *
 * @param name without its ending
 */
export function nameProblem(name: string): NameProblem | undefined {
  const plain = name.normalize("NFC");
  const odd = [...plain].find((sign) => !/[\p{L}\p{M}\p{N}_-]/u.test(sign));
  if (odd !== undefined) return { reason: `the file's name has ${signShown(odd)} in it`, hint };
  if (!/^[\p{L}\p{N}_]/u.test(plain))
    return { reason: "the file's name does not start with a letter or digit", hint };
  if (devices.test(folded(plain))) {
    return { reason: "some systems keep this name for a device", hint: "call the file something else" };
  }
  return undefined;
}

/** A sign by its look where it has one that is safe to print, and by its number. */
function signShown(sign: string): string {
  const number = `U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;
  if (sign === " ") return `a space (${number})`;
  return /[\p{C}\p{Z}\p{M}]/u.test(sign) ? number : `"${sign}" (${number})`;
}

/** A name as the least discerning system tells it from others: without case, and in one form of each letter. */
export function folded(name: string): string {
  return name.normalize("NFKC").toUpperCase().toLowerCase().normalize("NFKC");
}
