import * as fontkit from "fontkit";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { isFontFile, isJoined, type OwnFont } from "../model/own-font.ts";
import { firstSaid } from "./layers.ts";
import { nameProblem } from "./names.ts";
import type { Reading } from "./reading.ts";
import { tooMuch } from "./text-limits.ts";
import type { Source } from "./world.ts";

interface Found {
  readonly font?: OwnFont;
  readonly messages: readonly Message[];
}

/** A font that has not changed since is read once. */
const known = new WeakMap<Source, Found>();

/** The font that `look.font` of guide.yaml names, and what keeps it, or another in `fonts/`, from being used. */
export function readOwnFont(sources: ReadonlyMap<string, Source>): Found {
  const look = firstSaid(sources, "look");
  const named = typeof look === "object" && look !== null && "font" in look ? String(look.font) : undefined;
  const fonts = [...sources.values()].filter(({ path }) => isFontFile(path));
  const source = fonts.find(({ path }) => path === `fonts/${named}`);
  const others = fonts.filter((one) => one !== source).map(unused);
  if (!source || named === undefined) return { messages: others };
  const found = known.get(source) ?? fontOf(source, named);
  known.set(source, found);
  return { ...found, messages: [...found.messages, ...others] };
}

/** Says where `look.font` names no file of `fonts/` which there are. */
export function lookUpFont(named: string | undefined, place: Place, reading: Reading): void {
  if (named === undefined) return;
  const fonts = [...reading.sources.values()].filter(({ path }) => isFontFile(path));
  const byName = new Map(fonts.map((source) => [source.path.replace("fonts/", ""), source]));
  reading.lookUp(byName, named, "font in fonts/", place);
}

const unused = ({ file, path }: Source): Message =>
  message(
    "file-not-read",
    { file },
    {
      reason: "the font is not used: guide.yaml does not name it",
      hint: `write look: { font: ${path.replace("fonts/", "")} } there, or take the file out`,
    },
  );

function fontOf({ file, bytes, content }: Source, id: string): Found {
  const name = nameProblem(id.replace(/\.\w+$/, ""));
  if (name) return { messages: [message("file-name", { file }, name)] };
  if (bytes > limits.fontBytes.most) return { messages: [tooMuch("fontBytes", bytes, { file })] };
  const broken = (reason: string, hint: string): Found => ({
    messages: [message("font-not-usable", { file }, { reason, hint })],
  });
  const signs = content && signsOf(content);
  if (!content || !signs) {
    return broken("no font can be found in it", "take a font of one face, as .ttf, .otf, .woff or .woff2");
  }
  if (signs.size === 0)
    return broken("it has no sign that can be set", "take a font with outlines of letters");
  return { font: { id, path: file, bytes: content, signs }, messages: [] };
}

/** Signs that can be set one beside the other and leave a mark; undefined where the bytes are no font of one face. */
function signsOf(content: Uint8Array): ReadonlySet<number> | undefined {
  try {
    const font = fontkit.create(Buffer.from(content));
    if (!("characterSet" in font)) return undefined;
    // A font that is cut off or of pictures alone is found out here, not as the first page is laid out.
    const isDrawn = (code: number) => font.glyphForCodePoint(code).path.commands.length > 0;
    const signs = font.characterSet.filter((code) => code > 0x20 && !isJoined(code));
    const [one] = signs;
    return new Set(one !== undefined && signs.slice(0, 100).some(isDrawn) ? signs : []);
  } catch {
    return undefined;
  }
}
