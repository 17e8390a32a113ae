import type { Item, PathItem } from "../drawing/model.ts";
import type { Fonts } from "../layout/fonts.ts";
import { lineStartMm } from "../layout/shape-line.ts";

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The room that marks take [mm]; curves count by their control points. Undefined without marks. */
export function extentOf(items: readonly Item[], fonts: Fonts): Extent | undefined {
  let all: Extent | undefined;
  for (const item of items) {
    const one = extentOfItem(item, fonts);
    if (one) all = all ? union(all, one) : one;
  }
  return all;
}

function union(a: Extent, b: Extent): Extent {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** Goes by every control point once and keeps none of them: a picture has thousands. */
function extentOfPath({ steps, stroke }: PathItem): Extent {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const step of steps) {
    for (let i = 1; i < step.length; i += 2) {
      const [x, y] = [step[i] as number, step[i + 1] as number];
      left = Math.min(left, x);
      top = Math.min(top, y);
      right = Math.max(right, x);
      bottom = Math.max(bottom, y);
    }
  }
  const half = (stroke?.widthMm ?? 0) / 2;
  return { left: left - half, top: top - half, right: right + half, bottom: bottom + half };
}

function extentOfItem(item: Item, fonts: Fonts): Extent | undefined {
  switch (item.kind) {
    case "path":
      return extentOfPath(item);
    case "circle": {
      const radius = item.radiusMm + (item.stroke?.widthMm ?? 0) / 2;
      return {
        left: item.cxMm - radius,
        top: item.cyMm - radius,
        right: item.cxMm + radius,
        bottom: item.cyMm + radius,
      };
    }
    case "text": {
      const xMm = lineStartMm(item, fonts);
      return {
        left: xMm,
        top: item.yMm - 0.8 * item.sizeMm,
        right: xMm + fonts.measure(item.text, item.sizeMm, item.face),
        bottom: item.yMm + 0.25 * item.sizeMm,
      };
    }
    case "image":
      return {
        left: item.xMm,
        top: item.yMm,
        right: item.xMm + item.widthMm,
        bottom: item.yMm + item.heightMm,
      };
    case "group": {
      const inner = extentOf(item.items, fonts);
      return (
        inner && {
          left: inner.left + item.xMm,
          top: inner.top + item.yMm,
          right: inner.right + item.xMm,
          bottom: inner.bottom + item.yMm,
        }
      );
    }
  }
}
