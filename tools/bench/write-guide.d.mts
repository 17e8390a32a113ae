export function writeGuide(
  folder: string,
  size: { readonly rigs: number; readonly lessons: number; readonly seed: number },
): void;
export const edits: Readonly<Record<string, (folder: string) => void>>;
