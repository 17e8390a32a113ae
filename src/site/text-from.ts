import { visit } from "unist-util-visit";
import { digestOf, digestOnce } from "../model/digest.ts";
import type { Prose } from "../model/library.ts";
import { imagePath } from "./images.ts";
import type { SiteInput } from "./input.ts";

/** What the page of a text is made from, besides the guide's words and the guide. */
export type TextFrom = (text: Prose) => unknown;

/** A text with its pictures, and all that such pages name and lead to around it. */
export function textFrom(input: SiteInput): TextFrom {
  const { liveBody, drawings } = input;
  const around = digestOf(aroundTexts(input));
  return (text) => {
    const body = liveBody(text);
    const pictures: unknown[] = [];
    visit(body, "picture", ({ reference }) => void pictures.push(drawings.from(reference)));
    return [text.path, text.title, text.summary, digestOnce(body), pictures, around];
  };
}

function aroundTexts({ library, liveBody, images }: SiteInput): unknown {
  const { glossary, lessons, plans, pages, species, troubles, templates } = library;
  return [
    lessons.map(({ id, title, part }) => [id, title, part]),
    [...plans, ...pages].map(({ id, title }) => [id, title]),
    glossary.map(({ link, term, also }) => [link, term, also]),
    [...templates.values()].map((template) => [template.path, digestOnce(liveBody(template))]),
    [...images.values()].map((image) =>
      image.web.map((one) => [imagePath(image, one), one.widthPx, one.heightPx]),
    ),
    [species.length > 0, troubles.length > 0],
  ];
}
