import { imageSize } from "image-size";
import { PNG } from "pngjs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import Vips from "wasm-vips";
import { readyImages } from "../../src/images/ready-images.ts";
import type { Keep } from "../../src/model/kept.ts";
import type { Staged } from "../../src/model/message.ts";
import type { OwnImage, ReadyImage } from "../../src/model/own-image.ts";

type Library = Awaited<ReturnType<typeof Vips>>;

let vips: Library;
let photo: Uint8Array;
let small: Uint8Array;
let clear: Uint8Array;
/** The photo, a small one, one that is broken, the picture with see-through parts as the guide's logo, and a drawing. */
let all: Staged<ReadonlyMap<string, ReadyImage>>;
/** What was made, as a store would have it. */
const kept = new Map<string, unknown>();
/** The small one of other bytes that are the same, and the picture where it is no logo. */
let again: ReadonlyMap<string, ReadyImage>;

const drawing =
  '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20" onload="x()"><style>.a{fill:#123456}</style><a href="https://made-up.example"><path class="a" d="M0 0h9v9z"/></a><text y="9">Pond</text></svg>';

/** A photo that lies on its side, as telephones write it, with its maker's name in it. */
function sidewaysPhoto(widthPx: number, heightPx: number): Uint8Array {
  const grey = vips.Image.perlin(widthPx, heightPx, { seed: 1 }).cast("uchar");
  const colours = grey.bandjoin([grey, grey]).copy({ interpretation: "srgb" });
  colours.setInt("orientation", 6);
  colours.setString("exif-ifd0-Artist", "Somebody Made-up");
  return colours.writeToBuffer(".jpg", { Q: 90 });
}

beforeAll(async () => {
  vips = await Vips({ dynamicLibraries: [] });
  photo = sidewaysPhoto(2100, 1400);
  small = sidewaysPhoto(300, 200);
  const data = Buffer.alloc(4 * 40 * 20);
  data.set([200, 30, 10, 255], 4 * (40 * 10 + 20));
  clear = PNG.sync.write({ width: 40, height: 20, data });
  // Each call starts the library that it takes anew, which is most of the time.
  all = await readyImages(
    [
      image("pond.jpg", "jpeg", photo),
      image("small.jpg", "jpeg", small),
      image("half.jpg", "jpeg", photo.slice(0, 40)),
      image("mark.png", "png", clear),
      image("map.svg", "svg", drawing),
    ],
    "mark.png",
    (kind, from, make) => {
      const one = make();
      kept.set(`${kind} ${from}`, one);
      return one;
    },
  );
  const copied = [image("small.jpg", "jpeg", small.slice()), image("mark.png", "png", clear)];
  again = (await readyImages(copied)).value;
});
afterAll(() => vips.shutdown());

const made = (id: string): ReadyImage => all.value.get(id)!;

const image = (id: string, kind: OwnImage["kind"], content: Uint8Array | string): OwnImage => ({
  id,
  path: `content/images/${id}`,
  kind,
  bytes: typeof content === "string" ? new TextEncoder().encode(content) : content,
});

const text = (content: string | Uint8Array) => Buffer.from(content as Uint8Array).toString("latin1");

describe("a photo", () => {
  it("is upright, in two widths for pages, and says nothing of its maker or its camera", async () => {
    expect(text(photo)).toContain("Made-up");
    const { web, print } = made("pond.jpg");
    const files = [...web.map(({ content }) => content as Uint8Array), print.jpeg];
    expect(
      files.map((content) => imageSize(content)).map(({ width, height, type }) => [type, width, height]),
    ).toEqual([
      ["jpg", 720, 1080],
      ["jpg", 1280, 1920],
      ["jpg", 1280, 1920],
    ]);
    expect(web.map(({ widthPx, heightPx }) => [widthPx, heightPx])).toEqual([
      [720, 1080],
      [1280, 1920],
    ]);
    for (const content of files) expect(text(content)).not.toMatch(/Exif|Made-up|http/);
  });

  it("gives the same bytes each time", () => {
    const first = made("small.jpg");
    const second = again.get("small.jpg")!;
    expect(second).not.toBe(first);
    expect(Buffer.compare(second.print.jpeg, first.print.jpeg)).toBe(0);
    expect(second.web).toEqual(first.web);
  });

  it("that is broken is told by its name, and nothing else is", () => {
    expect(all.value.has("half.jpg")).toBe(false);
    expect(all.messages).toMatchObject([
      { code: "image-not-usable", place: { file: "content/images/half.jpg" } },
    ]);
  });
});

describe("a picture with see-through parts", () => {
  it("keeps them on pages, is no larger than it was, and stands on white in print", () => {
    const { web, print } = made("mark.png");
    expect(web.map(({ ending, widthPx }) => [ending, widthPx])).toEqual([["png", 40]]);
    const shown = PNG.sync.read(Buffer.from(web[0]!.content as Uint8Array));
    expect([...shown.data.subarray(0, 4)][3]).toBe(0);
    const printed = vips.Image.newFromBuffer(print.jpeg);
    expect(printed.bands).toBe(3);
    expect(printed.getpoint(0, 0).every((value) => value > 250)).toBe(true);
  });

  it("comes as an icon in a square, with nothing around it", () => {
    const square = PNG.sync.read(Buffer.from(made("mark.png").icon!));
    expect([square.width, square.height]).toEqual([512, 512]);
    expect(square.data[3]).toBe(0);
  });

  it("is made ready once, the icon too, where its file stays as it was", async () => {
    const mark = image("mark.png", "png", clear);
    const ready = async (logo?: string) => (await readyImages([mark], logo)).value.get("mark.png")!;
    const picture = again.get("mark.png")!;
    const logo = made("mark.png");
    expect([picture.icon, logo.icon]).toEqual([undefined, expect.any(Uint8Array)]);
    expect(await ready("mark.png")).toBe(logo);
    expect(await ready()).toBe(picture);
  });
});

describe("what is kept of an image", () => {
  it("is taken in its place in another run, and nothing is kept of one that is broken", async () => {
    expect(kept.size).toBe(4);
    // Bytes in another place are another run's.
    const mark = image("mark.png", "png", clear.slice());
    const found = await readyImages([mark], "mark.png", (kind, from) => kept.get(`${kind} ${from}`) as never);
    expect(found.value.get("mark.png")).toBe(made("mark.png"));
  });

  it("is told apart by bytes, kind, name and use", async () => {
    const asked: string[] = [];
    const noting: Keep = (_kind, from) => asked.push(from) as never;
    const ask = (id: string, kind: OwnImage["kind"], bytes: Uint8Array, logo?: string) =>
      readyImages([image(id, kind, bytes.slice())], logo, noting);
    await ask("a.png", "png", clear);
    await ask("b.png", "png", clear);
    await ask("a.png", "svg", clear);
    await ask("a.png", "png", small);
    await ask("a.png", "png", clear, "a.png");
    expect(new Set(asked).size).toBe(5);
  });
});

describe("a drawing", () => {
  it("is left with its marks alone, its words as outlines", () => {
    const { web, print } = made("map.svg");
    expect(web).toMatchObject([{ ending: "svg", widthPx: 1280, heightPx: 640 }]);
    const { content } = web[0]!;
    expect(content).toContain("#123456");
    expect(content).not.toMatch(/onload|<a |<text|<style|made-up|class=/);
    expect(String(content).match(/<path/g)).toHaveLength(2);
    expect(imageSize(print.jpeg)).toMatchObject({ width: 1280, height: 640, type: "jpg" });
  });
});
