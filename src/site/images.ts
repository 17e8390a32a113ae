import type { Element } from "hast";
import { last } from "../core/lists.ts";
import type { OutputFile } from "../markup/output.ts";
import type { ReadyImage, WebImage } from "../model/own-image.ts";
import type { ImageReference } from "../model/pictures.ts";
import { fileHash } from "./file-hash.ts";

/** Where a version of an image stands below the output folder; its hash is in its name, as phones keep it long. */
export function imagePath({ id }: ReadyImage, { widthPx, ending, content }: WebImage): string {
  return `site/images/${id.replace(/\.\w+$/, "")}-${widthPx}.${fileHash(content)}.${ending}`;
}

/** The guide's own photos and drawings. */
export function imageFiles(images: ReadonlyMap<string, ReadyImage>): readonly OutputFile[] {
  return [...images.values()].flatMap((image) =>
    image.web.map((one) => ({ path: imagePath(image, one), content: one.content })),
  );
}

/** An image on a page: a phone loads the small version, and nothing before it comes near. */
export function imageElement(
  { alt }: ImageReference,
  image: ReadyImage,
  href: (target: string) => string,
): Element {
  const widest = last(image.web);
  const versions = image.web.map((one) => `${href(imagePath(image, one))} ${one.widthPx}w`);
  return {
    type: "element",
    tagName: "img",
    properties: {
      src: href(imagePath(image, widest)),
      ...(versions.length > 1 && { srcSet: versions.join(", "), sizes: "(max-width: 42rem) 100vw, 38rem" }),
      width: widest.widthPx,
      height: widest.heightPx,
      alt,
      loading: "lazy",
      decoding: "async",
    },
    children: [],
  };
}
