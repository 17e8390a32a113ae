import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { shippedSources } from "./shipped-library.ts";

const { value, messages } = await solveChecked(checkSources(shippedSources));
if (!value) throw new Error(`the content has errors: ${JSON.stringify(messages)}`);

/**
 * The content that is shipped, solved once for all the tests that share their modules: it takes seconds. What needs only
 * what its files say takes `shippedLibrary`.
 */
export const shippedGuide = value;
export const shippedMessages = messages;
