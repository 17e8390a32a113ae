import satori from "satori";
import { entry } from "../../../src/core/lists.ts";
import type { FileFonts } from "../../../src/layout/font-file.ts";
import type { BoxNode } from "../../../src/layout/nodes.ts";
import type { PageSize } from "../../../src/layout/page-of.ts";
import type { Rectangle } from "../../../src/layout/rectangle.ts";
import { type LayoutStyle, lengthStyles } from "../../../src/markup/boxes.ts";

/** satori rounds baselines to whole units, so it works in hundredths of a millimetre. */
const unitsPerMm = 100;

/** A piece of a line, at most a word: where it starts on its baseline. */
export interface TextPiece {
  readonly xMm: number;
  readonly yMm: number;
  readonly text: string;
}

interface MeasuredBoxes {
  readonly boxes: ReadonlyMap<BoxNode, Rectangle>;
  /** In the order of the tree. */
  readonly pieces: readonly TextPiece[];
}

/**
 * Lays boxes out with satori: flexbox and line breaking. Without a height the page is as long as what is in it.
 *
 * @throws Error where a style is unknown to satori or the fonts lack a sign: faults of a template or of content,
 * worded as satori words them.
 */
export async function measureBoxes(root: BoxNode, size: PageSize, fonts: FileFonts): Promise<MeasuredBoxes> {
  const boxes = new Map<BoxNode, Rectangle>();
  const nodes: BoxNode[] = [];
  const svg = await satori(
    satoriTree(root, nodes) as never,
    {
      width: units(size.widthMm),
      ...(size.heightMm === undefined ? {} : { height: units(size.heightMm) }),
      fonts: satoriFonts(fonts),
      embedFont: false,
      pointScaleFactor: 0,
      onNodeDetected: (node) => {
        if (node.key === null || node.key === undefined) return;
        boxes.set(entry(nodes, Number(node.key)), {
          xMm: node.left / unitsPerMm,
          yMm: node.top / unitsPerMm,
          widthMm: node.width / unitsPerMm,
          heightMm: node.height / unitsPerMm,
        });
      },
      onStyleError: (error: unknown) => {
        throw error;
      },
      loadAdditionalAsset: (_code: string, text: string) => {
        throw new Error(`the fonts have no sign for "${text}"`);
      },
    } as Parameters<typeof satori>[1],
  );
  return { boxes, pieces: piecesOf(svg) };
}

const fontLists = new WeakMap<FileFonts, unknown>();

/** satori keeps what it has read of fonts by the identity of the list. */
function satoriFonts(fonts: FileFonts): never {
  let list = fontLists.get(fonts);
  if (list === undefined) {
    const { regular, bold, italic } = fonts.files;
    list = [
      { name: "text", data: regular.bytes, weight: 400, style: "normal" },
      { name: "text", data: bold.bytes, weight: 600, style: "normal" },
      { name: "text", data: italic.bytes, weight: 400, style: "italic" },
    ];
    fontLists.set(fonts, list);
  }
  return list as never;
}

interface SatoriNode {
  readonly type: string;
  readonly key: string | null;
  readonly props: { readonly style: Record<string, unknown>; readonly children?: unknown };
}

/** Each box has for its key its place in a list of them. */
function satoriTree(box: BoxNode, nodes: BoxNode[]): SatoriNode {
  return {
    type: "div",
    key: String(nodes.push(box) - 1),
    props: {
      style: satoriStyle(box),
      children:
        box.runs.length > 0
          ? box.runs.map((run) => ({
              type: "span",
              key: null,
              props: {
                style: {
                  fontWeight: run.face === "bold" ? 600 : 400,
                  fontStyle: run.face === "italic" ? "italic" : "normal",
                  fontSize: units(run.sizeMm),
                },
                children: run.text,
              },
            }))
          : box.boxes.map((inner) => satoriTree(inner, nodes)),
    },
  };
}

const flexWords = {
  start: "flex-start",
  end: "flex-end",
  center: "center",
  stretch: "stretch",
  baseline: "baseline",
  between: "space-between",
} as const;

function satoriStyle(box: BoxNode): Record<string, unknown> {
  const style: LayoutStyle = box.props.style ?? {};
  const isText = box.runs.length > 0;
  const out: Record<string, unknown> = {
    display: isText ? "block" : "flex",
    boxSizing: "border-box",
    fontFamily: "text",
    flexShrink: 0,
    minWidth: 0,
  };
  if (!isText) out.flexDirection = style.direction ?? "column";
  if (isText) out.fontSize = units(box.runs[0]!.sizeMm);
  for (const name of lengthStyles) {
    const value = style[name];
    if (value !== undefined) out[name] = units(value);
  }
  if (style.grow !== undefined) {
    out.flexGrow = style.grow;
    out.flexShrink = 1;
    out.flexBasis = 0;
  }
  if (style.align) out.alignItems = flexWords[style.align];
  if (style.justify) out.justifyContent = flexWords[style.justify];
  if (style.textAlign) out.textAlign = style.textAlign;
  if (style.lineHeight) out.lineHeight = style.lineHeight;
  return out;
}

/** Hundredths of a millimetre, whole thousandths of them, so that no sum leaves a tail of digits behind. */
function units(mm: number): number {
  return Math.round(mm * unitsPerMm * 1000) / 1000;
}

/** What satori is allowed to write: text, and masks that nothing uses. */
const unusedMask = /<mask id="[^"]*"><rect [^>]*\/><\/mask>|<g\/>|<\/?svg[^>]*>/g;
const textElement = /<text x="([^"]*)" y="([^"]*)"[^>]*>([^<]*)<\/text>/g;

function piecesOf(svg: string): TextPiece[] {
  const pieces = [...svg.matchAll(textElement)].map(([, x, y, text]) => ({
    xMm: Number(x) / unitsPerMm,
    yMm: Number(y) / unitsPerMm,
    text: unescapeXml(text!),
  }));
  const rest = svg.replace(textElement, "").replace(unusedMask, "").trim();
  if (rest !== "") throw new Error(`satori painted something: ${rest.slice(0, 200)}`);
  return pieces;
}

const entities: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  "#39": "'",
};

function unescapeXml(text: string): string {
  return text.replace(/&(#?\w+);/g, (whole, name: string) => entities[name] ?? whole);
}
