import { scriptsIn } from "../cli/launch/scripts.ts";
import type * as contract from "./contract.ts";

// What other programs import.

export const { build, draw, readGuide, solve, svg, write } = scriptsIn(new URL(".", import.meta.url)).load(
  "./api.js",
) as typeof contract;
