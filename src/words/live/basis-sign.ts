import { basisPage, type SignedBasis, signedBases } from "../../core/basis.ts";
import type { BasisSign } from "../../model/basis-sign.ts";
import { type Attributes, type LiveContext, named, oneOf } from "./references.ts";

/** The sign that `:basis[]{of=practice}` asks for. */
export function basisSign(at: Attributes, { library, words }: LiveContext): BasisSign {
  const of = oneOf(Object.keys(signedBases) as SignedBasis[], at("of"), "basis that has a sign");
  const { id } = named(library.pages, basisPage, "page");
  return {
    type: "basisSign",
    sign: words(`basis-sign.${of}.sign`),
    spoken: words(`basis-sign.${of}.spoken`),
    url: `../pages/${id}.md#${words(`basis-sign.${of}.anchor`)}`,
  };
}
