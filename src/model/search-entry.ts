/** One page as the search knows it. */
export interface SearchEntry {
  readonly id: number;
  /** Address below the site's folder. */
  readonly address: string;
  readonly title: string;
  readonly summary: string;
  readonly kind: string;
  readonly text: string;
}
