import { digestOf, digestOnce } from "../model/digest.ts";
import { once } from "../model/kept.ts";
import type { Prose } from "../model/library.ts";
import { linksStartIn } from "../model/links.ts";
import { picturesIn } from "../model/pictures-in.ts";
import { imagePath } from "./images.ts";
import type { SiteInput } from "./input.ts";

/** What the page of a text is made from, besides the guide's words and the guide; found once somebody asks. */
export type TextFrom = (text: Prose) => () => unknown;

/** A text with its pictures, and all that it names and leads to; head, menu and foot of pages show what they are made from. */
export function textFrom(input: SiteInput): TextFrom {
  const around = once(() => digestOf(aroundTexts(input)));
  return (text) => () => [...textAlone(text, input), around()];
}

/** A text with its pictures, whatever else there is in the guide. */
export function textAlone(text: Prose, { liveBody, drawings }: Pick<SiteInput, "liveBody" | "drawings">) {
  const body = liveBody(text);
  const pictures = picturesIn(body).map(drawings.from);
  return [linksStartIn(text.path), text.title, text.summary, digestOnce(body), pictures] as const;
}

function aroundTexts({ library, images }: SiteInput): unknown {
  return [
    library.glossary.map(({ link, term, also }) => [link, term, also]),
    [...images.values()].map((image) =>
      image.web.map((one) => [imagePath(image, one), one.widthPx, one.heightPx]),
    ),
  ];
}
