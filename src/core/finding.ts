import { findingTable, type ValueKind } from "./finding-table.ts";

/** Names what was found: a row of `findingTable`, and a sentence in `content/words` under `reason.`. */
export type FindingCode = keyof typeof findingTable;

/** A shot as far as a load is told. */
export interface ToldShot {
  readonly size: string;
  readonly massG: number;
}

/** What a value of a kind is; numbers are in the unit at the end of their names. */
type ValueOf<K> = K extends "text" ? string : K extends "shot" ? readonly ToldShot[] : number;

export type FindingValue = ValueOf<ValueKind>;

/** Values that fill the gaps of a code's sentence. */
export type FindingValues<C extends FindingCode> = {
  readonly [N in keyof (typeof findingTable)[C]["values"]]: ValueOf<(typeof findingTable)[C]["values"][N]>;
};

/**
 * What the core says when a figure cannot be had or should not be trusted. The core never words it: that is done from
 * its code and values. An error means no answer; a warning comes with one.
 */
export type Finding = {
  [C in FindingCode]: {
    readonly code: C;
    readonly severity: "error" | "warning";
    readonly values: FindingValues<C>;
  };
}[FindingCode];

/** An answer with what was found on the way; `value` is missing exactly when one of the findings is an error. */
export type Answer<T> =
  | { readonly ok: true; readonly value: T; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/**
 * An answer, with any warnings met; where an error is among them there is none. Every answer of the core is made here,
 * and none holds a figure that is no number or has no end: figures that are far out of sense make it a reason instead.
 * Only a count in a tub may have no end.
 */
export function answer<T>(value: T, findings: readonly Finding[] = []): Answer<T> {
  if (findings.some(({ severity }) => severity === "error")) return { ok: false, findings };
  return allFinite(value) ? { ok: true, value, findings } : noAnswer("beyond-reckoning");
}

function allFinite(value: unknown, name = ""): boolean {
  if (typeof value === "number") {
    return Number.isFinite(value) || (name === "count" && value === Number.POSITIVE_INFINITY);
  }
  if (typeof value !== "object" || value === null) return true;
  if (Array.isArray(value)) return value.every((one) => allFinite(one));
  for (const key in value) {
    if (!allFinite((value as Record<string, unknown>)[key], key)) return false;
  }
  return true;
}

/** The values of a code; a code without any is given none. */
type Given<C extends FindingCode> = keyof FindingValues<C> extends never ? [] : [FindingValues<C>];

/** What was found; where one of its figures has no end, there is no sentence but this one. */
const finding = (severity: Finding["severity"], code: FindingCode, values: object = {}) =>
  (allFinite(values)
    ? { code, severity, values }
    : { code: "beyond-reckoning", severity, values: {} }) as Finding;

/** No answer, and why. */
export function noAnswer<C extends FindingCode>(
  code: C,
  ...values: Given<C>
): { ok: false; findings: Finding[] } {
  return { ok: false, findings: [finding("error", code, values[0])] };
}

/** A finding that comes with an answer. */
export function warning<C extends FindingCode>(code: C, ...values: Given<C>): Finding {
  return finding("warning", code, values[0]);
}

/** Values of a finding with what each of them is. */
export function kindedValues({ code, values }: Finding): (readonly [string, ValueKind, FindingValue])[] {
  const kinds: Readonly<Record<string, ValueKind>> = findingTable[code].values;
  return Object.entries(values).map(([name, value]) => [name, kinds[name]!, value]);
}
