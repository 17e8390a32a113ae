/** A tree of sentences as it is written in a words file. */
export interface WordTree {
  readonly [key: string]: string | WordTree;
}
