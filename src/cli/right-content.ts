import { readContent } from "../build/build.ts";
import { ContentError } from "../build/content-error.ts";
import type { Read } from "../build/stages.ts";
import { keeping } from "../model/kept.ts";
import { hasErrors } from "../model/message.ts";
import { contentFolders } from "./content-option.ts";
import { disk } from "./disk.ts";
import { keptOf } from "./kept-on-shelf.ts";

/** The content asked for, read. @throws ContentError where it has an error */
export async function rightContent(options: Readonly<Record<string, unknown>>): Promise<Read> {
  const { folders, shipped } = await contentFolders(options);
  const store = keptOf(folders);
  const { value, messages } = await readContent(disk, folders, shipped, keeping(store));
  store.end();
  if (!value || hasErrors(messages)) throw new ContentError(messages);
  return value;
}
