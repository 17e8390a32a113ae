import type { Root } from "mdast";
import type { Library } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import { picturesIn } from "../model/pictures-in.ts";

/** Names of the photos and drawings that texts show, and the logo. */
export function imagesInUse(texts: Iterable<Root>, { guide }: Library): ReadonlySet<string> {
  const used = new Set<string>(guide.logo === undefined ? [] : [guide.logo]);
  for (const root of texts) {
    for (const reference of picturesIn(root)) if (reference.picture === "image") used.add(reference.image);
  }
  return used;
}

/** A warning for each image that nothing shows. */
export function unusedImages({ images }: Library, used: ReadonlySet<string>): readonly Message[] {
  return [...images.values()]
    .filter(({ id }) => !used.has(id))
    .map(({ id, path }) => message("image-not-used", { file: path }, { name: id }));
}
