/** A photo or a drawing of the guide's own, as it lies in `images/`. */
export interface OwnImage {
  /** Name of its file, such as `pond.jpg`. */
  readonly id: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly kind: ImageKind;
  readonly bytes: Uint8Array;
}

/** Kinds of images by what their files' names end in. */
export const imageEndings = {
  jpg: "jpeg",
  jpeg: "jpeg",
  png: "png",
  svg: "svg",
} as const;
export type ImageKind = (typeof imageEndings)[keyof typeof imageEndings];

/** The kind of an image by its file's name; none where it is of no kind that a guide shows. */
export function imageKindOf(name: string): ImageKind | undefined {
  const ending = /\.(\w+)$/.exec(name)?.[1]?.toLowerCase() ?? "";
  return Object.hasOwn(imageEndings, ending) ? imageEndings[ending as keyof typeof imageEndings] : undefined;
}

/** A picture as it is printed: one JPEG of three colours, whatever it was made from. */
export interface RasterImage {
  readonly id: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly jpeg: Uint8Array;
}

/** An image made ready: without whatever it told of its maker, and no larger than it is shown. */
export interface ReadyImage {
  readonly id: string;
  /** For pages, smallest first. */
  readonly web: readonly WebImage[];
  readonly print: RasterImage;
  /** Set into a square, for the logo alone. */
  readonly icon?: Uint8Array;
}

/** Width and height of an icon. */
export const iconPx = 512;

export interface WebImage {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly ending: "jpg" | "png" | "svg";
  readonly content: string | Uint8Array;
}
