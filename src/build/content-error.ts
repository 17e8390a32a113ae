/** Something in the content that only shows when pages and cards are laid out, or written. */
export class ContentError extends Error {}
