/** A value of a PDF file; a plain string is a name. Source: ISO 32000-1, section 7.3. */
export type PdfValue = number | boolean | null | string | PdfString | PdfRef | PdfList | PdfDict;

type PdfList = readonly PdfValue[];

export interface PdfDict {
  readonly [name: string]: PdfValue | undefined;
}

/** Refers to an object by its number. */
export class PdfRef {
  constructor(readonly number: number) {}
}

/** A string as it is written, with its brackets. */
export class PdfString {
  private constructor(readonly written: string) {}

  /** Words of any language. */
  static text(text: string): PdfString {
    let digits = "FEFF";
    for (let i = 0; i < text.length; i++) digits += hex4(text.charCodeAt(i));
    return new PdfString(`<${digits}>`);
  }

  /** Signs of ASCII alone. */
  static ascii(text: string): PdfString {
    return new PdfString(`(${text.replace(/[\\()]/g, "\\$&")})`);
  }

  static hex(digits: string): PdfString {
    return new PdfString(`<${digits}>`);
  }
}

export function hex4(number: number): string {
  return number.toString(16).toUpperCase().padStart(4, "0");
}

/** A value as it stands in a file. */
export function written(value: PdfValue): string {
  if (typeof value === "number") return decimal(value, 4);
  if (typeof value === "string") return `/${value.replace(/[^!-~]|[#()<>[\]{}/%]/g, escapedSign)}`;
  if (value === null || typeof value === "boolean") return String(value);
  if (value instanceof PdfRef) return `${value.number} 0 R`;
  if (value instanceof PdfString) return value.written;
  if (isList(value)) return `[${value.map(written).join(" ")}]`;
  let entries = "";
  for (const name in value) {
    const one = value[name];
    if (one !== undefined) entries += `/${name} ${written(one)}`;
  }
  return `<<${entries}>>`;
}

function isList(value: PdfList | PdfDict): value is PdfList {
  return Array.isArray(value);
}

const escapedSign = (sign: string) => `#${sign.charCodeAt(0).toString(16).padStart(2, "0")}`;

/** A number with so many decimals at most, and never an exponent. */
export function decimal(value: number, places: number): string {
  const factor = 10 ** places;
  const rounded = Math.round(value * factor) / factor;
  const text = String(rounded || 0);
  return text.includes("e") ? rounded.toFixed(places).replace(/\.?0+$/, "") : text;
}
