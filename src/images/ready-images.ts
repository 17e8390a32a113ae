import type Vips from "wasm-vips";
import { digestOf } from "../model/digest.ts";
import { fingerprintOf } from "../model/fingerprint.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import { type Message, message, type Staged } from "../model/message.ts";
import { type ImageKind, iconPx, type OwnImage, type ReadyImage, type WebImage } from "../model/own-image.ts";
import { plainSvg, svgToPng } from "./plain-svg.ts";

type Library = typeof Vips;
type Picture = InstanceType<Library["Image"]>;

/**
 * Widths for pages: a phone's column at twice its pixels, and the widest column at as much. The wider one is printed, too:
 * 275 dots to the inch on A5.
 */
const widthsPx = { phone: 720, page: 1280 } as const;
const quality = { page: 80, print: 92 } as const;

/** Those that were made ready before in this process, by their bytes; a logo has its icon, too. */
const made = { picture: new WeakMap<Uint8Array, ReadyImage>(), logo: new WeakMap<Uint8Array, ReadyImage>() };

/**
 * Images as they are published: turned upright, in sRGB, without what their files tell of camera, place and maker. The same
 * image gives the same bytes.
 *
 * @param logo name of the one that stands for the guide
 */
export async function readyImages(
  images: readonly OwnImage[],
  logo?: string,
  keep: Keep = makeAnew,
): Promise<Staged<ReadonlyMap<string, ReadyImage>>> {
  const ready = new Map<string, ReadyImage>();
  const messages: Message[] = [];
  const add = (image: OwnImage, make: (image: OwnImage) => ReadyImage) => {
    const as = image.id === logo ? "logo" : "picture";
    const from = () => digestOf([image.id, image.kind, as, fingerprintOf(image.bytes)]);
    const one = made[as].get(image.bytes) ?? keep("ready image", from(), () => make(image));
    made[as].set(image.bytes, one);
    ready.set(image.id, one);
  };
  for (const image of images) {
    try {
      add(image, notYet);
    } catch (error) {
      if (!(error instanceof NotYet)) throw error;
    }
  }
  if (ready.size === images.length) return { value: ready, messages };
  const { default: load } = await import("wasm-vips");
  const vips = await load({
    dynamicLibraries: [],
    preRun: (module) => {
      // What it has to say of a broken file comes as an error; its warnings would go to the terminal.
      (module as unknown as { ENV: Record<string, string> }).ENV.VIPS_WARNING = "0";
    },
  });
  const make = (image: OwnImage): ReadyImage => {
    const picture = readyImage(image, vips);
    return image.id === logo ? { ...picture, icon: iconOf(image, vips) } : picture;
  };
  try {
    for (const image of images.filter((one) => !ready.has(one.id))) {
      try {
        add(image, make);
      } catch (error) {
        const reason = `the picture cannot be shown: ${
          String((error as Error).message)
            .trim()
            .split("\n")[0]
        }`;
        messages.push(
          message("image-not-usable", { file: image.path }, { reason, hint: "save it anew as JPEG or PNG" }),
        );
      }
    }
  } finally {
    vips.shutdown();
  }
  return { value: ready, messages };
}

/** Stops where an image would have to be made: what makes it takes longer to load than all that is kept to be looked up. */
function notYet(): never {
  throw new NotYet();
}

class NotYet extends Error {}

function readyImage({ id, kind, bytes }: OwnImage, vips: Library): ReadyImage {
  const svg = kind === "svg" ? plainSvg(new TextDecoder().decode(bytes)) : undefined;
  const raster = svg === undefined ? bytes : svgToPng(svg, widthsPx.page);
  const widest = fitted(raster, widthsPx.page, vips, kind);
  const print = {
    id,
    widthPx: widest.width,
    heightPx: widest.height,
    jpeg: asJpeg(widest, quality.print, vips),
  };
  if (svg !== undefined) {
    return {
      id,
      web: [{ widthPx: print.widthPx, heightPx: print.heightPx, ending: "svg", content: svg }],
      print,
    };
  }
  const widths = widest.width > widthsPx.phone ? [widthsPx.phone, widthsPx.page] : [widthsPx.page];
  const web = widths.map((width) => webImage(fitted(raster, width, vips, kind), kind === "png", vips));
  return { id, web, print };
}

/** In the middle of a square that is see-through around it. */
function iconOf({ kind, bytes }: OwnImage, vips: Library): Uint8Array {
  const raster = kind === "svg" ? svgToPng(new TextDecoder().decode(bytes), iconPx) : bytes;
  const fit = vips.Image.thumbnailBuffer(raster, iconPx, { height: iconPx, ...toSrgb(kind) });
  const clear = fit.hasAlpha() ? fit : fit.addalpha();
  return clear
    .gravity("centre", iconPx, iconPx, { extend: "background", background: [255, 255, 255, 0] })
    .writeToBuffer(".png", { keep: "none", compression: 9 });
}

/** Upright and no wider than so many pixels. */
function fitted(bytes: Uint8Array, widthPx: number, vips: Library, kind: ImageKind): Picture {
  return vips.Image.thumbnailBuffer(bytes, widthPx, { height: 4 * widthPx, size: "down", ...toSrgb(kind) });
}

/** What was painted here is in sRGB already, and a third of a second is spared. */
const toSrgb = (kind: ImageKind) => (kind === "svg" ? {} : { output_profile: "srgb" });

/** A photo as JPEG; what came as PNG stays so where it has see-through parts or is smaller that way. */
function webImage(picture: Picture, mayStayPng: boolean, vips: Library): WebImage {
  const size = { widthPx: picture.width, heightPx: picture.height };
  const png = (): WebImage => ({
    ...size,
    ending: "png",
    content: picture.writeToBuffer(".png", { keep: "none", compression: 9 }),
  });
  if (picture.hasAlpha()) return png();
  const jpeg: WebImage = { ...size, ending: "jpg", content: asJpeg(picture, quality.page, vips) };
  if (!mayStayPng) return jpeg;
  const other = png();
  return other.content.length < jpeg.content.length ? other : jpeg;
}

function asJpeg(picture: Picture, Q: number, vips: Library): Uint8Array {
  const opaque = picture.hasAlpha() ? picture.flatten({ background: [255, 255, 255] }) : picture;
  const colours = opaque.bands === 3 ? opaque : opaque.colourspace(vips.Interpretation?.srgb ?? "srgb");
  return colours.writeToBuffer(".jpg", { Q, keep: "none", optimize_coding: true, interlace: false });
}
