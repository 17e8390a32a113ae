import { getDocument, OPS } from "./pdf-reader.ts";

/** A node of the structure tree as the reader hands it on. */
export interface TreeNode {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly TreeNode[];
  /** Words of the marked content right below this node, in order. */
  readonly text: string;
  /** The words of all that is below it, in reading order. */
  readonly words: string;
  /** Where the words below it begin, at the least [pt]; none where it has none. */
  readonly left?: number;
}

export interface ReadPage {
  /** Left, bottom, right and top of the page's box [pt]. */
  readonly box: readonly number[];
  readonly turn: number;
  /** Pieces of text in the order they are painted. */
  readonly text: string;
  /** The pieces with the place of their baselines' left end and their width [pt]. */
  readonly pieces: readonly {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
  }[];
  /** Heights of type met [pt]. */
  readonly sizes: readonly number[];
  readonly tree: TreeNode | null;
  readonly operators: readonly string[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly marked: boolean;
  readonly outline: readonly string[];
  readonly viewerPreferences: Readonly<Record<string, unknown>> | null;
}

const known = new WeakMap<Uint8Array, Promise<ReadPdf>>();

/** Opens a PDF with an independent reader, each once, whatever is asked of it. */
export function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const read = known.get(bytes) ?? readAnew(bytes);
  known.set(bytes, read);
  return read;
}

async function readAnew(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false }).promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) pages.push(await readPage(await document.getPage(n)));
  const { info } = await document.getMetadata();
  const outline = await document.getOutline();
  return {
    pages,
    info: info as Record<string, unknown>,
    marked: ((await document.getMarkInfo()) as { Marked?: boolean } | null)?.Marked ?? false,
    outline: (outline ?? []).map((entry) => entry.title),
    viewerPreferences: (await document.getViewerPreferences()) as Record<string, unknown> | null,
  };
}

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>["promise"]>["getPage"]>>;

async function readPage(page: Page): Promise<ReadPage> {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const textById = new Map<string, Marked>();
  const open: string[] = [];
  const sizes = new Set<number>();
  let text = "";
  for (const item of items) {
    if ("str" in item) {
      const words = item.str + (item.hasEOL ? "\n" : "");
      text += words;
      const id = open[open.length - 1];
      const [a, b, , , x] = item.transform as number[];
      if (id) {
        const before = textById.get(id);
        textById.set(id, { text: (before?.text ?? "") + words, left: Math.min(before?.left ?? x!, x!) });
      }
      if (item.str.trim() !== "") sizes.add(Math.round(Math.hypot(a!, b!) * 100) / 100);
    } else if (item.type === "endMarkedContent") {
      open.pop();
    } else {
      open.push(item.id ?? "");
    }
  }
  const { fnArray } = await page.getOperatorList();
  const names = Object.fromEntries(Object.entries(OPS).map(([name, code]) => [code, name]));
  return {
    box: page.view,
    turn: page.rotate,
    text: plain(text),
    pieces: items.flatMap((item) =>
      "str" in item
        ? [{ text: item.str, x: item.transform[4], y: item.transform[5], width: item.width }]
        : [],
    ),
    sizes: [...sizes].sort((x, y) => x - y),
    tree: node(await page.getStructTree(), textById),
    operators: fnArray.map((code) => names[code] ?? String(code)),
  };
}

/** The words of a piece of marked content, and where they begin. */
interface Marked {
  readonly text: string;
  readonly left: number;
}

interface RawNode {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly RawNode[];
}

function node(raw: RawNode | null, textById: ReadonlyMap<string, Marked>): TreeNode | null {
  if (raw === null) return null;
  const below = (raw.children ?? []).map((c): { text?: string; left?: number; child?: TreeNode } =>
    c.role === undefined
      ? { text: "", ...(c.type === "content" && textById.get(c.id ?? "")) }
      : { child: node(c, textById)! },
  );
  const lefts = below.flatMap(({ left, child }) => left ?? child?.left ?? []);
  const children = below.flatMap(({ child }) => child ?? []);
  return {
    role: raw.role ?? "",
    ...(raw.alt !== undefined && { alt: raw.alt }),
    children,
    text: plain(below.map(({ text = "" }) => text).join("")),
    words: plain(below.map(({ text, child }) => text ?? ` ${child!.words} `).join("")),
    ...(lefts.length > 0 && { left: Math.min(...lefts) }),
  };
}

/** Words with single spaces between them. */
export function plain(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/** All nodes of a role, in reading order. */
export function nodesOf(tree: TreeNode | null, role: string): TreeNode[] {
  if (tree === null) return [];
  return [...(tree.role === role ? [tree] : []), ...tree.children.flatMap((child) => nodesOf(child, role))];
}
