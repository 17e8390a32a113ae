/** A file that the build yields: its path below the output folder, with `/` between folders, and what is in it. */
export interface OutputFile {
  readonly path: string;
  /** May be made, or looked up, only when it is asked for: who copies a file copies it by `movedTo`. */
  readonly content: string | Uint8Array;
  /** Size and hash of the content, where they are known without it. */
  readonly known?: { readonly bytes: number; readonly sha256: string };
}
