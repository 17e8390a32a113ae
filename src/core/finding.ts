/**
 * What the core says when a figure cannot be had or should not be trusted. The core never words it: `code` names a
 * sentence in `content/words` under `reason.`, `values` fill its gaps. Numbers keep the unit in their name.
 */
export interface Finding {
  readonly code: string;
  /** An error means no answer; a warning comes with one. */
  readonly severity: "error" | "warning";
  readonly values: Readonly<Record<string, number | string>>;
}

/** An answer with what was found on the way; `value` is missing exactly when one of the findings is an error. */
export type Answer<T> =
  | { readonly ok: true; readonly value: T; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** An answer, with any warnings met. */
export function answer<T>(value: T, findings: readonly Finding[] = []): Answer<T> {
  return { ok: true, value, findings };
}

/** No answer, and why. */
export function noAnswer(code: string, values: Finding["values"] = {}): { ok: false; findings: Finding[] } {
  return { ok: false, findings: [{ code, severity: "error", values }] };
}

/** A finding that comes with an answer. */
export function warning(code: string, values: Finding["values"] = {}): Finding {
  return { code, severity: "warning", values };
}
