import { imageSize } from "image-size";
import { limits } from "../model/limits.ts";
import { type Message, message } from "../model/message.ts";
import { type ImageKind, imageKindOf, type OwnImage } from "../model/own-image.ts";
import { nameProblem } from "./names.ts";
import { svgProblems } from "./svg-problems.ts";
import { tooMuch } from "./text-limits.ts";
import type { Source } from "./world.ts";

/** Photos and drawings of the guide's own, by their files' names, and what keeps others from being shown. */
export function readImages(sources: ReadonlyMap<string, Source>): {
  readonly images: ReadonlyMap<string, OwnImage>;
  readonly messages: readonly Message[];
} {
  const images = new Map<string, OwnImage>();
  const messages: Message[] = [];
  for (const source of sources.values()) {
    const id = /^images\/([^/]+)$/.exec(source.path)?.[1];
    const kind = id === undefined ? undefined : imageKindOf(id);
    if (id === undefined || !kind) continue;
    const told = problemsOf(source, id, kind);
    messages.push(...told);
    if (told.length === 0) images.set(id, { id, path: source.file, kind, bytes: source.content! });
  }
  return { images, messages };
}

function problemsOf({ file, bytes, content }: Source, id: string, kind: ImageKind): readonly Message[] {
  const name = nameProblem(id.replace(/\.\w+$/, ""));
  if (name) return [message("file-name", { file }, name)];
  if (bytes > limits.imageBytes.most) return [tooMuch("imageBytes", bytes, { file })];
  if (content === undefined) return [tooMuch("picturesBytes", limits.picturesBytes.most + bytes, { file })];
  if (kind === "svg") return svgProblems(new TextDecoder().decode(content), file);
  const found = sizeOf(content);
  if (!found) return [unusable(file, "no picture can be found in it", "save it anew as JPEG or PNG")];
  if (found.kind !== kind) {
    return [
      unusable(
        file,
        `its name says ${kind}, but it is ${found.kind}`,
        "save it anew as JPEG or PNG, and name it so",
      ),
    ];
  }
  const pixels = found.width * found.height;
  return pixels > limits.imagePixels.most ? [tooMuch("imagePixels", pixels, { file })] : [];
}

const unusable = (file: string, reason: string, hint: string) =>
  message("image-not-usable", { file }, { reason: `the picture cannot be shown: ${reason}`, hint });

function sizeOf(content: Uint8Array) {
  try {
    const { type, width, height } = imageSize(content);
    return { kind: type === "jpg" ? "jpeg" : String(type), width, height };
  } catch {
    return undefined;
  }
}
