import { basisPage, signedBases } from "../core/basis.ts";
import { message } from "../model/message.ts";
import { blocksOf } from "./blocks.ts";
import { type ContentCheck, toldOnce } from "./check.ts";
import { pageTexts } from "./texts.ts";

/** How a sentence says what a sign says. */
const said = Object.entries(signedBases).map(([of, basis]) => ({
  of,
  phrase: new RegExp(`\\b${basis.replace(" ", "\\s+")}\\b`, "giu"),
}));

/** Sentences that say where a figure comes from, where a sign beside it is quieter; not on the page that explains it. */
export const basisInWords: ContentCheck = (checked) => {
  const { library } = checked;
  return [...pageTexts(library), ...library.floats]
    .filter((text) => text !== library.pages.find(({ id }) => id === basisPage))
    .flatMap(
      toldOnce(checked, "basis in words", [], ({ path, body }) =>
        blocksOf(body, path).flatMap((block) =>
          said.flatMap(({ of, phrase }) =>
            [...block.text.matchAll(phrase)].map(({ 0: found, index }) => {
              const values = { found: found.replace(/\s+/g, " "), directive: `:basis[]{of=${of}}` };
              return message("basis-in-words", block.placeAt(index), values);
            }),
          ),
        ),
      ),
    );
};
