import { once } from "../../src/model/kept.ts";
import { siteAssets as bundled } from "../../tools/site-assets.mjs";

/** Style sheet, fonts and page scripts, bundled once for all the tests that share their modules. */
export const siteAssets = once(bundled);
