import { readContent } from "../build/build.ts";
import { ContentError } from "../build/content-error.ts";
import type { Read } from "../build/stages.ts";
import { hasErrors } from "../model/message.ts";
import { contentFolders } from "./content-option.ts";
import { disk } from "./disk.ts";

/** The content asked for, read. @throws ContentError where it has an error */
export async function rightContent(options: Readonly<Record<string, unknown>>): Promise<Read> {
  const { folders, shipped } = await contentFolders(options);
  const { value, messages } = await readContent(disk, folders, shipped);
  if (!value || hasErrors(messages)) throw new ContentError(messages);
  return value;
}
