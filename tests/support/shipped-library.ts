import { disk } from "../../src/cli/disk.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { readSources } from "../../src/content/world.ts";

/** The files of the content that is shipped, the same for all that reads them: what was read of one is known. */
export const shippedSources = await readSources(disk, ["content"]);

const { value, messages } = readLibrary(shippedSources);
if (!value) throw new Error(`the content has errors: ${JSON.stringify(messages)}`);

/** The content that is shipped, read once for all the tests that share their modules. */
export const shippedLibrary = value;
