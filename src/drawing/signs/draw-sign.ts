import type { SignPicture } from "../../model/signs.ts";
import type { Drawing } from "../model.ts";
import { baitSigns } from "./bait-signs.ts";
import { biteSigns } from "./bite-signs.ts";
import { floatSigns } from "./float-signs.ts";
import { plummetSigns } from "./plummet-signs.ts";
import { signBox } from "./sign-parts.ts";
import { tackleSigns } from "./tackle-signs.ts";

/** Every picture; one without its line here does not compile. */
const pictures: { readonly [S in SignPicture]: () => Drawing["items"] } = {
  ...floatSigns,
  ...biteSigns,
  ...plummetSigns,
  ...tackleSigns,
  ...baitSigns,
};

/** What is seen, small and without words: the sign's own words stand beside it. */
export function drawSign(picture: SignPicture, title: string): Drawing {
  return { ...signBox, items: pictures[picture](), title, description: "" };
}
