import { solveContent } from "../../src/build/build.ts";
import { disk } from "../../src/cli/disk.ts";

const { value, messages } = await solveContent(disk, ["content"]);
if (!value) throw new Error(`the content has errors: ${JSON.stringify(messages)}`);

/**
 * The content that is shipped, solved once for all the tests that share their modules: it takes seconds. What needs only
 * what its files say takes `shippedLibrary`.
 */
export const shippedGuide = value;
export const shippedMessages = messages;
