import type { Image, Paragraph, Root, RootContent } from "mdast";
import { type Message, message } from "../../model/message.ts";
import type { ImageReference } from "../../model/pictures.ts";
import { positionOf } from "../../model/source-position.ts";
import { visit } from "../../model/visit.ts";

/**
 * Makes the photos and drawings that stand on lines of their own in a text into pictures.
 *
 * @param images what there is, by file name
 * @returns what is wrong with those that cannot be shown
 */
export function takeOwnPictures(
  root: Root,
  file: string,
  images: ReadonlyMap<string, unknown>,
): readonly Message[] {
  const messages: Message[] = [];
  visit(root, "paragraph", (node, index, parent) => {
    const shown = imagesAlone(node);
    if (shown.length === 0 || !parent || index === undefined) return;
    const pictures = shown.map((image): RootContent => {
      const made = referenceOf(image, file, images);
      if (!("code" in made)) return { type: "picture", reference: made };
      messages.push(made);
      return { type: "text", value: image.alt ?? "" };
    });
    parent.children.splice(index, 1, ...(pictures as typeof parent.children));
    return index + pictures.length;
  });
  visit(root, ["image", "imageReference"], (node) => {
    const { line, column } = positionOf(node).start;
    messages.push(message("image-in-sentence", { file, line, column }, {}));
  });
  return messages;
}

/** The pictures of a paragraph that holds nothing else. */
function imagesAlone({ children }: Paragraph): readonly Image[] {
  const images = children.filter((child) => child.type === "image");
  const others = children.filter(
    (child) => child.type !== "image" && !(child.type === "text" && child.value.trim() === ""),
  );
  return others.length === 0 ? images : [];
}

function referenceOf(
  image: Image,
  file: string,
  images: ReadonlyMap<string, unknown>,
): ImageReference | Message {
  const { line, column } = positionOf(image).start;
  const place = { file, line, column };
  const name = /^(?:\.{1,2}\/)*(?:images\/)?([^/:]+)$/.exec(decoded(image.url))?.[1]?.normalize("NFC");
  if (name === undefined) {
    const reason = `the picture ${image.url} is not in images/, and the guide must work without a signal`;
    const hint = "save it into images/, and write ![what it shows](../images/pond.jpg)";
    return message("image-not-usable", place, { reason, hint });
  }
  if (!images.has(name)) {
    return message("unknown-name", place, {
      what: "picture in images/",
      found: name,
      allowed: [...images.keys()],
    });
  }
  const alt = image.alt?.trim() ?? "";
  if (alt === "") return message("no-alt-text", place, { name });
  return { picture: "image", image: name, alt, ...(image.title && { caption: image.title }) };
}

function decoded(url: string): string {
  try {
    return decodeURIComponent(url);
  } catch {
    return url;
  }
}
