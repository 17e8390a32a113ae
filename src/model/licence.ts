/** A work of others that the site ships. */
export interface Licence {
  readonly name: string;
  readonly version: string;
  /** The licence's SPDX name. */
  readonly terms: string;
  /** Its words as the work has them; empty where it has none. */
  readonly text: string;
}
