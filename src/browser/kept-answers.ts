import { siteAddress } from "./site-address.ts";

/**
 * What the reader has said of the water, for the next page. It stays with the tab; it stays on the device only where
 * the reader agreed to that.
 */
interface KeptAnswers {
  /** As typed. */
  readonly depth?: string;
  readonly pace?: string;
  readonly water?: string;
  readonly catch?: string;
  readonly units?: string;
  /** Shot of the guide's own scale. */
  readonly box?: string;
}

/** Several guides may be served from one host; each knows its own by the address it is served at. */
const key = `water of ${siteAddress.href}`;

/** Nothing where nothing was said, or where the browser lets no page keep anything. */
export function keptAnswers(): KeptAnswers {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? localStorage.getItem(key) ?? "{}");
    const texts = Object.entries(kept ?? {}).filter(([, value]) => typeof value === "string");
    return Object.fromEntries(texts);
  } catch {
    return {};
  }
}

/** Adds to what is kept, where it is kept. */
export function keepAnswers(answers: KeptAnswers): void {
  try {
    const all = JSON.stringify({ ...keptAnswers(), ...answers });
    sessionStorage.setItem(key, all);
    if (isKeptOnDevice()) localStorage.setItem(key, all);
  } catch {
    // A private window, or no room: the address has the answers all the same.
  }
}

export function isKeptOnDevice(): boolean {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
}

/** Begins or ends the keeping on the device; ended, nothing is left there. */
export function keepOnDevice(keep: boolean): void {
  try {
    if (keep) localStorage.setItem(key, JSON.stringify(keptAnswers()));
    else localStorage.removeItem(key);
  } catch {
    // As above.
  }
}
