import type { RasterImage } from "../../model/own-image.ts";
import type { PdfFile } from "./pdf-file.ts";
import { imageName } from "./pdf-side.ts";
import type { PdfDict, PdfRef } from "./pdf-values.ts";

/** The pictures of a document, each once. */
export class PdfImages {
  /** By the ids of the pictures. */
  readonly #found = new Map<string, PdfRef>();

  constructor(private readonly file: PdfFile) {}

  /** Pictures by the names by which a page calls them; nothing where there are none. */
  named(images: readonly RasterImage[]): PdfDict | undefined {
    if (images.length === 0) return undefined;
    return Object.fromEntries(images.map((image, place) => [imageName(place), this.#refOf(image)]));
  }

  #refOf(image: RasterImage): PdfRef {
    const ref = this.#found.get(image.id) ?? this.#added(image);
    this.#found.set(image.id, ref);
    return ref;
  }

  /** A JPEG as it is. Source: ISO 32000-1, sections 7.4.8 and 8.9.5. */
  #added({ widthPx, heightPx, jpeg }: RasterImage): PdfRef {
    return this.file.addStream(jpeg, {
      Type: "XObject",
      Subtype: "Image",
      Width: widthPx,
      Height: heightPx,
      ColorSpace: "DeviceRGB",
      BitsPerComponent: 8,
      Filter: "DCTDecode",
    });
  }
}
