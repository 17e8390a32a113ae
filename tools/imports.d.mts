/** What a file takes from one module, by one statement. */
export interface Import {
  /** The other file, from the root; of a package or a part of Node its name. */
  readonly to: string;
  /** Whether it is a file of the project. */
  readonly inside: boolean;
  /** What is taken; nothing where the module is taken whole. */
  readonly names?: readonly string[];
  readonly typeOnly: boolean;
}

/** What a source file imports, or hands on from others, be it at once or when it is asked. */
export function importsOf(root: string, path: string): Import[];
