import type { Item } from "../drawing/model.ts";
import type { LaidOutPage } from "../layout/page-of.ts";
import { type Keep, once } from "../model/kept.ts";

/** Something laid out, with its marks as they are asked for. */
export function withItems<T extends object>(
  told: T,
  items: () => readonly Item[],
): T & Pick<LaidOutPage, "items"> {
  return Object.defineProperty({ ...told } as T & Pick<LaidOutPage, "items">, "items", {
    get: items,
    enumerable: true,
  });
}

/** What is said of a page, without its marks. */
export const toldOf = ({ widthMm, heightMm, overflows }: LaidOutPage) => ({ widthMm, heightMm, overflows });

/** A page that is laid out, or was: what is said of it is known at once, its marks once somebody asks for them. */
export function keptPage(keep: Keep, kind: string, from: string, layOut: () => LaidOutPage): LaidOutPage {
  const page = once(layOut);
  const told = keep(kind, from, () => toldOf(page()));
  return withItems(
    told,
    once(() => keep(`marks of ${kind}`, from, () => page().items)),
  );
}
