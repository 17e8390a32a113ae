import type { Drawing, Item, Stroke } from "../../src/drawing/model.ts";
import { pathData } from "../../src/drawing/svg-items.ts";

const figure = (value: number) => String(Math.round(value * 100) / 100 || 0);

/** A drawing as lines of plain text, one a mark, for golden files that a person can read and compare. */
export function drawingText(drawing: Drawing): string {
  return [
    `${figure(drawing.widthMm)} × ${figure(drawing.heightMm)} mm`,
    `title: ${drawing.title}`,
    `description: ${drawing.description}`,
    ...drawing.items.flatMap((item) => itemLines(item, "")),
    "",
  ].join("\n");
}

function itemLines(item: Item, indent: string): string[] {
  switch (item.kind) {
    case "text": {
      const look = [item.face, item.ink, item.anchor].join(" ");
      return [
        `${indent}text ${figure(item.xMm)} ${figure(item.yMm)} "${item.text}" ${figure(item.sizeMm)} ${look}`,
      ];
    }
    case "circle":
      return [
        `${indent}circle ${figure(item.cxMm)} ${figure(item.cyMm)} r ${figure(item.radiusMm)}${paint(item)}`,
      ];
    case "image":
      return [`${indent}image ${figure(item.xMm)} ${figure(item.yMm)} ${item.image.id}`];
    case "path":
      return [`${indent}path ${pathData(item.steps)}${paint(item)}`];
    case "group":
      return [
        `${indent}group ${figure(item.xMm)} ${figure(item.yMm)}`,
        ...item.items.flatMap((inner) => itemLines(inner, `${indent}  `)),
      ];
  }
}

function paint({ fill, stroke }: { fill?: string; stroke?: Stroke }): string {
  const dash = stroke?.dashMm ? ` dash ${stroke.dashMm.map(figure).join(" ")}` : "";
  return `${fill ? ` fill ${fill}` : ""}${stroke ? ` stroke ${stroke.ink} ${figure(stroke.widthMm)}${dash}` : ""}`;
}
