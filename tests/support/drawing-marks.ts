import type { Drawing, Item, MeasureText, PathStep } from "../../src/drawing/model.ts";

export type Mark = Exclude<Item, { kind: "group" }>;

export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Every mark of a drawing in its place on the picture, groups opened. */
export function flatItems(items: readonly Item[], xMm = 0, yMm = 0): Mark[] {
  return items.flatMap((item): Mark[] => {
    switch (item.kind) {
      case "group":
        return flatItems(item.items, xMm + item.xMm, yMm + item.yMm);
      case "circle":
        return [{ ...item, cxMm: item.cxMm + xMm, cyMm: item.cyMm + yMm }];
      case "text":
        return [{ ...item, xMm: item.xMm + xMm, yMm: item.yMm + yMm }];
      case "path":
        return [{ ...item, steps: item.steps.map((step) => moved(step, xMm, yMm)) }];
    }
  });
}

function moved([letter, ...numbers]: PathStep, xMm: number, yMm: number): PathStep {
  return [letter, ...numbers.map((n, i) => n + (i % 2 === 0 ? xMm : yMm))] as unknown as PathStep;
}

/** The room each text takes, from a little below its baseline to the height of its capitals. */
export function textBoxes(items: readonly Item[], measure: MeasureText): TextBox[] {
  return flatItems(items).flatMap((item) => {
    if (item.kind !== "text") return [];
    const width = measure(item.text, item.sizeMm, item.face);
    const left = item.xMm - { start: 0, middle: width / 2, end: width }[item.anchor];
    return [
      {
        text: item.text,
        left,
        right: left + width,
        top: item.yMm - 0.72 * item.sizeMm,
        bottom: item.yMm + 0.22 * item.sizeMm,
      },
    ];
  });
}

/** What lies outside the picture, strokes with half their width; control points stand in for the curves inside them. */
export function outsideOf(drawing: Drawing, measure: MeasureText): string[] {
  const slack = 0.02;
  const out = (left: number, top: number, right: number, bottom: number) =>
    left < -slack || top < -slack || right > drawing.widthMm + slack || bottom > drawing.heightMm + slack;
  return flatItems(drawing.items).flatMap((item) => {
    if (item.kind === "text") {
      const [box] = textBoxes([item], measure);
      return box && out(box.left, box.top, box.right, box.bottom) ? [`text "${item.text}"`] : [];
    }
    if (item.kind === "circle") {
      const reach = item.radiusMm + (item.stroke?.widthMm ?? 0) / 2;
      const { cxMm: x, cyMm: y } = item;
      return out(x - reach, y - reach, x + reach, y + reach) ? [`circle at ${x}, ${y}`] : [];
    }
    const numbers = item.steps.flatMap(([, ...rest]) => rest as number[]);
    const xs = numbers.filter((_, i) => i % 2 === 0);
    const ys = numbers.filter((_, i) => i % 2 === 1);
    return out(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys))
      ? [`path from ${xs[0]}, ${ys[0]}`]
      : [];
  });
}
