/** One section of a page as the search knows it. */
export interface SearchEntry {
  readonly id: number;
  /** Address below the site's folder, with the section's anchor where it has one. */
  readonly address: string;
  /** Title of the page. */
  readonly title: string;
  /** Heading of the section; that of the page for its beginning. */
  readonly heading: string;
  readonly kind: string;
  readonly text: string;
  /** How much more than others it is likely to be meant, where it is: safety comes first, then what the float says. */
  readonly weight?: number;
}
