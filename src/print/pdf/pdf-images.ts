import type { RasterImage } from "../../model/own-image.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { PdfDict, PdfRef } from "./pdf-values.ts";

/** The pictures of a document, each once. */
export class PdfImages {
  /** By the ids of the pictures. */
  readonly #found = new Map<string, { readonly name: string; readonly ref: PdfRef }>();

  constructor(private readonly file: PdfFile) {}

  /** The name by which pages call a picture. */
  nameOf(image: RasterImage): string {
    let found = this.#found.get(image.id);
    if (found === undefined) {
      found = { name: `Im${this.#found.size + 1}`, ref: this.#added(image) };
      this.#found.set(image.id, found);
    }
    return found.name;
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

  /** Every page's part of its resources; none where there are no pictures. */
  get dict(): PdfDict | undefined {
    if (this.#found.size === 0) return undefined;
    return Object.fromEntries([...this.#found.values()].map(({ name, ref }) => [name, ref]));
  }
}
