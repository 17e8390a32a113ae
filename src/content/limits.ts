/** The most that content may have of each; beyond it is an error with its place, before anything is made of it. */
export const limits = {
  /** Signs of a file's name: with what is put before and behind it, a path stays below the 260 of older systems. */
  nameSigns: 60,
} as const;
