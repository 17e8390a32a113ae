/** A file that the build yields: its path below the output folder, with `/` between folders, and what is in it. */
export interface OutputFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}
